using System.Diagnostics;
using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary>The people of the survey ranked one after the other: time for a whole answer, and whether memory stays flat.</summary>
internal static class RankRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : int.MaxValue;
        var book = RepositoryFiles.Book;
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var people = SurveyPeople.Draw(book.Vocabulary, _day, 20261124, most).ToList();
        foreach (var (name, engine) in new (string, IRuleEngine)[] { ("loop evaluator", new LoopEvaluator(book)), ("network of record", new Network(book)) })
            Measure(name, new Selector(book, engine), people, room, book);
        return Compare(new Selector(book, new LoopEvaluator(book)), new Selector(book, new Network(book)), people, room, book);
    }

    // Both engines on the same people: every fired rule, every candidate and every score.
    private static int Compare(Selector loop, Selector network, List<AthleteRecord> people, Room? room, Rules.RuleBook book)
    {
        var differ = people.Count(athlete =>
        {
            var question = new Question(athlete, room, null, book.Philosophies["balanced"], _day);
            var (a, b) = (loop.Choose(question), network.Choose(question));
            return a.Outcome != b.Outcome || !a.Fired.SequenceEqual(b.Fired) || !a.Ranked.Select(r => (r.Candidate.Variant.Id, r.Score)).SequenceEqual(b.Ranked.Select(r => (r.Candidate.Variant.Id, r.Score)));
        });
        Console.WriteLine($"{people.Count} people asked of both engines: {differ} answers differ");
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
