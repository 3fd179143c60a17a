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
    {
        if (!line.Condition.Text.StartsWith("any ", StringComparison.Ordinal))
            return line.Leaves;
        return [line.Leaves.FirstOrDefault(l => l.Evaluate(_now) == Truth.True) ?? line.Leaves[0]];
    }

    private IEnumerable<Change> OfLeaf(ConditionLine line, Condition leaf)
    {
        var quiet = new Quiet(_now);
        foreach (var (whole, place) in line.Above)
        {
            var parts = ConditionLine.Parts(whole)!;
            for (var i = 0; i < parts.Count; i++)
            {
                if (i != place && whole is not NotCondition && !quiet.Force(parts[i], whole is AnyCondition ? Truth.False : Truth.True))
                    return [];
            }
        }
        foreach (var other in line.Leaves.Where(l => l != leaf))
        {
            if (!quiet.Force(other, Truth.False))
                return [];
        }
        if (IsOfVariant(leaf))
            return OtherVariants(quiet.Facts).Where(c => quiet.Suits(ViewOf(c.Variant!.Value)));
        var variant = VariantFor(quiet);
        if (variant == -1)
            return [];
        var values = FactChange.Edges(leaf, _now).Append(FactChange.Unknown(leaf));
        return values.Where(v => !quiet.Facts.Exists(f => f.Name == v.Name)).Select(v => new Change([.. quiet.Facts, v], variant));
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
