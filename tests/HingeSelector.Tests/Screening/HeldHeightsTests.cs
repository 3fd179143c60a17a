namespace HingeSelector.Tests.Screening;

/// <summary>Several held heights: each counts for its own pull, and a single one is read as before.</summary>
public sealed class HeldHeightsTests
{
    private const string Two = """
        screen:
          date: 2026-11-20
          held-heights:
            - {in: hex-high, height: 31 cm, grip: 60 cm, stance: 30 cm}
            - {in: conventional, height: 34 cm, grip: 56 cm, empty bar: 26 cm, weight: 60 kg}
        """;

    [Theory]
    [InlineData("held-height", "conventional", "34 cm")]
    [InlineData("held-height", "hex-high", "31 cm")]
    [InlineData("held-height", "sumo", "not applicable")]
    [InlineData("held-height-grip", "hex-high", "60 cm")]
    [InlineData("held-height-stance", "hex-high", "30 cm")]
    [InlineData("held-height-stance", "conventional", "not measured")]
    public void Each_counts_for_its_own_pull(string word, string pull, string shown)
        => Screens.Table(Two).Show(word, pull).ShouldBe(shown);

    [Fact]
    public void The_bare_words_stand_for_the_first_in_the_order_of_the_variants()
    {
        var table = Screens.Table(Two);
        new[] { "held-height", "held-height-variant", "held-height-empty-bar", "first-working-weight" }.Select(w => table.Show(w)).ShouldBe(["34 cm", "conventional", "26 cm", "60 kg"]);
    }

    [Theory]
    [InlineData("held-height: 34 cm\n  held-height-variant: conventional", "34 cm", "not applicable")]
    [InlineData("held-height: 34 cm", "not decided", "not decided")]
    [InlineData("knee-to-wall: not measured", "not measured", "not measured")]
    [InlineData("held-height-variant: conventional", "not measured", "not applicable")]
    [InlineData("held-height: refused\n  held-height-variant: conventional", "refused", "not applicable")]
    public void A_single_one_is_read_as_before(string lines, string conventional, string sumo)
    {
        var table = Screens.Table($"screen:\n  date: 2026-11-20\n  {lines}\n");
        table.Show("held-height", "conventional").ShouldBe(conventional);
        table.Show("held-height", "sumo").ShouldBe(sumo);
    }

    [Fact]
    public void A_single_one_beside_a_list_is_one_more()
    {
        var table = Screens.Table(Two + "\n  held-height: 28 cm\n  held-height-variant: sumo\n  held-height-grip: 46 cm\n");
        new[] { "conventional", "hex-high", "sumo" }.Select(p => table.Show("held-height", p)).ShouldBe(["34 cm", "31 cm", "28 cm"]);
        table.Show("held-height").ShouldBe("28 cm");
    }

    [Fact]
    public void Each_grows_old_by_its_own_date()
    {
        var table = Screens.Table("screen:\n  date: 2026-11-20\n  held-heights:\n    - {in: conventional, height: 34 cm, on: 2026-09-01}\n    - {in: hex-high, height: 31 cm}\n");
        table.Show("held-height", "conventional").ShouldBe("expired");
        table.Show("held-height", "hex-high").ShouldBe("31 cm");
    }

    [Fact]
    public void One_cell_of_a_roster_holds_several()
    {
        var result = Screens.Roster("id,screen date,held-heights\na1,2026-11-20,conventional; 34 cm; grip 56 cm; empty bar 26 cm | hex-high; 12 in; grip 60 cm; stance 30 cm; weight 80 kg\n", out var faults);
        faults.ShouldBeEmpty();
        var table = HingeSelector.Screening.FactTable.Build(result.Good.Single(), Repository.Vocabulary, Repository.DemoDay, null);
        table.Show("held-height", "hex-high").ShouldBe("30.5 cm");
        table.Show("held-height-grip", "conventional").ShouldBe("56 cm");
    }
}
