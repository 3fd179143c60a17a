using System.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Benchmarks;

/// <summary><c>decide</c>: one decision by the floor, the loop and the network; time, garbage and ratios to the floor.</summary>
/// <remarks>Over the shipped rules, and over parts of them of about 280 and 80 rules, which show how the cost grows.</remarks>
internal static class DecideRun
{
    private const int Cases = 64;

    public static int Run(string[] args)
    {
        Console.WriteLine($"{"",-32}{"processor",12}{"fastest",13}{"garbage",13}{"to floor",10}");
        foreach (var most in new[] { int.MaxValue, 280, 80 })
            Compare(RulesFolder.Book(RulesFolder.Part(most)));
        return 0;
    }

    private static void Compare(RuleBook book)
    {
        var cases = new RandomCases(book);
        // Both stages are filled beforehand, so that every round asks the same.
        var facts = Enumerable.Range(0, Cases).Select(seed => Filled(cases, seed)).ToArray();
        var floor = new Floor(book);
        var loop = new LoopEvaluator(book);
        var begun = Environment.CpuUsage.TotalTime;
        var network = new Network(book);
        var first = (Environment.CpuUsage.TotalTime - begun).TotalMicroseconds;
        Console.WriteLine($"{book.Rules.Count} rules in {network.DefinitionCount} definitions, {book.Variants.Count} candidates; {facts.Average(f => Decide(network, f)):0} rules fire on average");
        var least = Measure(facts, floor.Decide);
        Print("plain delegates, no trace", least, least);
        Print("loop evaluator", Measure(facts, f => Decide(loop, f)), least);
        Print("network with trace", Measure(facts, f => Decide(network, f)), least);
        Print("  of it the empty session", Measure(facts, f => network.Start(f).Trace.Count), least);
        var build = Measure([facts[0]], _ => new Network(book).DefinitionCount, 6);
        Console.WriteLine($"{"network build, repeated",-32}{build.Processor / 1000,9:0.0} ms, {build.Processor / book.Rules.Count:0} us a rule; first in this process {first / 1000:0} ms");
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

    // Processor time, not the clock: the machine may be shared. The first part warms up and is not counted.
    private static Cost Measure(CaseFacts[] facts, Func<CaseFacts, int> decide, double warmUp = 1.5)
    {
        Repeat(facts, decide, warmUp);
        GC.Collect();
        var bytes = GC.GetAllocatedBytesForCurrentThread();
        var used = Environment.CpuUsage.TotalTime;
        var (count, fastest) = Repeat(facts, decide, 2);
        return new Cost((Environment.CpuUsage.TotalTime - used).TotalMicroseconds / count, fastest, (GC.GetAllocatedBytesForCurrentThread() - bytes) / (double)count);
    }

    private static (int Count, double Fastest) Repeat(CaseFacts[] facts, Func<CaseFacts, int> decide, double seconds)
    {
        var until = Environment.CpuUsage.TotalTime + TimeSpan.FromSeconds(seconds);
        var count = 0;
        var fastest = double.MaxValue;
        while (Environment.CpuUsage.TotalTime < until)
        {
            var watch = Stopwatch.StartNew();
            foreach (var one in facts)
                decide(one);
            fastest = Math.Min(fastest, watch.Elapsed.TotalMicroseconds / facts.Length);
            count += facts.Length;
        }
        return (count, fastest);
    }

    private static void Print(string what, Cost cost, Cost floor)
        => Console.WriteLine($"{what,-32}{cost.Processor,9:0.0} us{cost.Fastest,10:0.0} us{cost.Bytes / 1024,10:0.0} KB{cost.Processor / floor.Processor,8:0.0} x");

    /// <param name="Processor">Microseconds of processor time a decision, garbage collection included.</param>
    /// <param name="Fastest">Microseconds by the clock a decision, in the fastest round over all cases.</param>
    /// <param name="Bytes">Bytes of garbage a decision.</param>
    private sealed record Cost(double Processor, double Fastest, double Bytes);
}
