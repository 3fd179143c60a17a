using System.Diagnostics;
using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>explain [N]</c>: each explanation of N people of the survey who may pull; median and slowest by the clock, and ratios of processor time to a whole answer.</summary>
/// <remarks>The clock is that of two cores and suffers where the machine is shared; the ratios do not. Every third of them has a quarter of the measures missing. "All together" is why, why-not for every option, turning points, next measurement and how sure.</remarks>
internal static class ExplainRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);
    private static readonly string[] _must = ["stop-questions", "must-answer", "must-answer-under-18"];

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 40;
        var book = RepositoryFiles.Book;
        var loop = new LoopEvaluator(book);
        var selector = new Selector(book, loop);
        var questions = Questions(book, selector, most);
        for (var i = 0; i < 400; i++)
            selector.Choose(questions[i % questions.Count]);
        var whole = Measure("whole answer, loop", questions, q => selector.Choose(q), null);
        Measure("lean decision", questions, q => Decider.For(book, q), whole);
        Measure("why", questions, q => Derivation.Of(book, loop, q, book.Variants[0]), whole);
        Measure("why-not, every option", questions, q => WhyNot.Of(book, loop, q, selector.Choose(q)), whole);
        Measure("what-if", questions, q => WhatIf.Ask(book, loop, q, ["hinge-control=unsure"], new DiagnosticBag()), whole);
        Measure("turning-points", questions, q => TurningPointFinder.Find(book, q), whole);
        Measure("next-measurement", questions, q => NextMeasurementFinder.Find(book, q), whole);
        Measure($"how-sure, {HowSureCount.Draws} draws", questions, q => HowSureCount.Count(book, q), whole);
        Measure("all together", questions, q => All(book, loop, selector, q), whole);
        return 0;
    }

    private static void All(RuleBook book, LoopEvaluator loop, Selector selector, Question question)
    {
        var answer = selector.Choose(question);
        Derivation.Of(book, loop, question, answer.Ranked[0].Candidate.Variant);
        WhyNot.Of(book, loop, question, answer);
        TurningPointFinder.Find(book, question);
        NextMeasurementFinder.Find(book, question);
        HowSureCount.Count(book, question);
    }

    private static List<Question> Questions(RuleBook book, Selector selector, int most)
    {
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var random = new Random(1);
        AthleteRecord Thinned(AthleteRecord athlete, int i) => i % 3 != 0 ? athlete : athlete with
        {
            Answers = athlete.Answers.Where(a => book.Vocabulary[a.Key.Word].Groups.Any(_must.Contains) || random.NextDouble() > 0.25).ToDictionary(),
        };
        return [.. SurveyPeople.Draw(book.Vocabulary, _day, 20261124, most * 3)
            .Select((a, i) => new Question(Thinned(a, i), room, null, book.Philosophies["balanced"], _day))
            .Where(q => selector.Choose(q).Ranked.Count > 0).Take(most)];
    }

    private static double Measure(string what, List<Question> questions, Action<Question> explain, double? whole)
    {
        foreach (var question in questions.Take(10))
            explain(question);
        var times = new List<double>(questions.Count);
        var used = Environment.CpuUsage.TotalTime;
        foreach (var question in questions)
        {
            var start = Stopwatch.GetTimestamp();
            explain(question);
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }
        var processor = (Environment.CpuUsage.TotalTime - used).TotalMilliseconds / questions.Count;
        times.Sort();
        var median = times[times.Count / 2];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-26}{median,9:0.00} ms median{times[^1],10:0.00} ms slowest{processor,10:0.00} ms of processor{(whole is { } w ? $"{processor / w,9:0.0} x a whole answer" : "")}"));
        return processor;
    }
}
