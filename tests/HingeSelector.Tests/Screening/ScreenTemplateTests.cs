using HingeSelector.Screening;

namespace HingeSelector.Tests.Screening;

public sealed class ScreenTemplateTests
{
    [Fact]
    public void A_blank_screen_reads_as_an_empty_record()
    {
        var yaml = ScreenTemplate.AsYaml(Repository.Vocabulary);
        Screens.Faults(yaml).ShouldBeEmpty();
        var record = Screens.Read(yaml);
        record.Answers.ShouldBeEmpty();
        record.Clearances.ShouldBeEmpty();
        record.Id.ShouldBe("p01");
    }

    [Fact]
    public void A_blank_screen_asks_for_every_word_once_under_its_section()
    {
        var lines = ScreenTemplate.AsYaml(Repository.Vocabulary).Split('\n');
        var section = "";
        var found = new Dictionary<string, string>();
        foreach (var line in lines.Where(l => l.Length > 0 && l[0] != '#'))
        {
            var key = line.Trim().Split(':')[0];
            if (line[0] != ' ')
                section = key;
            else if (key is not ("date" or "measured-by" or "asked-by"))
                found.Add(key, section);
        }
        foreach (var word in Repository.Vocabulary.Words.Where(w => w.IsMeasured))
            found[word.Id].ShouldBe(word.About.ToString().ToLowerInvariant(), word.Id);
        lines.ShouldContain(l => l.StartsWith("  stature:", StringComparison.Ordinal) && l.EndsWith("# Stature: in cm, 120 to 220, usually 145 to 208", StringComparison.Ordinal));
    }

    [Fact]
    public void A_blank_roster_reads_with_no_athletes_and_no_fault()
    {
        var result = Screens.Roster(ScreenTemplate.AsCsvHeader(Repository.Vocabulary), out var faults);
        faults.ShouldBeEmpty();
        result.HeaderRead.ShouldBeTrue();
        result.Good.ShouldBeEmpty();
    }

    [Fact]
    public void A_blank_roster_has_a_column_for_every_side_of_every_word()
    {
        var columns = ScreenTemplate.AsCsvHeader(Repository.Vocabulary).TrimEnd('\n').Split(',');
        columns.ShouldContain("straight-leg-raise right (deg)");
        columns.ShouldBeUnique();
        columns.ShouldContain("held-heights");
        columns.Length.ShouldBe(9 + Repository.Vocabulary.Words.Where(w => w.IsMeasured).Sum(w => w.Sided ? 2 : 1));
    }
}
