using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Comparing;

/// <summary>Finds the edits behind a changed answer: by the traces where one edit is left, else by making each edit alone and asking again.</summary>
internal sealed class Causes
{
    // Beyond so many answers asked again, athletes with several possible causes get all of them named.
    private const int MostAsked = 20_000;

    private readonly IReadOnlyList<Edit> _edits;
    private readonly Side _from;
    private readonly Side _to;
    private readonly Lazy<Side?>[] _alone;
    private readonly Lazy<Side?>[] _without;
    private int _asked;

    /// <summary>Prepares; a version with one edit is compiled when first needed.</summary>
    public Causes(IReadOnlyList<Edit> edits, (Version From, Version To) versions, (Side From, Side To) sides, Func<RuleBook, Squad, Side> sideOf, Func<RuleBook, Side> sideOfOtherWords)
    {
        _edits = edits;
        (_from, _to) = sides;
        _alone = [.. edits.Select(e => new Lazy<Side?>(() => Make(versions.From.With(e), e, sides.From.Squad, sideOf, sideOfOtherWords)))];
        _without = [.. edits.Select(e => new Lazy<Side?>(() => Make(versions.To.Without(e), e, sides.To.Squad, sideOf, sideOfOtherWords)))];
    }

    /// <summary>The edits behind one change.</summary>
    public Cause Of(AthleteChange change)
    {
        var possible = Enumerable.Range(0, _edits.Count).Where(i => !_edits[i].IsWording && MayBear(_edits[i], change)).ToList();
        if (possible.Count <= 1)
            return new Cause(possible, CauseKind.Alone);
        if (Interlocked.Add(ref _asked, possible.Count) > MostAsked)
            return new Cause(possible, CauseKind.NotToldApart);
        var alone = possible.Where(i => _alone[i].Value is { } side && (Kinds(_from, change.Before, side, change) & change.Kinds) != 0).ToList();
        if (alone.Count > 0)
            return new Cause(alone, CauseKind.Alone);
        var together = possible.Where(i => _without[i].Value is { } side && Kinds(_to, change.After, side, change) != 0).ToList();
        return together.Count > 0 ? new Cause(together, CauseKind.Together) : new Cause(possible, CauseKind.NotToldApart);
    }

    private static ChangeKinds Kinds(Side known, Picture picture, Side side, AthleteChange change)
        => side.Find(change.Athlete) is { } athlete ? Difference.Kinds(picture, side.Of(athlete), known.Criteria, side.Criteria) : ChangeKinds.None;

    // A rule bears on an answer only where it holds before or after; of all else nobody can say without asking.
    private static bool MayBear(Edit edit, AthleteChange change)
    {
        if (edit.Rule is not { } rule)
            return !edit.Path.StartsWith("philosophies/", StringComparison.Ordinal) || IsInUse(edit, change);
        var (before, after) = (change.Before.HoldsFor(rule), change.After.HoldsFor(rule));
        return before.Count + after.Count > 0;
    }

    private static bool IsInUse(Edit edit, AthleteChange change)
        => change.Before.Philosophy == Path.GetFileNameWithoutExtension(edit.Path) || change.After.Philosophy == Path.GetFileNameWithoutExtension(edit.Path);

    private static Side? Make(Version version, Edit edit, Squad squad, Func<RuleBook, Squad, Side> sideOf, Func<RuleBook, Side> sideOfOtherWords)
    {
        // Without its file a philosophy cannot be asked.
        if ((edit.Before ?? edit.After)!.IsFile && edit.Path.StartsWith("philosophies/", StringComparison.Ordinal))
            return null;
        var bag = new DiagnosticBag();
        var book = RuleBookReader.Read(version.Files, version.Trees, bag);
        // An edit that rests on another one cannot stand alone.
        if (book is null || bag.HasErrors)
            return null;
        return edit.Path == "vocabulary.yaml" || edit.Path.StartsWith("variants/", StringComparison.Ordinal) ? sideOfOtherWords(book) : sideOf(book, squad);
    }
}
