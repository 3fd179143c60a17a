using HingeSelector.Recommending;

namespace HingeSelector.Tests.Demo;

/// <summary>A letter opens what it is for and nothing else; pain is held against the history of its own side.</summary>
public sealed class LettersAndSidesTests
{
    private const string All = "load-in-hand, hang-through-arm, spinal-load, pull-from-floor, wide-stance, leaning-back";

    private static string Letters(params string[] about)
        => $"clearances: [{string.Join(", ", about.Select(a => $"{{who: A. Nkemba, profession: surgeon, date: 2026-10-01, valid-until: 2027-01-31, for: {a}, covers: [{All}], letter-seen-by: R. Idris}}"))}]";

    private static IEnumerable<string> Stops(Recommendation answer) => answer.Stops.Select(s => s.Trace.Rule.Id);

    [Fact]
    public void The_letter_for_a_knee_opens_no_spine()
    {
        const string history = "history: spine-operation + knee-operation left";
        Stops(OneAthlete.Ask(history, Letters("knee-operation left"))).ShouldBe(["refer-spine-operation-without-letter"]);
        Stops(OneAthlete.Ask(history, Letters("spine-operation"))).ShouldBe(["refer-knee-operation-without-letter"]);
        OneAthlete.Ask(history, Letters("knee-operation left", "spine-operation")).Outcome.ShouldBe(Outcome.Ranked);
    }

    [Theory]
    [InlineData("elbow-operation left", "elbow-operation left", Outcome.Ranked)]
    [InlineData("elbow-operation left", "elbow-operation right", Outcome.Refer)]
    [InlineData("elbow-operation", "elbow-operation right", Outcome.Refer)]
    [InlineData("elbow-operation left + elbow-operation right", "elbow-operation right", Outcome.Refer)]
    public void The_letter_for_one_arm_opens_no_other(string history, string about, Outcome outcome)
        => OneAthlete.Ask("history: " + history, Letters(about)).Outcome.ShouldBe(outcome);

    [Fact]
    public void A_letter_that_ran_out_is_told_although_another_one_holds()
        => Stops(OneAthlete.Ask(
            "history: hernia + knee-operation left",
            $"clearances: [{{who: A, profession: surgeon, date: 2026-10-01, valid-until: 2027-01-31, for: hernia, covers: [{All}], letter-seen-by: B}}, {{who: A, profession: surgeon, date: 2026-01-01, valid-until: 2026-06-30, for: knee-operation left, covers: [{All}], letter-seen-by: B}}]"))
            .ShouldBe(["refer-knee-operation-without-letter", "refer-letter-has-run-out"], ignoreOrder: true);

    [Theory]
    [InlineData("elbow-operation left", "left", true)]
    [InlineData("elbow-operation left", "right", false)]
    [InlineData("elbow-operation", "left", true)]
    [InlineData("elbow-operation", "right", true)]
    public void A_little_pain_counts_in_the_operated_arm_and_not_in_the_other(string history, string side, bool stops)
    {
        var pain = side == "left" ? "elbow-pain-worst: {left: 1 points, right: 0 points}" : "elbow-pain-worst: {left: 0 points, right: 1 points}";
        Stops(OneAthlete.Ask("history: " + history, Letters("elbow-operation left"), pain)).Contains("today-pain-in-an-operated-arm").ShouldBe(stops);
    }

    [Theory]
    [InlineData("shoulder-dislocation right", true)]
    [InlineData("shoulder-dislocation left", false)]
    [InlineData("shoulder-dislocation", true)]
    public void The_throwing_arm_is_told_apart(string history, bool told)
        => OneAthlete.Ask("history: " + history).Cautions.Any(c => c.Trace.Rule.Id == "the-arm-on-file-is-the-throwing-arm").ShouldBe(told);
}
