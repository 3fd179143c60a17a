using HingeSelector.Examples;
using HingeSelector.Examples.Covering;
using HingeSelector.Examples.Mutating;
using HingeSelector.Rendering;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rules.Tries;

/// <summary>The examples of the shipped rules. After a change of rules: <c>hinge-selector rules try --propose</c>, with <c>--write</c> when they say what is meant.</summary>
public sealed class ShippedTriesTests
{
    private static readonly Lazy<IReadOnlyList<RuleCases>> _cases = new(() => RuleCases.Sound(RepositoryFiles.Book));

    [Fact]
    public void Every_condition_is_shown_met_not_met_and_unknown_and_every_threshold_from_both_sides()
    {
        var report = CoverageReport.Of(RepositoryFiles.Book, _cases.Value);
        report.Items.Count.ShouldBeGreaterThan(3000);
        string.Join('\n', CoverageText.Rows(report).Take(40)).ShouldNotContain("no example shows it");
    }

    [Fact]
    public void Examples_notice_at_least_95_of_100_mutants()
    {
        var report = MutationReport.Of(RepositoryFiles.Book, _cases.Value);
        report.Counted.ShouldBeGreaterThan(5000);
        report.Percent.ShouldBeGreaterThanOrEqualTo(95, string.Join('\n', MutationText.Rows(report, []).Take(60)));
    }
}
