using HingeSelector.Knowledge;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Reading;

/// <summary>Settles conditions on words of the variant once and for all: what is left depends on the athlete or the set-up.</summary>
public sealed class VariantSorter
{
    private readonly Word _variantWord;
    private readonly FactView[] _views;

    /// <summary>Prepares one view per variant that shows its words.</summary>
    public VariantSorter(Vocabulary vocabulary, IReadOnlyList<Variant> variants)
    {
        _variantWord = vocabulary["variant"];
        _views = [.. variants.Select(v => new FactView(new FactValue[vocabulary.AthleteSlots], Table(vocabulary, v), []))];
    }

    /// <summary>Splits conditions into the variants that meet the settled ones and the conditions that stay open.</summary>
    public (ulong Variants, IReadOnlyList<Condition> Open) Settle(IReadOnlyList<Condition> conditions)
    {
        var variants = 0UL;
        var settled = conditions.Where(IsSettled).ToList();
        for (var i = 0; i < _views.Length; i++)
        {
            if (settled.TrueForAll(c => c.Evaluate(_views[i]) == Truth.True))
                variants |= 1UL << i;
        }
        return (variants, [.. conditions.Where(c => !IsSettled(c))]);
    }

    private bool IsSettled(Condition condition)
        => !condition.Findings.Any() && condition.Reads.All(r => r.Word.About == WordAbout.Variant || r.Word.Id == _variantWord.Id);

    private FactValue[] Table(Vocabulary vocabulary, Variant variant)
    {
        var table = new FactValue[vocabulary.CandidateSlots];
        foreach (var (slot, value) in variant.Words)
            table[slot] = value;
        table[_variantWord.Slot] = FactValue.Choice(variant.Index);
        return table;
    }
}
