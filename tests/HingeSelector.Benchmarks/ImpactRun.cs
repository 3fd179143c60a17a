using System.Diagnostics;
using System.Globalization;
using HingeSelector.Comparing;
using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Rules.Reading;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>impact [PEOPLE]</c>: the people of the survey under two versions of the rules; time from texts to groups with causes and confirmed examples.</summary>
internal static class ImpactRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    private static readonly (string Path, string Old, string New)[] _edits =
    [
        ("carry-over/calendar.yaml", "      - points: -2 for carry-over\n    because: Hard throwing comes within a day", "      - points: -1 for carry-over\n    because: Hard throwing comes within a day"),
        ("overload-match/strength.yaml", "      - points: +3 for overload-match", "      - points: +2 for overload-match"),
        ("criteria.yaml", "criterion: skill, weight: 2", "criterion: skill, weight: 3"),
    ];

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : int.MaxValue;
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var people = SurveyPeople.Draw(RepositoryFiles.Book.Vocabulary, _day, 20261124, most).ToList();
        foreach (var edits in new[] { _edits[..1], _edits })
            Measure(people, room, edits);
        return 0;
    }

    private static void Measure(List<AthleteRecord> people, Room? room, (string Path, string Old, string New)[] edits)
    {
        var clock = Stopwatch.StartNew();
        var cpu = Environment.CpuUsage.TotalTime;
        var edited = edits.Aggregate(RepositoryFiles.Rules, (files, e) => files.With(e.Path, Replaced(files.Texts[e.Path], e.Old, e.New)));
        var (from, to) = (Read(RepositoryFiles.Rules), Read(edited));
        var impact = Impact.Of((from.Version, to.Version), (from.Book, to.Book), (book, _) => new Side(book, new Squad(people, a => new Question(a, room, null, book.Philosophies["balanced"], _day)), b => new Network(b)), new HashSet<string>());
        clock.Stop();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{people.Count} people, two versions, {edits.Length} edits: {impact.Comparison.Changes.Count} change in {impact.Groups.Count} ways; {clock.Elapsed.TotalSeconds:0.0} s ({(Environment.CpuUsage.TotalTime - cpu).TotalSeconds:0.0} s of processor time on {Environment.ProcessorCount} cores)"));
        for (var i = 0; i < impact.Edits.Count; i++)
            Console.WriteLine($"  edit {i + 1}, {impact.Edits[i].Name}: changes {impact.Affected[i]}");
        Console.WriteLine($"  not told apart: {impact.Groups.Where(g => g.Cause!.How == CauseKind.NotToldApart).Sum(g => g.Athletes.Count)}");
    }

    private static string Replaced(string text, string old, string with)
        => text.Contains(old, StringComparison.Ordinal) ? text.Replace(old, with, StringComparison.Ordinal) : throw new InvalidOperationException($"The rules no longer hold: {old}");

    private static (Comparing.Version Version, RuleBook Book) Read(RuleFiles files)
    {
        var bag = new DiagnosticBag();
        var version = new Comparing.Version(files, YamlTrees.Read(files.Sources(), bag));
        return (version, RuleBookReader.Read(files, version.Trees, bag) ?? throw new FaultyFilesException(bag.Sorted));
    }
}
