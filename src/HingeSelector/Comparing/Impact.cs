using HingeSelector.Rules;

namespace HingeSelector.Comparing;

/// <summary>What a change of the rules does to a squad: who changes, because of which edit, and what disappears.</summary>
/// <param name="Edits">What differs between the two versions.</param>
/// <param name="Comparison">Who changes.</param>
/// <param name="Groups">The changes by kind and cause, those that lose a stop first, then the commonest.</param>
/// <param name="Affected">By place of the edit: how many athletes it changes.</param>
/// <param name="Gone">Stops and holds that disappear.</param>
public sealed record Impact(IReadOnlyList<Edit> Edits, Comparison Comparison, IReadOnlyList<ChangeGroup> Groups, IReadOnlyList<int> Affected, IReadOnlyList<GoneSafety> Gone)
{
    private const int MostConfirmed = 12;

    /// <summary>Whether a stop or hold disappears that nobody has acknowledged.</summary>
    public bool Fails => Gone.Any(g => !g.Acknowledged);

    /// <summary>Compares.</summary>
    /// <param name="versions">The two versions.</param>
    /// <param name="books">Their rule books.</param>
    /// <param name="sideOf">Makes a side: of a book and, where the words are the same, the squad as read already.</param>
    /// <param name="acknowledged">Ids of stop rules, and words of questions, whose disappearance is acknowledged.</param>
    public static Impact Of((Version From, Version To) versions, (RuleBook From, RuleBook To) books, Func<RuleBook, Squad?, Side> sideOf, IReadOnlySet<string> acknowledged)
    {
        var edits = Comparing.Edits.Between(versions.From.Trees, versions.To.Trees);
        var from = sideOf(books.From, null);
        var sameWords = !edits.Any(e => e.Path == "vocabulary.yaml" || e.Path.StartsWith("variants/", StringComparison.Ordinal));
        var to = sideOf(books.To, sameWords ? from.Squad : null);
        var comparison = Comparison.Of(from, to, sameWords && !edits.Any(e => e.Path is "model.yaml" or "assumptions.yaml"));
        var causes = new Causes(edits, versions, (from, to), (b, s) => sideOf(b, s), b => sideOf(b, null));
        var caused = new (AthleteChange Change, Cause? Cause)[comparison.Changes.Count];
        Parallel.For(0, caused.Length, i => caused[i] = (comparison.Changes[i], causes.Of(comparison.Changes[i])));
        var groups = ChangeGroup.Of(caused);
        foreach (var example in groups.Take(MostConfirmed).SelectMany(g => g.Examples))
            Comparison.Confirm(from, to, example);
        var affected = edits.Select((_, i) => caused.Count(c => c.Cause!.Edits.Contains(i))).ToList();
        return new Impact(edits, comparison, groups, affected, GoneSafeties.Of(books.From, books.To, comparison.Changes, acknowledged));
    }
}
