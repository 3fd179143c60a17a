using HingeSelector.Candidates;
using HingeSelector.Knowledge;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Candidates;

/// <summary>The hand heights that a room can make.</summary>
public sealed class HandHeightsTests
{
    [Fact]
    public void Blocks_that_differ_by_less_than_a_tenth_of_a_millimetre_make_one_height()
    {
        var room = new Room { Name = "room", Blocks = [(0.05004, 1), (0.05002, 1)] };

        var heights = HandHeights.For(new HeightRule(HeightRuleKind.Floor, 0), false, room, 0.45, null, RepositoryFiles.Book.Assumptions).Heights;

        heights.Select(h => h.Height).ShouldBe([0.225, 0.275, 0.3251]);
    }
}
