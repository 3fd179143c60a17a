using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>A set, taken apart: whether it is known, and for each item whether it is in.</summary>
/// <param name="reading">The word, with its reading where its readings are sets of their own.</param>
/// <param name="itself">Whether it is known.</param>
/// <param name="items">One family an item, as items are typed.</param>
/// <param name="throwing">The throwing side: not known, left, right, not applicable.</param>
/// <param name="same">Whether both sides hold the same: yes, no; null for a set without sides.</param>
internal sealed class SetWord(WordReading reading, Family itself, IReadOnlyList<Family> items, IReadOnlyList<Form> throwing, Family? same)
{
    private readonly LeafForm _known = itself.Leaf(s => itself[s].Tag == 1 ? Truth.True : Truth.False);
    private readonly LeafForm _openWhileUnknown = itself.Leaf(s => itself[s].Tag == 0 ? Truth.Open : Truth.False);
    private readonly LeafForm _open = itself.Leaf(_ => Truth.Open);
    private readonly LeafForm? _same = same?.Leaf(s => s == 0 ? Truth.True : Truth.False);
    private readonly LeafForm[] _in = [.. items.Select(f => f.Leaf(s => s == 1 ? Truth.True : Truth.False))];

    /// <summary>The word, with its reading where its readings are sets of their own.</summary>
    public WordReading Reading { get; } = reading;

    /// <summary>Whether it is known.</summary>
    public Family Itself { get; } = itself;

    /// <summary>One family an item.</summary>
    public IReadOnlyList<Family> Items { get; } = items;

    /// <summary>The set is known.</summary>
    public Form Known => _known;

    /// <summary>At least one of some items is in, or none is. While the set is not known both are open, whatever the items.</summary>
    public Form Has(ulong mask, bool wanted)
        => new AnyForm([new AllForm([_known, Asked(Any(_in.Where((_, i) => (mask & (1UL << i)) != 0)), wanted)]), _openWhileUnknown]);

    /// <summary>The same of what is there on one side: left, right, throwing or other.</summary>
    public Form HasOn(string side, ulong mask, bool wanted)
    {
        var (left, right) = (On(Sides.Left, mask), On(Sides.Right, mask));
        if (side is "left" or "right")
            return new AnyForm([new AllForm([_known, Asked(side == "left" ? left : right, wanted)]), _openWhileUnknown]);
        var (first, second) = side == "throwing" ? (left, right) : (right, left);
        // Without a known throwing side, only what is the same on both sides is known.
        return new AnyForm(
        [
            new AllForm([_known, throwing[1], Asked(first, wanted)]),
            new AllForm([_known, throwing[2], Asked(second, wanted)]),
            new AllForm([_known, throwing[0], _same!, Asked(left, wanted)]),
            new AllForm([_known, throwing[0], new NotForm(_same!), _open]),
            new AllForm([new NotForm(throwing[3]), _openWhileUnknown]),
        ]);
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

    private static Form Asked(Form any, bool wanted) => wanted ? any : new NotForm(any);

    private static AnyForm Any(IEnumerable<Form> parts) => new([.. parts]);

    /// <summary>One of some items is there on a side; typed without a side it counts on both.</summary>
    private AnyForm On(int side, ulong mask)
        => Any(Sided().Where(p => (mask & (1UL << p)) != 0).Select(p => On(side, p)));

    private AnyForm On(int side, int plain)
        => new([_in[plain], _in[Reading.Word.ValueSides!.Typed.ToList().IndexOf($"{Reading.Word.ValueSides.Plain[plain]} {Sides.Names[side]}")]]);

    /// <summary>What links the family that says whether both sides hold the same to the items.</summary>
    public IReadOnlyList<Form> MeaningOfSame()
    {
        var meaning = SameOnBothSides();
        return [new AnyForm([new NotForm(_same!), meaning]), new AnyForm([_same!, new NotForm(meaning)])];
    }

    private AllForm SameOnBothSides() => new([.. Sided().Select(p =>
    {
        var (left, right) = (On(Sides.Left, p), On(Sides.Right, p));
        return new AnyForm([new AllForm([left, right]), new AllForm([new NotForm(left), new NotForm(right)])]);
    })]);

    private IEnumerable<int> Sided() => Enumerable.Range(0, Reading.Word.ValueSides!.Plain.Count).Where(Reading.Word.ValueSides.HasSides);
}
