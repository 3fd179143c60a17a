using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Tests.Explaining;

public sealed class WhyNotTests
{
    private static readonly LoopEvaluator _loop = new(Asked.Book);

    [Fact]
    public void Every_option_but_the_first_has_one_to_three_causes()
    {
        var kinds = new HashSet<CauseKind>();
        foreach (var question in Asked.People(60, 9, 0.2).Concat(Asked.Club()))
        {
            var answer = Asked.Answer(question);
            var options = Of(question, answer);
            options.Count.ShouldBe(Asked.Book.Variants.Count);
            foreach (var option in options)
            {
                option.Causes.Count.ShouldBeInRange(option.Place == OptionPlace.First ? 0 : 1, option.Place == OptionPlace.First ? 0 : 3, $"{question.Athlete.Id}, {option.Variant.Id}");
                kinds.UnionWith(option.Causes.Select(c => c.Kind));
            }
            options.Count(o => o.Place == OptionPlace.First).ShouldBe(answer.Ranked.Count > 0 ? 1 : 0);
        }
        kinds.ShouldBe(Enum.GetValues<CauseKind>(), ignoreOrder: true);
    }

    [Fact]
    public void Without_the_rules_that_take_it_out_an_option_returns()
    {
        var returned = 0;
        foreach (var question in Asked.People(30, 55).Concat(Asked.Club()))
        {
            var answer = Asked.Answer(question);
            foreach (var option in Of(question, answer).Where(o => o.Place == OptionPlace.Out && o.More == 0))
            {
                var rules = option.Causes.Select(c => c.Rule!.Index).ToHashSet();
                var book = With(r => rules.Contains(r.Index) ? r with { Conclusions = [.. r.Conclusions.Where(c => c is not (ExclusionConclusion or StopConclusion))] } : r);
                new Selector(book, new LoopEvaluator(book)).Choose(question).Ranked.ShouldContain(r => r.Candidate.Variant.Id == option.Variant.Id, $"{question.Athlete.Id}, {option.Variant.Id}");
                if (returned++ > 60)
                    return;
            }
        }
        returned.ShouldBeGreaterThan(30);
    }

    [Fact]
    public void Without_the_criteria_in_which_it_is_beaten_the_gap_shrinks_by_what_was_told()
    {
        var compared = 0;
        foreach (var question in Asked.People(25, 14))
        {
            var answer = Asked.Answer(question);
            foreach (var option in Of(question, answer).Where(o => o.Causes.Any(c => c.Kind == CauseKind.Beaten)))
            {
                var beaten = option.Causes.Where(c => c.Kind == CauseKind.Beaten).ToList();
                var without = beaten.Select(c => c.Criterion!.Index).ToHashSet();
                int Score(RankedCandidate r) => r.Points.Select((p, c) => without.Contains(c) ? 0 : p * question.Philosophy.Weights[c]).Sum();
                var ranked = answer.Ranked.First(r => r.Candidate.Variant.Id == option.Variant.Id);
                (Score(answer.Ranked[0]) - Score(ranked)).ShouldBe(option.Gap!.Value - beaten.Sum(c => c.Points!.Value));
                compared++;
            }
        }
        compared.ShouldBeGreaterThan(50);
    }

    [Fact]
    public void A_near_miss_that_is_met_brings_the_points_that_were_told()
    {
        var compared = 0;
        foreach (var question in Asked.People(60, 41))
        {
            var answer = Asked.Answer(question);
            foreach (var option in Of(question, answer).Where(o => o.Causes.Any(c => c.Kind == CauseKind.Missed)))
            {
                var missed = option.Causes.First(c => c.Kind == CauseKind.Missed);
                missed.Shortfall!.InErrors!.Value.ShouldBeInRange(0, 3);
                var was = answer.Ranked.First(r => r.Candidate.Variant.Id == option.Variant.Id);
                var before = was.Score;
                // The rule without the condition that it misses, and without those that pay for the same word.
                var book = With(r => r.Index == missed.Rule!.Index
                    ? Without(r, missed.Shortfall.Word!)
                    : r.OpenConditions.Any(c => c.Reads.Any(x => x.Word == missed.Shortfall.Word)) && !r.Finds
                        ? r with { Conclusions = [.. r.Conclusions.Where(c => c is not PointsConclusion p || p.Criterion != missed.Criterion!.Index)] }
                        : r);
                var now = new Selector(book, new LoopEvaluator(book)).Choose(question).Ranked.First(r => r.Candidate.Variant.Id == option.Variant.Id);
                var after = now.Score;
                (after - before).ShouldBe(missed.Points!.Value, $"{question.Athlete.Id}, {option.Variant.Id}, {missed.Rule!.Id}; was {Told(was)}; now {Told(now)}");
                if (compared++ > 40)
                    return;
            }
        }
        compared.ShouldBeGreaterThan(10);
    }

    [Fact]
    public void A_cause_that_waits_names_facts_that_are_missing_and_may_be_asked()
    {
        foreach (var question in Asked.People(25, 17, 0.4))
        {
            var facts = Asked.Selector.GatherFacts(question.Athlete, question);
            foreach (var cause in Of(question, Asked.Answer(question)).SelectMany(o => o.Causes).Where(c => c.Kind == CauseKind.NotMeasured))
            {
                cause.Missing.ShouldNotBeEmpty();
                foreach (var word in cause.Missing.Select(id => Asked.Book.Vocabulary[id]))
                {
                    Enumerable.Range(0, Math.Max(1, word.Readings.Count)).ShouldContain(i => !facts[word.Slot + i].IsExact, word.Id);
                    Changeable.WhyNot(Asked.Book.Vocabulary, word).ShouldBeNull();
                }
            }
        }
    }

    [Fact]
    public void No_distance_is_told_to_a_pain_a_stop_or_an_age()
    {
        foreach (var question in Asked.People(80, 29).Concat(Asked.Club()))
        {
            foreach (var shortfall in Of(question, Asked.Answer(question)).SelectMany(o => o.Causes).Select(c => c.Shortfall).OfType<Shortfall>().Where(s => s.Word is { IsMeasured: true } w && Changeable.WhyNot(Asked.Book.Vocabulary, w) is not null))
                (shortfall.Distance, shortfall.Needed).ShouldBe((null, null));
        }
    }

    // A rule that no longer reads the chosen set-up is asked before there is one.
    private static Rule Without(Rule rule, Word word)
    {
        var left = rule.OpenConditions.Where(c => !c.Reads.Any(r => r.Word == word)).ToList();
        return rule with { OpenConditions = left, AfterSetUp = left.Exists(c => c.Reads.Any(r => r.Name == ComputedWords.AsSetUp)) };
    }

    private static string Told(RankedCandidate ranked) => string.Join(", ", ranked.Reasons.Select(r => $"{r.Trace.Rule.Id} {r.Points} in {r.Criterion}"));

    private static IReadOnlyList<WhyNotOption> Of(Question question, Recommendation answer) => WhyNot.Of(Asked.Book, _loop, question, answer);

    private static RuleBook With(Func<Rule, Rule> change) => Asked.Book with { Rules = [.. Asked.Book.Rules.Select(change)] };
}
