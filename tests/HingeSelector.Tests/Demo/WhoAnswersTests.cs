using HingeSelector.Recommending;
using HingeSelector.Rendering;

namespace HingeSelector.Tests.Demo;

/// <summary>A stop names for whose answer it waits, an open referral waits until it is closed, and the role is asked where a limit hangs on it.</summary>
public sealed class WhoAnswersTests
{
    private static readonly string[] _minor = ["age: 15 years", "qualified-adult-present: yes"];

    [Theory]
    [InlineData("guardian-consent: no", "REFER - no loaded pull until a parent or guardian answers")]
    [InlineData("health-questionnaire: not-done", "REFER - no loaded pull until the athlete answers")]
    [InlineData("health-questionnaire: asks-for-follow-up", "REFER - no loaded pull until a clinician answers")]
    public void The_heading_names_who_has_to_answer(string line, string heading)
        => OutcomeText.Headline(OneAthlete.Ask([.. _minor, "guardian-consent: yes", line])).ShouldBe(heading);

    [Fact]
    public void All_who_have_to_answer_are_named_once()
        => OutcomeText.Headline(OneAthlete.Ask([.. _minor, "guardian-consent: no", "health-questionnaire: not-done", "arm-pain-at-night: yes", "open-referral: yes"]))
            .ShouldBe("REFER - no loaded pull until a clinician, a parent or guardian and the athlete answer");

    [Theory]
    [InlineData("open-referral: yes")]
    [InlineData("open-referral: {value: yes, on: 2026-09-01}")]
    public void An_open_referral_stops_on_every_later_day_whatever_the_blanket_says(string line)
        => OneAthlete.Ask(line).Stops.ShouldHaveSingleItem().Trace.Rule.Id.ShouldBe("refer-open-referral");

    [Fact]
    public void A_referral_is_closed_by_its_own_no_for_that_day_only()
    {
        OneAthlete.Ask("open-referral: no").Outcome.ShouldBe(Outcome.Ranked);
        var later = OneAthlete.Ask("open-referral: {value: no, on: 2026-11-23}");
        later.Outcome.ShouldBe(Outcome.Held);
        later.Unanswered.ShouldHaveSingleItem().Word.ShouldBe("open-referral");
    }

    [Fact]
    public void A_referral_that_nobody_asked_about_holds()
        => OneAthlete.Ask("stop-questions:").Unanswered.Select(q => q.Word).ShouldContain("open-referral");

    [Theory]
    [InlineData("age: 22 years", true)]
    [InlineData("age: 25 years", true)]
    [InlineData("age: 26 years", false)]
    public void The_role_must_be_known_as_long_as_the_line_for_fast_bowlers_may_apply(string age, bool held)
    {
        var answer = OneAthlete.Ask(age, "role:");
        answer.Outcome.ShouldBe(held ? Outcome.Held : Outcome.Ranked);
        answer.Unanswered.Select(q => q.Word).ShouldBe(held ? ["role"] : []);
        OneAthlete.Ask(age, "role: other").Outcome.ShouldBe(Outcome.Ranked);
    }

    [Fact]
    public void Without_an_age_the_role_must_be_known_too()
        => OneAthlete.Ask("age:", "role:").Unanswered.Select(q => q.Word).ShouldContain("role");
}
