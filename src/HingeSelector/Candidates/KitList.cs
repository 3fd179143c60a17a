using HingeSelector.Screening;

namespace HingeSelector.Candidates;

/// <summary>Whether a room has the kit of a variant.</summary>
public static class KitList
{
    /// <summary>Whether everything on a variant's list is there.</summary>
    public static bool IsThere(IReadOnlyList<string> kit, Room room) => kit.All(k => Has(k, room));

    private static bool Has(string item, Room room) => item switch
    {
        "straight-bar" => room.StraightBars.Any(b => b.Number > 0),
        "hex-bar" => room.HexBars.Any(b => b.Number > 0),
        "blocks-or-rack" => room.Blocks.Any(b => b.Pairs > 0) || room.Racks.Any(r => r.Number > 0),
        "weights-by-hand" => room.WeightsByHand.Any(w => w.Number > 0),
        "cable-or-band" => room.CablesOrBands > 0,
        "bench" => room.Benches > 0,
        // A stick is any broom handle; a room that does not count them has one.
        "stick" => room.Sticks is not 0,
        _ => false,
    };
}
