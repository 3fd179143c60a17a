using System.Diagnostics;
using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Screening;

namespace HingeSelector.Benchmarks;

/// <summary><c>watch</c>: from the save of a rule file to the new ranking as text, in process; without the 50 ms at most that lie between two looks.</summary>
internal static class WatchRun
{
    private const int Saves = 20;
    private const string File = "fit/hips.yaml";

    public static int Run(string[] args)
    {
        var folder = Directory.CreateTempSubdirectory("hinge-").FullName;
        try
        {
            Copy("rules", Path.Combine(folder, "rules"));
            Measure(Path.Combine(folder, "rules"));
            return 0;
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static void Measure(string rules)
    {
        var roster = new SourceText("content/demo/club.csv", System.IO.File.ReadAllText("content/demo/club.csv"));
        var day = new DateOnly(2026, 11, 24);
        Question Ask(RuleBook book) => new(RosterReader.Read(roster, book.Vocabulary, day, new DiagnosticBag()).Good[0], null, null, book.Philosophies["balanced"], day);
        var ranking = new LiveRanking(book => new Network(book), Ask);
        ranking.Update(RuleFiles.FromFolder(rules), out _);
        var watched = new WatchedFiles(rules, []);
        var path = Path.Combine(rules, File);
        var text = System.IO.File.ReadAllText(path);
        var times = new List<double>();
        for (var i = 0; i < Saves; i++)
        {
            System.IO.File.WriteAllText(path, text.Replace("points: -3 for fit", i % 2 == 0 ? "points: -2 for fit" : "points: -3 for fit", StringComparison.Ordinal) + new string('\n', i % 3));
            var clock = Stopwatch.StartNew();
            if (watched.Changes().Count == 0 || ranking.Update(RuleFiles.FromFolder(rules), out _) is not { } live)
                throw new InvalidOperationException("The save was not seen, or the rules are faulty.");
            _ = LiveText.Of(live).SelectMany(PlainText.Rows).Count();
            times.Add(clock.Elapsed.TotalMilliseconds);
        }
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"save to ranking, {Saves} saves: first {times[0]:F0} ms, median {times.Order().ElementAt(Saves / 2):F0} ms, slowest {times.Max():F0} ms"));
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*.yaml", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            System.IO.File.Copy(file, copy);
        }
    }
}
