using System.Diagnostics;
using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Rules.Firing.Agreement;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary>The people of the survey ranked one after the other: time for a whole answer, whether memory stays flat, and whether the three deciders agree.</summary>
internal static class RankRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : int.MaxValue;
        var book = RepositoryFiles.Book;
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var people = SurveyPeople.Draw(book.Vocabulary, _day, SurveyPeople.Seed, most).ToList();
        foreach (var (name, engine) in new (string, IRuleEngine)[] { ("loop evaluator", new LoopEvaluator(book)), ("network of record", new Network(book)) })
            Measure(name, new Selector(book, engine), people, room, book);
        return Compare(people);
    }

    // All three deciders on the same people: every finding, fired and open rule, every candidate, score and set-up.
    private static int Compare(List<AthleteRecord> people)
    {
        var trio = new Trio(RulesFolder.Shipped);
        var survey = new SurveyTrio(trio, _day);
        var differ = 0;
        for (var i = 0; i < people.Count; i++)
        {
            if (survey.Difference(people[i], i) is { } difference && ++differ <= 20)
                Console.WriteLine($"{people[i].Id}: {difference}");
        }
        Console.WriteLine($"{people.Count} people asked of network, loop and naive interpreter: {differ} answers differ; {survey.Candidates} ranked candidates, {trio.Tally.Fired} rules fired, {trio.Tally.Open} open");
        return differ == 0 ? 0 : 1;
    }

    private static void Measure(string name, Selector selector, List<AthleteRecord> people, Room? room, Rules.RuleBook book)
    {
        void Ask(AthleteRecord athlete) => selector.Choose(new Question(athlete, room, null, book.Philosophies["balanced"], _day));
        foreach (var athlete in people.Take(200))
            Ask(athlete);
        var times = new List<double>(people.Count);
        var allocated = GC.GetAllocatedBytesForCurrentThread();
        var (early, late) = (0L, 0L);
        var whole = Stopwatch.StartNew();
        for (var i = 0; i < people.Count; i++)
        {
            var start = Stopwatch.GetTimestamp();
            Ask(people[i]);
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            if (i == people.Count / 10)
                early = GC.GetTotalMemory(true);
        }
        whole.Stop();
        late = GC.GetTotalMemory(true);
        times.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {people.Count} people in {whole.Elapsed.TotalSeconds:0.00} s; an answer {times[times.Count / 2]:0.00} ms median, {times[times.Count * 99 / 100]:0.00} ms at 99 of 100; {(GC.GetAllocatedBytesForCurrentThread() - allocated) / 1e6 / people.Count:0.00} MB of garbage each; live memory {early / 1e6:0.0} MB after a tenth, {late / 1e6:0.0} MB at the end"));
    }
}
