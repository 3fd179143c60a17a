using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;
using HingeSelector.Words;
using Subject = HingeSelector.Rules.Evaluating.Firing;

namespace HingeSelector.Tests.Rules;

/// <summary>Unknown never fires and never clears: what is decided on part of a screen stays decided when the rest comes in.</summary>
public sealed class FillingGapsTests
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    // The worst pain is at least the pain at rest: a rest above the stated worst corrects the worst, and should.
    private static bool Corrects(string word) => word.EndsWith("-pain-at-rest", StringComparison.Ordinal);

    // Growth since the screen ends a measure, so what says it is not left out: known growth makes an old reading unknown, and should.
    private static readonly string[] _growth = ["age", "stature", "stature-now"];

    [Fact]
    public void Filling_a_gap_never_turns_a_certain_result_into_its_opposite()
    {
        var book = RepositoryFiles.Book;
        var random = new Random(7);
        var compared = 0;
        foreach (var whole in SurveyPeople.Draw(book.Vocabulary, _day, 7, 300))
        {
            var part = whole with { Answers = whole.Answers.Where(a => _growth.Contains(a.Key.Word) || Corrects(a.Key.Word) || random.NextDouble() < 0.6).ToDictionary() };
            var before = Decide(book, part);
            var after = Decide(book, whole);
            foreach (var rule in book.Rules.Where(r => !r.PerCandidate && RestsOnAnswersAlone(book, r)))
            {
                if (before[rule.Index] == Truth.Open)
                    continue;
                // A new answer may open what rested on another: a stature that has grown makes older measures expire. It never reverses it.
                after[rule.Index].ShouldNotBe((Truth)(-(sbyte)before[rule.Index]), $"{whole.Id} {rule.Id}");
                compared += after[rule.Index] == before[rule.Index] ? 1 : 0;
            }
        }
        // A run that compared next to nothing would prove nothing.
        compared.ShouldBeGreaterThan(10_000);
    }

    // Where the body comes from is computed: more answers can turn "not known" into "survey" and that into "measured".
    private static bool RestsOnAnswersAlone(RuleBook book, Rule rule)
        => !rule.Conditions.SelectMany(c => c.Reads).Any(r => r.Word.Id is "body-basis")
            && rule.Conditions.SelectMany(c => c.Findings).All(f => book.RulesOfFinding[f.Finding].All(i => RestsOnAnswersAlone(book, book.Rules[i])));

    private static Dictionary<int, Truth> Decide(RuleBook book, AthleteRecord athlete)
    {
        var facts = FactTable.Build(athlete, book.Vocabulary, _day, null);
        var cases = new CaseFacts(facts, [.. book.Variants.Select(_ => new FactValue[book.Vocabulary.CandidateSlots])]);
        var evaluation = new LoopEvaluator(book).First(cases);
        var view = cases.View(Subject.OfAthlete, evaluation.Findings);
        return book.Rules.Where(r => !r.PerCandidate).ToDictionary(r => r.Index, r => LoopEvaluator.Holds(r, view));
    }
}
