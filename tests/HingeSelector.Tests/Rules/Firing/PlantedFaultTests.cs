using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Rules.Firing;

/// <summary>A comparison that never fails proves nothing: a wrong rule given to one of the three must show.</summary>
public sealed class PlantedFaultTests
{
    public static TheoryData<string, string> Faults => new()
    {
        { "below 65 deg", "at most 65 deg" },
        { "above 8 points", "above 7 points" },
        { "between 2 and 5 points", "from 2 to 5 points" },
        { "from 10 to 40 kg", "between 10 and 40 kg" },
        { "includes hernia or eye-operation", "includes hernia" },
        { "history: is empty", "history: is not empty" },
        { "is not hard", "is not none" },
        { "'hip-flexion, other'", "'hip-flexion, throwing'" },
        { "tired: is absent, throwing-today", "tired: is present, throwing-today" },
        { "weak-grip: is absent, fresh: is present", "fresh: is present" },
        { "none of:\n        - {no-trouble: is present, either-trouble", "any of:\n        - {no-trouble: is present, either-trouble" },
        { "'posture, standard': is solved or unreachable", "'posture, standard': is solved" },
        { "no-trouble: is absent, sex: is female", "no-trouble: is absent, sex: is male" },
        { "variant: is not sumo", "variant: is not conventional" },
        { "between 0 and 5 deg", "between 0 and 6 deg" },
        { "at-ease: is absent}", "at-ease: is present}" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_in_the_loop_is_caught(string right, string wrong)
        => Caught(new Trio(EveryOperator.With(right, wrong), EveryOperator.Files, EveryOperator.Files));

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_in_the_network_is_caught(string right, string wrong)
        => Caught(new Trio(EveryOperator.Files, EveryOperator.With(right, wrong), EveryOperator.Files));

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_in_the_naive_interpreter_is_caught(string right, string wrong)
        => Caught(new Trio(EveryOperator.Files, EveryOperator.Files, EveryOperator.With(right, wrong)));

    [Fact]
    public void A_rule_that_one_of_them_does_not_know_is_caught()
    {
        var without = RulesFolder.WithTopics([.. EveryOperator.Topics.Select(t => (t.Path, t.Text.Replace("age: at least 18 years", "age: at least 90 years", StringComparison.Ordinal)))]);
        Caught(new Trio(EveryOperator.Files, without, EveryOperator.Files));
    }

    private static void Caught(Trio trio)
    {
        for (var seed = 0; seed < 3000; seed++)
        {
            if (trio.Difference(seed) is not null)
                return;
        }
        Assert.Fail("3000 cases did not show the fault.");
    }
}
