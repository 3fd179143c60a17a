using System.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Benchmarks;

/// <summary><c>decide</c>: one decision by the floor, the loop and the network; time, garbage and ratios to the floor.</summary>
internal static class DecideRun
{
    private const int Cases = 64;

    public static int Run(string[] args)
    {
        var book = RulesFolder.Book(RulesFolder.Shipped);
        var cases = new RandomCases(book);
        // Full tables throughout: the second stage then costs the same in every round.
        var facts = Enumerable.Range(0, Cases).Select(seed => Filled(cases, seed)).ToArray();
        var build = Build(book);
        var floor = new Floor(book);
        var loop = new LoopEvaluator(book);
        var network = new Network(book);
        var fired = facts.Average(f => Decide(network, f));
        Console.WriteLine($"{book.Rules.Count} rules, {network.DefinitionCount} definitions, {book.Variants.Count} candidates, {fired:0} rules fired on average");
        Console.WriteLine($"network build, repeated: {build / 1000:0.0} ms, {build / book.Rules.Count:0} us a rule");
        var floorCost = Measure(facts, floor.Decide);
        Print("plain delegates, no trace", floorCost, floorCost);
        Print("loop evaluator", Measure(facts, f => Decide(loop, f)), floorCost);
        Print("network with trace", Measure(facts, f => Decide(network, f)), floorCost);
        Print("  of it: session", Measure(facts, f => network.Start(f).GetHashCode()), floorCost);
        Print("  of it: session, first stage", Measure(facts, f => network.Start(f).First().Fired.Count), floorCost);
        return 0;
    }

    private static CaseFacts Filled(RandomCases cases, int seed)
    {
        var facts = cases.First(seed);
        cases.FillChosen(facts, seed);
        return facts;
    }

    private static int Decide(IRuleEngine engine, CaseFacts facts)
    {
        var session = engine.Start(facts);
        var evaluation = session.First();
        session.Second();
        return evaluation.Fired.Count;
    }

    private static double Build(RuleBook book)
    {
        var best = double.MaxValue;
        for (var i = 0; i < 15; i++)
        {
            var watch = Stopwatch.StartNew();
            _ = new Network(book);
            best = Math.Min(best, watch.Elapsed.TotalMicroseconds);
        }
        return best;
    }

    // The median over rounds; a round asks every case once.
    private static (double Microseconds, double Bytes) Measure(CaseFacts[] facts, Func<CaseFacts, int> decide)
    {
        var rounds = new List<double>();
        var bytes = 0L;
        var begun = Stopwatch.StartNew();
        for (var i = 0; i < 12 || (begun.Elapsed.TotalSeconds < 3 && i < 2000); i++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var watch = Stopwatch.StartNew();
            foreach (var one in facts)
                decide(one);
            rounds.Add(watch.Elapsed.TotalMicroseconds / facts.Length);
            bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        }
        rounds.Sort();
        return (rounds[rounds.Count / 2], bytes / (double)facts.Length);
    }

    private static void Print(string what, (double Microseconds, double Bytes) cost, (double Microseconds, double Bytes) floor)
        => Console.WriteLine($"{what,-30} {cost.Microseconds,9:0.0} us {cost.Bytes / 1024,9:0.0} KB   {cost.Microseconds / floor.Microseconds,6:0.0} x");
}
