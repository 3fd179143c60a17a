using System.Diagnostics;
using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Examples.Covering;
using HingeSelector.Examples.Mutating;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Benchmarks;

/// <summary><c>mutate</c>: time to read the rules, to run every example, to see what they show, and to ask every mutant.</summary>
internal static class MutateRun
{
    private const int Rounds = 31;

    public static int Run(string[] args)
    {
        var files = RulesFolder.Shipped;
        var book = RuleBookReader.Read(files);
        var cases = RuleCases.Sound(book);
        Print("read the rules", () => RuleBookReader.Read(files).Rules.Count, "rules");
        Print("run every example", () => new ExampleRunner(book).RunAll(new DiagnosticBag()).Count, "examples");
        Print("coverage", () => CoverageReport.Of(book, cases).Items.Count, "needed");
        Print("ask every mutant", () => MutationReport.Of(book, cases).Counted, "mutants");
        Print("the whole of rules mutate, files included", () => Whole(files), "mutants");
        var report = MutationReport.Of(book, cases);
        Console.WriteLine($"coverage {CoverageReport.Of(book, cases).Percent:0.00} %, noticed {report.Percent:0.00} %, {report.Survivors.Count} survivors, {report.Equivalent} equivalent");
        Console.WriteLine($"text of the rules {files.Texts.Values.Sum(t => t.Length) / 1024} KB");
        return 0;
    }

    private static int Whole(Rules.RuleFiles files)
    {
        var book = RuleBookReader.Read(files);
        return MutationReport.Of(book, RuleCases.Sound(book)).Counted;
    }

    // Processor time, not the clock: the machine may be shared. The first round is told apart: it is what a process that starts pays.
    private static void Print(string what, Func<int> run, string counted)
    {
        var begun = Environment.CpuUsage.TotalTime;
        var count = run();
        var first = (Environment.CpuUsage.TotalTime - begun).TotalMilliseconds;
        var (times, clock) = (new List<double>(), double.MaxValue);
        for (var i = 0; i < Rounds; i++)
        {
            var watch = Stopwatch.StartNew();
            begun = Environment.CpuUsage.TotalTime;
            run();
            times.Add((Environment.CpuUsage.TotalTime - begun).TotalMilliseconds);
            clock = Math.Min(clock, watch.Elapsed.TotalMilliseconds);
        }
        times.Sort();
        Console.WriteLine($"{what,-45}{count,7} {counted,-10} processor: first {first,6:0} ms, median {times[Rounds / 2],6:0} ms; fastest by the clock {clock,6:0} ms");
    }
}
