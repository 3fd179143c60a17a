namespace HingeSelector.Words;

/// <summary>The sides that some values of a set have: an operated elbow is the left or the right one, a hernia is neither.</summary>
/// <remarks>
/// A value that has sides is typed with its side behind it (<c>elbow-operation left</c>). Typed without one it counts on both
/// sides: it may be either, so nothing is cleared by it.
/// </remarks>
public sealed class ValueSides
{
    private readonly List<int> _sided;

    /// <summary>Lays the values out: those without a side first, in file order, then left and right of those that have sides.</summary>
    /// <param name="plain">All values as rules name them.</param>
    /// <param name="sided">Those that have sides.</param>
    public ValueSides(IReadOnlyList<string> plain, IReadOnlyCollection<string> sided)
    {
        Plain = plain;
        _sided = [.. Enumerable.Range(0, plain.Count).Where(i => sided.Contains(plain[i]))];
        Typed = [.. plain, .. _sided.SelectMany(i => Sides.Names.Take(2).Select(side => $"{plain[i]} {side}"))];
    }

    /// <summary>The readings of such a word: all of it, then by side.</summary>
    public static IReadOnlyList<string> Readings { get; } = ["", "left", "right", "throwing", "other"];

    /// <summary>Values as rules name them.</summary>
    public IReadOnlyList<string> Plain { get; }

    /// <summary>Values as people type them, one bit each in an answer.</summary>
    public IReadOnlyList<string> Typed { get; }

    /// <summary>Whether a value as rules name it has sides.</summary>
    public bool HasSides(int plain) => _sided.Contains(plain);

    /// <summary>All bits that mean a value, whatever its side.</summary>
    public ulong MaskOf(int plain)
    {
        var place = _sided.IndexOf(plain);
        return (1UL << plain) | (place < 0 ? 0 : 3UL << (Plain.Count + (2 * place)));
    }

    /// <summary>The value as rules name it that a typed one means.</summary>
    public int PlainOf(int typed) => typed < Plain.Count ? typed : _sided[(typed - Plain.Count) / 2];

    /// <summary>What is there on one side, one bit for each value as rules name it; values without sides are on none.</summary>
    /// <param name="typed">Bits of the answer.</param>
    /// <param name="side">Left or right.</param>
    public ulong On(ulong typed, int side)
    {
        var bits = 0UL;
        for (var i = 0; i < _sided.Count; i++)
        {
            var either = (1UL << _sided[i]) | (1UL << (Plain.Count + (2 * i) + side));
            bits |= (typed & either) != 0 ? 1UL << _sided[i] : 0;
        }
        return bits;
    }
}
