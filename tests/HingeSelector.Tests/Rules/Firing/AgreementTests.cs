using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Rules.Firing;

public sealed class AgreementTests
{
    [Fact]
    public void Network_loop_and_naive_interpreter_agree_on_every_operator()
    {
        var trio = new Trio(EveryOperator.Files);
        for (var seed = 0; seed < 600; seed++)
            trio.Difference(seed).ShouldBeNull($"case {seed}");
        trio.Tally.RulesFired.ShouldBe(trio.Book.Rules.Count);
        trio.Tally.RulesOpen.ShouldBeGreaterThan(trio.Book.Rules.Count - 2);
        trio.Tally.Absent.ShouldBeGreaterThan(1000);
    }

    [Fact]
    public void Network_loop_and_naive_interpreter_agree_on_the_shipped_rules()
    {
        var trio = new Trio(RulesFolder.Shipped);
        for (var seed = 0; seed < 300; seed++)
            trio.Difference(seed).ShouldBeNull($"case {seed}");
        trio.Tally.RulesFired.ShouldBeGreaterThan(trio.Book.Rules.Count * 9 / 10);
    }
}
