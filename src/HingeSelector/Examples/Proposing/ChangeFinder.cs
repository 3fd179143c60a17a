using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Examples.Proposing;

/// <summary>Finds the changes against one example that bring each condition of its rule to its edges while nothing else decides.</summary>
internal sealed class ChangeFinder(RuleBook book, ExampleCase fired)
{
    private readonly FactView _now = fired.View;

    /// <summary>Every change that is worth a try, the small ones first.</summary>
    public IReadOnlyList<Change> All()
    {
        var found = new List<Change>();
        if (fired.Rule.PerCandidate)
            found.AddRange(OtherVariants([]));
        foreach (var line in ConditionLine.Of(fired.Rule))
        {
            foreach (var leaf in LeavesToTry(line))
                found.AddRange(OfLeaf(line, leaf));
        }
        return [.. found.OrderBy(c => c.Facts.Count)];
    }

    // A group is one word to its author: one of its members stands for all.
    private IEnumerable<Condition> LeavesToTry(ConditionLine line)
        => line.Group is null ? line.Leaves : [line.Leaves.FirstOrDefault(l => l.Evaluate(_now) == Truth.True) ?? line.Leaves[0]];

    // An unknown neighbour keeps a rule from failing but not from firing: most edges need no more than quiet neighbours.
    private IEnumerable<Change> OfLeaf(ConditionLine line, Condition leaf) => OfLeaf(line, leaf, false).Concat(OfLeaf(line, leaf, true));

    private IEnumerable<Change> OfLeaf(ConditionLine line, Condition leaf, bool neighboursFail)
    {
        var quiet = new Quiet(_now, FactChange.NameOf(leaf));
        // What must hold comes first: it leaves less choice.
        if (!Neighbours(line, leaf).OrderByDescending(n => n.Truth).All(n => (n.Truth == Truth.False && !neighboursFail && n.Condition.Evaluate(_now) == Truth.Open) || quiet.Force(n.Condition, n.Truth)))
            return [];
        if (IsOfVariant(leaf))
            return OtherVariants(quiet.Facts).Where(c => quiet.Suits(ViewOf(c.Variant!.Value)));
        var variant = VariantFor(quiet);
        if (variant == -1)
            return [];
        var values = FactChange.Edges(leaf, _now).Append(FactChange.Unknown(leaf));
        if (line.Group is { } group)
            values = values.Concat(FactChange.Edges(leaf, _now).Append(FactChange.Unknown(leaf)).Select(v => v with { Name = FactChange.AllOf(group) }));
        return values.Where(v => !quiet.Facts.Exists(f => f.Name == v.Name)).Select(v => new Change([.. quiet.Facts, v], variant));
    }

    // What stands beside the condition in "any of" must fail and what stands beside it in a branch must hold, so that it decides alone.
    private static IEnumerable<(Condition Condition, Truth Truth)> Neighbours(ConditionLine line, Condition leaf)
    {
        foreach (var (whole, place) in line.Above.Where(a => a.Whole is not NotCondition))
        {
            var parts = ConditionLine.Parts(whole)!;
            for (var i = 0; i < parts.Count; i++)
            {
                if (i != place)
                    yield return (parts[i], whole is AnyCondition ? Truth.False : Truth.True);
            }
        }
        foreach (var other in line.Leaves.Where(l => l != leaf && line.Group is null))
            yield return (other, Truth.False);
    }

    // Null where the variant of the example will do, -1 where none does.
    private int? VariantFor(Quiet quiet)
    {
        if (quiet.Suits(_now))
            return null;
        for (var i = 0; i < book.Variants.Count; i++)
        {
            if (quiet.Suits(ViewOf(i)))
                return i;
        }
        return -1;
    }

    private IEnumerable<Change> OtherVariants(IReadOnlyList<FactChange> facts)
        => book.Variants.Where(v => v.Index != fired.Example.Variant).Select(v => new Change(facts, v.Index));

    private FactView ViewOf(int variant)
        => new(fired.Athlete, fired.Rule.PerCandidate ? Candidates.CandidateTable.Bare(book.Vocabulary, book.Variants[variant], fired.Athlete, null, null) : [], fired.Findings);

    /// <summary>Whether the variant alone decides a condition.</summary>
    public static bool IsOfVariant(Condition leaf) => leaf.Reads.Any() && leaf.Reads.All(r => r.Word.About == WordAbout.Variant || r.Word.Id == "variant");
}
