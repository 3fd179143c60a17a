using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>The words that are counted from the room file.</summary>
internal static class RoomFacts
{
    /// <summary>Fills their slots; without a room they stay not measured.</summary>
    public static void Fill(Room? room, Vocabulary vocabulary, FactValue[] facts)
    {
        if (room is null)
            return;
        var (blocks, racks) = (room.Blocks.Sum(b => b.Pairs), room.Racks.Sum(r => r.Number));
        Set("straight-bars", FactValue.Number(room.StraightBars.Sum(b => b.Number)));
        Set("hex-bars", FactValue.Number(room.HexBars.Sum(b => b.Number)));
        Set("block-pairs", FactValue.Number(blocks));
        Set("racks", FactValue.Number(racks));
        Set("straps-in-room", Counted(room.Straps));
        Set("weights-by-hand", FactValue.Number(room.WeightsByHand.Sum(w => w.Number)));
        Set("cables-or-bands", Counted(room.CablesOrBands));
        Set("room-can-raise-a-bar", FactValue.YesNo(blocks > 0 || racks > 0));
        Set("bars-may-be-dropped", room.BarsMayBeDropped is { } may ? FactValue.YesNo(may) : FactValue.Missing);

        void Set(string id, FactValue value) => facts[vocabulary[id].Slot] = value;
    }

    private static FactValue Counted(int? count) => count is { } number ? FactValue.Number(number) : FactValue.Missing;
}
