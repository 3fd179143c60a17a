using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>A set, taken apart: whether it is known, and for each item whether it is in.</summary>
/// <param name="word">The word.</param>
/// <param name="itself">Whether it is known.</param>
/// <param name="items">One family an item.</param>
internal sealed class SetWord(Word word, Family itself, IReadOnlyList<Family> items)
{
    private readonly LeafForm _known = itself.Leaf(s => itself[s].Tag == 1 ? Truth.True : Truth.False);
    private readonly LeafForm _openWhileUnknown = itself.Leaf(s => itself[s].Tag == 0 ? Truth.Open : Truth.False);
    private readonly LeafForm[] _in = [.. items.Select(f => f.Leaf(s => s == 1 ? Truth.True : Truth.False))];

    /// <summary>The word.</summary>
    public Word Word { get; } = word;

    /// <summary>Whether it is known.</summary>
    public Family Itself { get; } = itself;

    /// <summary>One family an item.</summary>
    public IReadOnlyList<Family> Items { get; } = items;

    /// <summary>At least one of some items is in, or none is. While the set is not known both are open, whatever the items.</summary>
    public Form Has(ulong mask, bool wanted)
    {
        var any = new AnyForm([.. _in.Where((_, i) => (mask & (1UL << i)) != 0)]);
        return new AnyForm([new AllForm([_known, wanted ? any : new NotForm(any)]), _openWhileUnknown]);
    }

    /// <summary>The answer to the word when the families stand in some states.</summary>
    public FactValue Value(Func<Family, int> state)
    {
        var tag = Itself[state(Itself)].Tag;
        if (tag != 1)
            return tag == 0 ? FactValue.Missing : FactValue.NotApplicable;
        var bits = 0UL;
        for (var i = 0; i < Items.Count; i++)
            bits |= state(Items[i]) == 1 ? 1UL << i : 0;
        return FactValue.Of(bits);
    }
}
