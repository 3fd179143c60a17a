using System.Collections.Concurrent;
using HingeSelector.Knowledge;
using HingeSelector.Screening;

namespace HingeSelector.Candidates;

/// <summary>The bar heights that a room can make, whoever pulls. Each list is made once; safe to share between threads.</summary>
/// <param name="room">The room; null when none is given.</param>
/// <param name="assumed">What is taken when nothing is said.</param>
public sealed class HeightLists(Room? room, Assumptions assumed)
{
    private readonly ConcurrentDictionary<(double Start, string Name, bool Pins), IReadOnlyList<(double Height, string Made)>> _made = [];

    /// <summary>The room; null when none is given.</summary>
    public Room? Room => room;

    /// <summary>Heights from a start upwards, ascending, each with what makes it.</summary>
    /// <param name="start">The lowest, m.</param>
    /// <param name="name">What makes the lowest.</param>
    /// <param name="pins">Whether rack pins may hold it.</param>
    public IReadOnlyList<(double Height, string Made)> From(double start, string name, bool pins) => _made.GetOrAdd((start, name, pins), key => Make(key.Start, key.Name, key.Pins));

    private List<(double Height, string Made)> Make(double start, string name, bool pins)
    {
        var heights = new SortedDictionary<double, string>();
        void Add(double height, string made)
        {
            if (height <= assumed.HighestStart + HandHeights.SameHeight && !heights.Keys.Any(h => Math.Abs(h - height) < HandHeights.SameHeight))
                heights.Add(Math.Round(height, 4), made);
        }

        heights.Add(Math.Round(start, 4), name);
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
        return [.. heights.Where(h => h.Key >= Math.Round(start, 4) - HandHeights.SameHeight).Select(h => (h.Key, h.Value))];
    }

    private static IEnumerable<(double Height, string Made)> Piles(IReadOnlyList<(double Height, int Pairs)> blocks)
    {
        var piles = new List<(double Height, string Made)> { (0, "") };
        foreach (var (height, pairs) in blocks.OrderByDescending(b => b.Height))
        {
            piles = [.. piles.SelectMany(p => Enumerable.Range(0, Math.Min(pairs, 4) + 1)
                .Select(n => (p.Height + (n * height), n == 0 ? p.Made : Join(p.Made, n, height))))];
        }
        return piles.Where(p => p.Height > 0).OrderBy(p => p.Height);
    }

    private static string Join(string made, int number, double height)
    {
        var one = (number == 1 ? "" : $"{number} x ") + Quantities.QuantityText.Print(height, Quantities.Unit.Find("cm")) + " blocks";
        return made.Length == 0 ? one : $"{made} + {one}";
    }
}
