using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

public sealed class RoomReaderTests
{
    [Fact]
    public void The_room_is_counted_into_facts()
    {
        var table = Screens.Table("sex: male", room: Read("content/demo/room.yaml"));
        table.Show("straight-bars").ShouldBe("6");
        table.Show("hex-bars").ShouldBe("1");
        table.Show("block-pairs").ShouldBe("2");
        table.Show("racks").ShouldBe("2");
        table.Show("straps-in-room").ShouldBe("6");
        table.Show("weights-by-hand").ShouldBe("12");
        table.Show("cables-or-bands").ShouldBe("6");
        table.Show("room-can-raise-a-bar").ShouldBe("yes");
        table.Show("bars-may-be-dropped").ShouldBe("yes");
    }

    [Fact]
    public void A_room_without_blocks_and_racks_cannot_raise_a_bar()
    {
        var table = Screens.Table("sex: male", room: Read("content/demo/room-without-blocks.yaml"));
        table.Show("room-can-raise-a-bar").ShouldBe("no");
        table.Show("block-pairs").ShouldBe("0");
        table.Show("bars-may-be-dropped").ShouldBe("no");
    }

    [Fact]
    public void Without_a_room_nothing_is_said_about_it()
    {
        var table = Screens.Table("sex: male");
        foreach (var word in Repository.Vocabulary.Words.Where(w => w.About == WordAbout.Room))
            table[word.Slot].ShouldBe(FactValue.Missing, word.Id);
    }

    [Fact]
    public void A_bar_may_have_handles_at_one_height()
    {
        var bag = new DiagnosticBag();
        var room = RoomReader.Read(new SourceText("room.yaml", "{room: R, hex-bars: [{mass: 25 kg, high-handle: 31 cm, number: 1}]}"), bag);
        bag.Sorted.ShouldBeEmpty();
        room!.HexBars.Single().ShouldBe((25, null, 0.31, 1));
    }

    private static Room Read(string path) => RoomReader.Read(Repository.Source(path), new DiagnosticBag())!;
}
