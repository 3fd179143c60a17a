using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Population;

/// <summary>Rooms to train in: mostly the club's own, then ones that lack this or that.</summary>
internal static class TrainingRooms
{
    /// <summary>Sixteen rooms, to be given out in turn.</summary>
    public static IReadOnlyList<Room> All()
    {
        var club = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag())!;
        var store = RoomReader.Read(RepositoryFiles.Source("content/demo/room-without-blocks.yaml"), new DiagnosticBag())!;
        var two = club with { HexBars = [.. club.HexBars.Select(b => b with { Number = 3 })] };
        return
        [
            club, two, club, two, club, two with { Racks = [] }, store, club with { HexBars = [] }, club with { BarsMayBeDropped = false }, club with { Blocks = [] }, two,
            club with { StraightBars = [.. club.StraightBars.Take(1).Select(b => b with { Number = 1 })] },
            two with { Straps = 0 },
            club with { WeightsByHand = [], CablesOrBands = 0 },
            store with { HexBars = [], Benches = 0 },
            OnTheRoad(club),
        ];
    }

    private static Room OnTheRoad(Room club) => club with { Name = "On the road", StraightBars = [], HexBars = [], Racks = [], Blocks = [], Discs = [], Straps = 0 };
}
