using HingeSelector.Knowledge;
using HingeSelector.Screening;

namespace HingeSelector.Candidates;

/// <summary>The hand heights that a room can make for a variant, and the one that the variant starts from.</summary>
public sealed record HandHeights
{
    private const double SameHeight = 1e-6;

    /// <summary>Heights above the floor in metres, ascending, each with what makes it.</summary>
    public required IReadOnlyList<MadeHeight> Heights { get; init; }

    /// <summary>The variant's own height, m.</summary>
    public required double Standard { get; init; }

    /// <summary>Lists the heights.</summary>
    /// <param name="rule">Where the variant's hands start.</param>
    /// <param name="room">The room; null when none is given.</param>
    /// <param name="discDiameter">Largest disc on the bar, m; null when the day does not say.</param>
    /// <param name="kneeHeight">Height of the athlete's knee, m; null when the body is not known.</param>
    /// <param name="assumed">What is taken when nothing is said.</param>
    /// <param name="offBoxes">Whether the load stands on boxes (a kettlebell) and not on blocks or pins.</param>
    public static HandHeights For(HeightRule rule, bool offBoxes, Room? room, double? discDiameter, double? kneeHeight, Assumptions assumed)
    {
        var disc = discDiameter ?? (room is { Discs.Count: > 0 } ? room.Discs.Max(d => d.Diameter) : assumed.DiscDiameter);
        var floor = disc / 2;
        return rule.Kind switch
        {
            HeightRuleKind.Floor => Stacked(floor, "discs on the floor", floor, room, UpToTheKnee(assumed, kneeHeight), true),
            HeightRuleKind.LowHandle => Handle(room?.HexBars.Select(b => b.LowHandle), assumed.LowHandle, "low handles", floor, room, assumed),
            HeightRuleKind.HighHandle => Handle(room?.HexBars.Select(b => b.HighHandle), assumed.HighHandle, "high handles", floor, room, assumed),
            HeightRuleKind.Absolute when offBoxes => OnBoxes(rule.Value, room),
            HeightRuleKind.KneeHeight => Free((kneeHeight ?? (assumed.HighestStart - assumed.DiscDiameter)) * rule.Value, assumed),
            _ => Raised(rule.Value, floor, room, UpToTheKnee(assumed, kneeHeight)),
        };
    }

    // A bar that starts above the knee is another lift.
    private static Assumptions UpToTheKnee(Assumptions assumed, double? kneeHeight)
        => kneeHeight is { } knee && knee < assumed.HighestStart ? assumed with { HighestStart = knee } : assumed;

    /// <summary>The heights alone.</summary>
    public IReadOnlyList<Quantities.Length> Lengths()
    {
        var lengths = new Quantities.Length[Heights.Count];
        for (var i = 0; i < lengths.Length; i++)
            lengths[i] = Quantities.Length.FromMetres(Heights[i].Height);
        return lengths;
    }

    /// <summary>What makes a height.</summary>
    public string MadeBy(double height) => Heights.MinBy(h => Math.Abs(h.Height - height))!.Made;

    // Handles are measured with full discs on; smaller ones lower the frame by the difference of their radii.
    private static HandHeights Handle(IEnumerable<double?>? handles, double assumedHandle, string name, double floor, Room? room, Assumptions assumed)
    {
        var full = (room is { Discs.Count: > 0 } ? room.Discs.Max(d => d.Diameter) : assumed.DiscDiameter) / 2;
        var handle = (handles?.Where(h => h is not null).Min() ?? assumedHandle) - (full - floor);
        return Stacked(handle, name, handle, room, assumed, false);
    }

    // The variant's height is that of the handle on the lowest box; higher boxes raise it by their difference.
    private static HandHeights OnBoxes(double standard, Room? room)
    {
        var boxes = room?.Boxes.Where(b => b.Number > 0).Select(b => b.Height).Order().ToList() ?? [];
        if (boxes.Count == 0)
            return new HandHeights { Heights = [new(standard, room is null ? "no room given" : "a raised surface; no box is on file")], Standard = standard };
        return new HandHeights
        {
            Heights = [.. boxes.Select(b => new MadeHeight(standard + b - boxes[0], $"on the {Quantities.QuantityText.Print(b, Quantities.Unit.Find("cm"))} box"))],
            Standard = standard,
        };
    }

    // A hinge from the top turns where the coach says; no kit limits it, and a whole centimetre is as fine as eyes are.
    private static HandHeights Free(double share, Assumptions assumed)
    {
        var standard = Math.Round(share, 2);
        // The turning point itself is always there, also for shanks so long that it lies above the highest start.
        var heights = new List<MadeHeight> { new(standard, "turning point") };
        for (var h = standard + assumed.HeightStep; h <= assumed.HighestStart + SameHeight; h += assumed.HeightStep)
            heights.Add(new MadeHeight(h, "turning point"));
        return new HandHeights { Heights = heights, Standard = standard };
    }

    private static HandHeights Raised(double standard, double floor, Room? room, Assumptions assumed)
    {
        var all = Stacked(floor, "discs on the floor", floor, room, assumed, true);
        var raised = all.Heights.Where(h => h.Height >= standard - (assumed.HeightStep / 2)).ToList();
        // Without anything that raises a bar the kit rules exclude the variant; the search still needs a height to judge.
        return raised.Count > 0
            ? new HandHeights { Heights = raised, Standard = raised[0].Height }
            : new HandHeights { Heights = [new(standard, "nothing in this room")], Standard = standard };
    }

    private static HandHeights Stacked(double start, string name, double standard, Room? room, Assumptions assumed, bool pins)
    {
        var heights = new List<MadeHeight>();
        void Add(double height, string made)
        {
            var rounded = Math.Round(height, 4);
            if (height <= assumed.HighestStart + SameHeight && !heights.Exists(h => Math.Abs(h.Height - rounded) < SameHeight))
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
                for (var h = rack.LowestPin; h <= assumed.HighestStart + SameHeight; h += rack.PinSpacing)
                    Add(h, "rack pins");
            }
        }
        heights.RemoveAll(h => h.Height < start - SameHeight);
        heights.Sort(Lowest);
        return new HandHeights { Heights = heights, Standard = standard };
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
