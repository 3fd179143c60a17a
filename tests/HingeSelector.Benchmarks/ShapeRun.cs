using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Benchmarks;

internal static class ShapeRun
{
    public static int Run(string[] args)
    {
        var book = RulesFolder.Book(RulesFolder.Shipped);
        var ds = Definitions.Of(book);
        foreach (var g in ds.GroupBy(d => (d.Asks, Athlete: d.Branch.OfAthlete.Count > 0, Marks: d.Branch.Marks.Count > 0, Cand: d.Branch.OfCandidate.Count > 0)))
            Console.WriteLine($"{g.Key} {g.Count()}");
        Console.WriteLine($"distinct masks {ds.Select(d => d.Variants).Distinct().Count()} athlete conditions {ds.SelectMany(d => d.Branch.OfAthlete).Count()} distinct {ds.SelectMany(d => d.Branch.OfAthlete).Distinct().Count()} cand {ds.SelectMany(d => d.Branch.OfCandidate).Count()} distinct {ds.SelectMany(d => d.Branch.OfCandidate).Distinct().Count()}; marks wanted {Definitions.Wanted(ds).Count}");
        var network = new Network(book);
        var cases = new RandomCases(book);
        var n = new Dictionary<string, double>();
        for (var s = 0; s < 64; s++)
        {
            var f = cases.First(s); cases.FillChosen(f, s);
            var se = network.Start(f); var e = se.First(); var k = e.Fired.Count; se.Second();
            foreach (var x in e.Fired)
            {
                var r = book.Rules[x.Rule];
                var key = !r.PerCandidate ? "athlete" : r.AfterSetUp ? "second" : "first";
                n[key] = n.GetValueOrDefault(key) + 1.0 / 64;
            }
        }
        foreach (var (k, v) in n) Console.WriteLine($"fired {k} {v:0}");
        return 0;
    }
}
