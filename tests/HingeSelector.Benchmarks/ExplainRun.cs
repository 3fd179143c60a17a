using System.Diagnostics;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

internal static class ExplainRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var book = RepositoryFiles.Book;
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var people = SurveyPeople.Draw(book.Vocabulary, _day, 20261124, 200).ToList();
        var loop = new LoopEvaluator(book);
        var s = new Selector(book, loop);
        for (var round = 0; round < 6; round++)
        {
            var t = new double[10];
            foreach (var a in people)
            {
                var q = new Question(a, room, null, book.Philosophies["balanced"], _day);
                var w = Stopwatch.GetTimestamp();
                void Lap(int i) { t[i] += Stopwatch.GetElapsedTime(w).TotalMicroseconds / people.Count; w = Stopwatch.GetTimestamp(); }
                var facts = s.GatherFacts(a, q); Lap(0);
                var (cases, candidates, table) = s.SolveStandardPostures(facts, q); Lap(1);
                var e = loop.First(cases); Lap(2);
                var chosen = s.SearchSetUps(facts, q, candidates, e); Lap(3);
                Selector.AddChosenPostures(cases, chosen, table); Lap(4);
                loop.Second(cases, e); Lap(5);
                Scores.Of(book, e.Fired, q.Philosophy).Total(0); Lap(6);
                s.Choose(q); Lap(7);
                var d = HingeSelector.Explaining.Decider.For(book, q); w = Stopwatch.GetTimestamp();
                d.DecideWith(book, a); Lap(8);
                d.Decide(a); Lap(9);
            }
            Console.WriteLine($"facts {t[0]:0} standard {t[1]:0} first {t[2]:0} search {t[3]:0} add {t[4]:0} second {t[5]:0} scores {t[6]:0} choose {t[7]:0} lean {t[8]:0} kept {t[9]:0}");
        }
        return 0;
    }
}
