using System.Diagnostics;
using System.Globalization;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Benchmarks;

/// <summary><c>agree COUNT [SEED]</c>: the three deciders on that many random cases of the shipped rules.</summary>
internal static class AgreeRun
{
    public static int Run(string[] args)
    {
        var count = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 1_000_000;
        var seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
        var watch = Stopwatch.StartNew();
        var total = new Tally();
        var differences = 0;
        var done = 0;
        var places = Enumerable.Range(0, Environment.ProcessorCount).ToArray();
        Parallel.ForEach(places, place =>
        {
            var trio = new Trio(RulesFolder.Shipped);
            for (var i = place; i < count; i += places.Length)
            {
                if (trio.Difference(unchecked(seed + i)) is { } difference && Interlocked.Increment(ref differences) <= 20)
                    Console.WriteLine($"case {seed + i}: {difference}");
                if (Interlocked.Increment(ref done) % 50_000 == 0)
                    Console.WriteLine($"{done} cases, {differences} differences, {watch.Elapsed:hh\\:mm\\:ss}");
            }
            lock (total)
                total.Add(trio.Tally);
        });
        var rules = new Trio(RulesFolder.Shipped).Book.Rules;
        Console.WriteLine($"{total.Cases} cases: {differences} differences in {watch.Elapsed.TotalSeconds:0} s");
        Console.WriteLine($"rules fired {total.Fired}, open {total.Open}; findings present {total.Present}, absent {total.Absent}");
        Console.WriteLine($"of {rules.Count} rules {total.RulesFired} fired and {total.RulesOpen} were open at least once");
        foreach (var rule in rules.Where(r => !total.FiredRules.Contains(r.Index)))
            Console.WriteLine($"never fired: {rule.Id}");
        return differences == 0 ? 0 : 1;
    }
}
