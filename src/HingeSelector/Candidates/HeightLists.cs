using System.Collections.Concurrent;
using HingeSelector.Knowledge;
using HingeSelector.Screening;

namespace HingeSelector.Candidates;

/// <summary>The bar heights that a room can make, whoever pulls. Each list is made once; safe to share between threads.</summary>
/// <param name="room">The room; null when none is given.</param>
/// <param name="assumed">What is taken when nothing is said.</param>
public sealed class HeightLists(Room? room, Assumptions assumed)
{
    private readonly ConcurrentDictionary<Key, IReadOnlyList<MadeHeight>> _made = [];

    private sealed record Key(double Start, string Name, bool Pins);

    /// <summary>The room; null when none is given.</summary>
    public Room? Room => room;

    /// <summary>Heights from a start upwards, ascending, each with what makes it.</summary>
    /// <param name="start">The lowest, m.</param>
    /// <param name="name">What makes the lowest.</param>
    /// <param name="pins">Whether rack pins may hold it.</param>
    public IReadOnlyList<MadeHeight> From(double start, string name, bool pins) => _made.GetOrAdd(new Key(start, name, pins), key => Make(key.Start, key.Name, key.Pins));

    private List<MadeHeight> Make(double start, string name, bool pins)
    {
        var heights = new List<MadeHeight>();
        void Add(double height, string made)
        {
            var rounded = Math.Round(height, 4);
            if (height <= assumed.HighestStart + HandHeights.SameHeight && !heights.Exists(h => Math.Abs(h.Height - rounded) < HandHeights.SameHeight))
                heights.Add(new MadeHeight(rounded, made));
        }

        heights.Add(new MadeHeight(Math.Round(start, 4), name));
        if (room is null)
        {
            for (var h = start + assumed.HeightStep; h <= assumed.HighestStart; h += assumed.HeightStep)
                Add(h, "no room given");
        }
        else
        {
            foreach (var (height, made) in Piles(room.Blocks))
                Add(start + height, $"{name} + {made}");
            foreach (var rack in pins ? room.Racks : [])
            {
                for (var h = rack.LowestPin; h <= assumed.HighestStart + HandHeights.SameHeight; h += rack.PinSpacing)
                    Add(h, "rack pins");
            }
        }
        heights.RemoveAll(h => h.Height < Math.Round(start, 4) - HandHeights.SameHeight);
        heights.Sort(Lowest);
        return heights;
    }

    private static List<MadeHeight> Piles(IReadOnlyList<(double Height, int Pairs)> blocks)
    {
        var piles = new List<MadeHeight> { new(0, "") };
        foreach (var (height, pairs) in blocks.OrderByDescending(b => b.Height))
        {
            var more = new List<MadeHeight>();
            foreach (var pile in piles)
            {
                for (var n = 0; n <= Math.Min(pairs, 4); n++)
                    more.Add(n == 0 ? pile : new MadeHeight(pile.Height + (n * height), Join(pile.Made, n, height)));
            }
            piles = more;
        }
        return [.. piles.Where(p => p.Height > 0).OrderBy(p => p.Height)];
    }

    private static int Lowest(MadeHeight a, MadeHeight b) => a.Height.CompareTo(b.Height);

    private static string Join(string made, int number, double height)
    {
        var one = (number == 1 ? "" : $"{number} x ") + Quantities.QuantityText.Print(height, Quantities.Unit.Find("cm")) + " blocks";
        return made.Length == 0 ? one : $"{made} + {one}";
    }
}
