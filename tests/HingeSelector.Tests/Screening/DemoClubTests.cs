using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

public sealed class DemoClubTests
{
    private static readonly Vocabulary _words = Repository.Vocabulary;

    [Fact]
    public void The_demo_club_reads_with_no_fault()
    {
        var bag = new DiagnosticBag();
        var result = RosterReader.Read(Repository.Source("content/demo/club.csv"), _words, Repository.DemoDay, bag);
        DiagnosticPrinter.Print(bag.Sorted).ShouldBeEmpty();
        result.Good.Count.ShouldBe(24);
        result.BadRows.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("content/demo/room.yaml")]
    [InlineData("content/demo/room-without-blocks.yaml")]
    public void The_demo_rooms_read_with_no_fault(string path)
    {
        var bag = new DiagnosticBag();
        RoomReader.Read(Repository.Source(path), bag).ShouldNotBeNull();
        bag.Sorted.ShouldBeEmpty();
    }

    [Fact]
    public void The_demo_standing_choices_read_with_no_fault()
    {
        var bag = new DiagnosticBag();
        var choices = StandingReader.Read(Repository.Source("content/demo/standing.yaml"), Repository.VariantIds, Repository.DemoDay, bag);
        bag.Sorted.ShouldBeEmpty();
        choices!.Count.ShouldBe(9);
        choices["p15"].StartHeight!.Value.ShouldBe(0.275, 1e-12);
        Repository.VariantIds[choices["p09"].Variant].ShouldBe("wide-grip");
    }

    // What the demo's README says about each athlete must be what the tables hold.
    [Theory]
    [InlineData("p01", "shoulder-flexion-loss", null, "not decided")]
    [InlineData("p02", "arm-pop-locking-or-tingling", null, "yes")]
    [InlineData("p02", "elbow-pain-worst", "worse", "3 points")]
    [InlineData("p02", "elbow-pain-at-rest", "worse", "0 points")]
    [InlineData("p02", "fever-or-illness", null, "no")]
    [InlineData("p03", "stature", null, "180.3 cm")]
    [InlineData("p03", "mass", null, "89.8 kg")]
    [InlineData("p03", "held-height", null, "22.9 cm")]
    [InlineData("p03", "relative-strength", null, "not decided")]
    [InlineData("p03", "hours-to-hard-throwing", null, "not measured")]
    [InlineData("p04", "history", "throwing", "shoulder-operation + shoulder-dislocation")]
    [InlineData("p04", "history", "other", "none")]
    [InlineData("p04", "not-cleared", "hang-through-arm", "shoulder-operation + shoulder-dislocation")]
    [InlineData("p04", "not-cleared", "load-in-hand", "shoulder-dislocation")]
    [InlineData("p04", "clearance-load-cap", null, "20 kg")]
    [InlineData("p07", "shoulder-flexion-loss", null, "12 deg")]
    [InlineData("p07", "rotation-arc-loss", null, "4 deg")]
    [InlineData("p09", "relative-strength", null, "2.41 x body mass")]
    [InlineData("p11", "grip-strength", "left", "not applicable")]
    [InlineData("p11", "grip-strength", "worse", "58 kg")]
    [InlineData("p11", "grip-strength", "gap", "not applicable")]
    [InlineData("p13", "letter", "valid", "low-back-stress-injury")]
    [InlineData("p13", "not-cleared", "leaning-back", "low-back-stress-injury")]
    [InlineData("p13", "not-cleared", "spinal-load", "none")]
    [InlineData("p13", "clearance-load-cap", null, "60 kg")]
    [InlineData("p17", "fever-or-illness", null, "expired")]
    [InlineData("p17", "knee-pain-worst", "worse", "0 points")]
    [InlineData("p17", "straight-leg-raise", "worse", "expired")]
    [InlineData("p18", "guardian-consent", null, "no")]
    [InlineData("p18", "straight-leg-raise", "worse", "not measured")]
    [InlineData("p20", "shoulder-flexion", "worse", "expired")]
    [InlineData("p21", "mass", null, "refused")]
    [InlineData("p21", "straight-leg-raise", "worse", "refused")]
    [InlineData("p22", "letter", "expired", "elbow-operation")]
    [InlineData("p22", "clearance-load-cap", null, "not applicable")]
    [InlineData("p24", "fever-or-illness", null, "not measured")]
    public void A_demo_athlete_has_the_facts_that_its_page_tells(string athlete, string word, string? reading, string expected)
    {
        var record = RosterReader.Read(Repository.Source("content/demo/club.csv"), _words, Repository.DemoDay, new DiagnosticBag()).Good.Single(r => r.Id == athlete);
        var table = FactTable.Build(record, _words, Repository.DemoDay, null);
        _words[word].Print(table[Vocabulary.Reading(_words[word], reading)!.Slot]).ShouldBe(expected);
    }

    [Fact]
    public void The_next_day_all_answers_of_the_day_are_out_of_date()
    {
        var record = RosterReader.Read(Repository.Source("content/demo/club.csv"), _words, Repository.DemoDay, new DiagnosticBag()).Good[0];
        var table = FactTable.Build(record, _words, Repository.DemoDay.AddDays(1), null);
        foreach (var word in _words.InGroup("stop-questions"))
            table[word.Slot].State.ShouldBe(FactState.Expired, word.Id);
    }
}
