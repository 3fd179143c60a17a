using HingeSelector.Analysis;
using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;
using HingeSelector.Rules.Solving;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>check</c>: a whole check of the shipped rules, piece by piece, and the questions on pairs for 1,000 rules.</summary>
internal static class CheckRun
{
    private const int Rounds = 9;
    private const int Many = 1000;

    public static int Run(string[] args)
    {
        var files = RepositoryFiles.Rules;
        var first = Time(() => FolderCheck.Run(files));
        Console.WriteLine($"{"first in this process",-44}{first,9:0.0} ms");
        Print("whole check, repeated", () => FolderCheck.Run(files));
        Print("  of it reading", () => RuleBookReader.Read(files));
        var book = RuleBookReader.Read(files);
        Print("  of it the examples", () => new ExampleRunner(book).RunAll(new DiagnosticBag()));
        Print("  of it what rules say together", () => RuleCheck.Run(book, files, new DiagnosticBag()));
        var many = Copies(book);
        CheckedBook? made = null;
        var prepared = Time(() => made = new CheckedBook(many, files));
        var check = made!;
        var (pairs, implied, givenUp) = (0, 0, 0);
        var begun = Environment.CpuUsage.TotalTime;
        foreach (var rule in check.Living)
        {
            foreach (var other in check.Living)
            {
                pairs++;
                try
                {
                    implied += check.Implies(rule, other) ? 1 : 0;
                }
                catch (SearchGivenUpException)
                {
                    givenUp++;
                }
            }
        }
        Console.WriteLine($"{check.Living.Count} rules: prepared in {prepared:0} ms, all {pairs:N0} ordered pairs in {(Environment.CpuUsage.TotalTime - begun).TotalMilliseconds:0} ms ({implied} imply, {givenUp} given up)");
        return 0;
    }

    // The shipped rules and a second hand of them, under other names.
    private static RuleBook Copies(RuleBook book)
        => book with { Rules = [.. book.Rules.Concat(book.Rules.Where(r => !r.Finds)).Take(Many).Select((r, i) => i < book.Rules.Count ? r : r with { Id = r.Id + "-again", Index = i })] };

    private static void Print(string what, Action work)
    {
        var times = Enumerable.Range(0, Rounds).Select(_ => Time(work)).Order().ToList();
        Console.WriteLine($"{what,-44}{times[Rounds / 2],9:0.0} ms median{times[0],9:0.0} ms least");
    }

    // Processor time, not the clock: the machine may be shared.
    private static double Time(Action work)
    {
        var begun = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - begun).TotalMilliseconds;
    }
}
