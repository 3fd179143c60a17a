using HingeSelector.Rendering;
using HingeSelector.Tests.Cli;
using HingeSelector.Tests.Demo;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rendering;

/// <summary>The answer for one athlete begins with what a coach needs at the bar, and says no health fact beside a set-up change.</summary>
public sealed class TopBlockTests
{
    private const int MostRows = 8;

    private static readonly string[] _labels = ["Pull", "Height", "Hands", "Feet", "Work", "Say", "Beware"];

    public static TheoryData<string> Athletes { get; } = [.. Enumerable.Range(1, 24).Select(i => $"p{i:00}")];

    private static List<Line> Lines(params string[] change) => [.. new AthleteText(RepositoryFiles.Book).Of(OneAthlete.Ask(change), 3)];

    [Theory]
    [MemberData(nameof(Athletes))]
    public void At_most_eight_rows_come_before_the_rest(string id)
    {
        var rows = CliRun.Of([.. CliRun.Club, "--athlete", id]).Output.Split('\n').ToList();
        var first = rows.FindIndex(r => r.StartsWith("   Pull ", StringComparison.Ordinal));
        // Who may not pull is not told how to pull.
        if (!rows[0].Contains(": RANKED", StringComparison.Ordinal) && !rows[0].Contains(": LIMITED TODAY", StringComparison.Ordinal))
        {
            first.ShouldBe(-1);
            return;
        }
        if (rows[0].Contains(": RANKED", StringComparison.Ordinal))
            first.ShouldBe(1);
        var end = rows.FindIndex(first, r => r.Length > 1 && r[0] == ' ' && r[1] != ' ');
        (end - first).ShouldBeInRange(4, MostRows);
    }

    [Fact]
    public void It_says_pull_height_hands_feet_work_one_cue_and_one_caution_in_this_order()
        => Lines().Skip(1).TakeWhile(l => l.Kind == LineKind.Text).Select(l => l.Label).ShouldBe(_labels);

    [Fact]
    public void Height_and_hands_carry_their_numbers()
    {
        var lines = Lines("straight-leg-raise: {left: 48 deg, right: 50 deg}");
        var height = OneAthlete.Ask("straight-leg-raise: {left: 48 deg, right: 50 deg}").Ranked[0].Candidate;
        lines.First(l => l.Label == "Pull").Body.ShouldStartWith(height.Variant.Label);
        lines.First(l => l.Label == "Height").Body.ShouldStartWith(Cm.Of(height.Choice!.Heights.FirstTry));
    }

    [Fact]
    public void A_set_up_change_is_told_without_the_health_fact_behind_it()
    {
        var answer = OneAthlete.Ask("history: hamstring-strain-this-year left");
        var ranked = answer.Ranked("romanian");
        ranked.Changes.ShouldContain(c => c.Trace.Rule.Id == "hamstring-strain-lowers-the-load-at-length");
        var told = ChangeText.Of(ranked).ShouldNotBeNull();
        told.ShouldContain("load: lower");
        told.ShouldContain("--why romanian");
        told.ShouldNotContain("amstring");
        told.ShouldNotContain("istory");
        CliRun.Of([.. CliRun.Club, "--athlete", "p14", "--why", "block-start"]).Output.ShouldContain("What changed first in the last hard set");
    }

    [Fact]
    public void The_unverified_ratio_is_told_only_where_the_test_was_another_pull()
    {
        static bool Told(string tested) => OneAthlete.Ask("tested-1rm-variant: " + tested).Ranked("hex-high").Cautions.Any(c => c.Text.Contains("ratio of high handles", StringComparison.Ordinal));
        Told("conventional").ShouldBeTrue();
        Told("hex-high").ShouldBeFalse();
    }
}
