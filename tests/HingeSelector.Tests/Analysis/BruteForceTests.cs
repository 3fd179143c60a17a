using HingeSelector.Analysis;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Solving;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Analysis;

/// <summary>What the checks say of small rule bases is what trying every screen says: nothing missed, nothing made up.</summary>
public sealed class BruteForceTests
{
    private const int Bases = 60;

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(0, Bases)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_solver_agrees_with_every_screen(int seed)
    {
        var small = new SmallBooks(seed);
        var book = small.Make();
        var all = new EveryScreen(book, small.Kind);
        var check = new CheckedBook(book, RulesFolder.Shipped);

        var fired = book.Rules.ToDictionary(r => r.Index, r => Firings(r, all, book));
        check.Living.Select(r => r.Id).ShouldBe(book.Rules.Where(r => fired[r.Index].Count > 0).Select(r => r.Id), "which rules can fire");
        foreach (var rule in check.Living)
        {
            var implied = check.Living.Where(o => o != rule && check.Implies(rule, o)).Select(o => o.Id);
            implied.ShouldBe(check.Living.Where(o => o != rule && fired[rule.Index].IsSubsetOf(fired[o.Index])).Select(o => o.Id), $"what {rule.Id} implies");
            foreach (var line in rule.Conditions.Where(IsOfTheAthlete))
            {
                var idle = check.Solver.FindComplete(new Goal(check.Space.Of(line), Need.NotTrue)) is null;
                idle.ShouldBe(all.Screens.Where(s => s.Complete).All(s => all.Of(line, s) == Truth.True), $"whether '{line.Text}' leaves nobody out");
            }
        }
        (new Gaps(check).NothingLeft() is not null).ShouldBe(HasGap(book, all), "whether a screen leaves nothing");
    }

    [Fact]
    public void The_bases_show_every_kind_of_fault()
    {
        var (dead, implied, gaps) = (0, 0, 0);
        for (var seed = 0; seed < Bases; seed++)
        {
            var book = new SmallBooks(seed).Make();
            var check = new CheckedBook(book, RulesFolder.Shipped);
            dead += book.Rules.Count - check.Living.Count;
            implied += check.Living.Sum(r => check.Living.Count(o => o != r && check.Implies(r, o)));
            gaps += new Gaps(check).NothingLeft() is null ? 0 : 1;
        }
        dead.ShouldBeGreaterThan(15);
        implied.ShouldBeGreaterThan(30);
        gaps.ShouldBeInRange(5, Bases - 5);
    }

    private static bool IsOfTheAthlete(Condition condition) => condition.Reads.All(r => !r.Word.OfCandidate) && (condition.Reads.Any() || condition.Findings.Any());

    private static HashSet<int> Firings(Rule rule, EveryScreen all, RuleBook book)
    {
        var fired = new HashSet<int>();
        for (var screen = 0; screen < all.Screens.Count; screen++)
        {
            for (var variant = 0; variant < book.Variants.Count; variant++)
            {
                if (all.Holds(rule, all.Screens[screen], variant))
                    fired.Add((screen * book.Variants.Count) + variant);
            }
        }
        return fired;
    }

    private static bool HasGap(RuleBook book, EveryScreen all)
    {
        var stops = book.Rules.Where(r => r.Conclusions.Any(c => c is StopConclusion)).ToList();
        var exclusions = book.Rules.Where(r => r.Conclusions.Any(c => c is ExclusionConclusion)).ToList();
        return all.Screens.Where(s => s.Complete).Any(s => !stops.Any(r => all.Holds(r, s, 0)) && book.Variants.All(v => exclusions.Any(r => all.Holds(r, s, v.Index))));
    }
}
