using HingeSelector.Diagnostics;
using HingeSelector.Screening;

namespace HingeSelector.Explaining;

/// <summary>A room with another count of some kit.</summary>
internal static class ChangedRoom
{
    private const int MostOfAKind = 1000;

    /// <summary>The room; null when the change cannot be made (the bag says why).</summary>
    public static Room? With(Room room, WhatIfChange change, DiagnosticBag bag)
    {
        if (change.Word.Id == "bars-may-be-dropped")
            return room with { BarsMayBeDropped = change.Value.IsKnown ? change.Value.Bits == 2 : null };
        if (!change.Value.IsExact || change.Value.Low is < 0 or > MostOfAKind || change.Value.Low != Math.Floor(change.Value.Low))
        {
            bag.Add(Problems.NotACount(change.Span, change.Word.Id, change.Then, MostOfAKind));
            return null;
        }
        var count = (int)change.Value.Low;
        return change.Word.Id switch
        {
            "straps-in-room" => room with { Straps = count },
            "cables-or-bands" => room with { CablesOrBands = count },
            "straight-bars" => Counted(room, room.StraightBars, count, change, bag) is { } bars ? room with { StraightBars = [.. bars.Select(b => b with { Number = count })] } : null,
            "hex-bars" => Counted(room, room.HexBars, count, change, bag) is { } bars ? room with { HexBars = [.. bars.Select(b => b with { Number = count })] } : null,
            "block-pairs" => Counted(room, room.Blocks, count, change, bag) is { } blocks ? room with { Blocks = [.. blocks.Select(b => b with { Pairs = count })] } : null,
            "racks" => Counted(room, room.Racks, count, change, bag) is { } racks ? room with { Racks = [.. racks.Select(r => r with { Number = count })] } : null,
            "weights-by-hand" => Counted(room, room.WeightsByHand, count, change, bag) is { } weights ? room with { WeightsByHand = [.. weights.Select(w => w with { Number = count })] } : null,
            _ => room,
        };
    }

    // None: nothing of the kind. Some: the count falls to the first kind of it, whose sizes are known.
    private static List<T>? Counted<T>(Room room, IReadOnlyList<T> items, int count, WhatIfChange change, DiagnosticBag bag)
    {
        if (count == 0)
            return [];
        if (items.Count > 0)
            return [items[0]];
        bag.Add(Problems.WhatIfNeedsSizes(change.Span, change.Word.Id, room.Name));
        return null;
    }
}
