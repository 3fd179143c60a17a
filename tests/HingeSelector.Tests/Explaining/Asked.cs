using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Explaining;

/// <summary>Questions to explain: people of the survey in changing rooms, philosophies and blocks, and the demo club.</summary>
internal static class Asked
{
    public static DateOnly Day { get; } = new(2026, 11, 24);

    public static RuleBook Book => RepositoryFiles.Book;

    /// <summary>The whole answer by the loop evaluator.</summary>
    public static Recommendation Answer(Question question) => Selector.Choose(question);

    public static Selector Selector { get; } = new(Book, new LoopEvaluator(Book));

    /// <summary>People of the survey; every fourth has a standing choice.</summary>
    /// <param name="count">How many.</param>
    /// <param name="seed">The same people for the same seed.</param>
    /// <param name="gaps">Share of answers taken away; stop questions, history and pain stay answered.</param>
    public static IEnumerable<Question> People(int count, int seed, double gaps = 0)
    {
        var rooms = TrainingRooms.All();
        // Their weights only: whose rules differ has a book of its own.
        var philosophies = Book.Philosophies.Values.OrderBy(p => p.Id, StringComparer.Ordinal).Select(p => p with { ChangesRules = false }).ToList();
        var random = new Random(seed);
        var i = 0;
        foreach (var athlete in SurveyPeople.Draw(Book.Vocabulary, Day, seed, count))
        {
            var standing = i % 4 == 0 ? new StandingChoice(athlete.Id, random.Next(Book.Variants.Count), 0.2 + (0.01 * random.Next(25)), null, Day.AddDays(-14), Day.AddDays(14), SourceSpan.None) : null;
            yield return new Question(WithGaps(athlete, gaps, random), i % 7 == 3 ? null : rooms[i % rooms.Count], standing, philosophies[i % philosophies.Count], Day);
            i++;
        }
    }

    /// <summary>The demo club in its room, with its standing choices.</summary>
    public static IEnumerable<Question> Club()
    {
        var bag = new DiagnosticBag();
        var roster = RosterReader.Read(RepositoryFiles.Source("content/demo/club.csv"), Book.Vocabulary, Day, bag);
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), bag);
        var standing = StandingReader.Read(RepositoryFiles.Source("content/demo/standing.yaml"), [.. Book.Variants.Select(v => v.Id)], Day, bag)!;
        bag.HasErrors.ShouldBeFalse();
        return roster.Good.Select(a => new Question(a, room, standing.GetValueOrDefault(a.Id), Book.Philosophies["balanced"], Day));
    }

    private static AthleteRecord WithGaps(AthleteRecord athlete, double gaps, Random random)
    {
        var must = new[] { "stop-questions", "must-answer", "must-answer-under-18" };
        return athlete with { Answers = athlete.Answers.Where(a => Book.Vocabulary[a.Key.Word].Groups.Any(must.Contains) || random.NextDouble() >= gaps).ToDictionary() };
    }
}
