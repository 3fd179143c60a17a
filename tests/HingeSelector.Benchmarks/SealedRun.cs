using System.Diagnostics;
using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Rules.Philosophies.Sealing;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>sealed SCREENS [SEED]</c>: whether anything sealed goes missing under random philosophies, on random screens and on whole answers.</summary>
internal static class SealedRun
{
    private const int ScreensEach = 100;
    private const int People = 400;
    private const int PhilosophiesEach = 10;

    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var screens = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 100_000;
        var seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
        var clock = Stopwatch.StartNew();
        var overlays = new RandomOverlays(RepositoryFiles.Book, 6000, seed);
        Console.WriteLine($"{overlays.Accepted} random entries accepted; refused: {string.Join(", ", overlays.Refused.OrderBy(r => r.Key, StringComparer.Ordinal).Select(r => $"{r.Key} {r.Value}"))}");
        Console.WriteLine($"{overlays.Seals.Count} of {RepositoryFiles.Book.Rules.Count} rules are sealed");
        var missing = Screens(overlays, screens, seed) + Answers(overlays, seed);
        Console.WriteLine($"{missing} missing in {clock.Elapsed.TotalSeconds:0} s");
        return missing == 0 ? 0 : 1;
    }

    private static int Screens(RandomOverlays overlays, int screens, int seed)
    {
        var random = new Random(seed);
        var drawn = new List<Overlay>();
        while (drawn.Count < screens / ScreensEach)
        {
            if (overlays.Next(random) is { } overlay)
                drawn.Add(overlay);
        }
        var (missing, held, stricter) = (0, 0L, 0L);
        var places = Environment.ProcessorCount;
        Parallel.For(0, places, place =>
        {
            var watch = new SealWatch(RepositoryFiles.Book, overlays.Seals);
            for (var i = place; i < drawn.Count; i += places)
            {
                if (watch.Missing(drawn[i], unchecked(seed + (i * ScreensEach)), ScreensEach) is not { } gone)
                    continue;
                Interlocked.Increment(ref missing);
                Console.WriteLine(gone);
            }
            Interlocked.Add(ref held, watch.Held);
            Interlocked.Add(ref stricter, watch.Stricter);
        });
        Console.WriteLine($"{drawn.Count} philosophies on {drawn.Count * ScreensEach} screens: sealed rules held {held} times in the base, {missing} philosophies let one go; rules that they add held {stricter} times");
        return missing;
    }

    // Whole answers: the set-up is searched under each philosophy, so the words as set up are its own.
    private static int Answers(RandomOverlays overlays, int seed)
    {
        var book = RepositoryFiles.Book;
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var people = SurveyPeople.Draw(book.Vocabulary, _day, 20261124, People).ToList();
        var balanced = book.Philosophies["balanced"];
        var plain = people.ConvertAll(p => new Selector(book, new LoopEvaluator(book)).Choose(new Question(p, room, null, balanced, _day)));
        var random = new Random(~seed);
        var missing = 0;
        for (var done = 0; done < PhilosophiesEach;)
        {
            if (overlays.Next(random) is not { } overlay)
                continue;
            done++;
            var under = book with { Rules = overlay.Rules, FindingOrder = overlay.FindingOrder, RulesOfFinding = overlay.RulesOfFinding };
            var selector = new Selector(under, new LoopEvaluator(under));
            for (var i = 0; i < people.Count; i++)
            {
                var answer = selector.Choose(new Question(people[i], room, null, balanced, _day));
                var holds = answer.Fired.Select(f => (under.Rules[f.Rule].Id, f.Candidate)).ToHashSet();
                var gone = plain[i].Fired.Where(f => overlays.Seals.Why(book.Rules[f.Rule]) is not null).Select(f => (book.Rules[f.Rule].Id, f.Candidate)).Where(f => !holds.Contains(f)).ToList();
                if (gone.Count == 0 && answer.Outcome >= plain[i].Outcome && answer.Unanswered.Count >= (answer.Outcome == Outcome.Emergency ? 0 : plain[i].Unanswered.Count))
                    continue;
                missing++;
                Console.WriteLine($"person {i}: {plain[i].Outcome} becomes {answer.Outcome}; missing {string.Join(", ", gone.Take(3).Select(g => g.Id))}");
            }
        }
        Console.WriteLine($"{PhilosophiesEach} philosophies on {People} whole answers: {missing} lose something");
        return missing;
    }
}
