using System.Text.Json.Nodes;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

/// <summary>One philosophy is of record for an athlete or a training group; the answer says which, since when and by whom.</summary>
public sealed class PhilosophyOfRecordTests : IDisposable
{
    private const string Decisions = """
        philosophy-of-record:
          - {id: p01, philosophy: carry-over-first, since: 2026-09-01, decided-by: T. Bell}
          - {id: p01, philosophy: strength-first, since: 2026-10-01, decided-by: R. Idris}
          - {id: p01, philosophy: balanced, since: 2026-12-01, decided-by: R. Idris}
          - {training-group: infield, philosophy: carry-over-first, since: 2026-10-05, decided-by: T. Bell}
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("hinge-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public void The_latest_decision_that_has_begun_is_in_force()
        => Flat(Athlete("p01")).ShouldContain("philosophy strength-first (of record since 2026-10-01, decided by R. Idris), on 2026-11-24");

    [Fact]
    public void A_decision_about_a_group_counts_for_who_has_none_of_their_own()
    {
        Flat(Athlete("p03")).ShouldContain("carry-over-first (of record for the training group infield since 2026-10-05, decided by T. Bell)");
        Athlete("p04").Output.ShouldContain("philosophy balanced, on");
    }

    [Fact]
    public void The_command_line_goes_before_what_is_of_record()
        => Athlete("p01", "--philosophy", "carry-over-first").Output.ShouldContain("philosophy carry-over-first, on");

    [Fact]
    public void The_json_stamp_of_each_athlete_carries_it()
    {
        var athletes = JsonNode.Parse(Run(Decisions, "--format", "json").Output)!["athletes"]!.AsArray();
        JsonNode Of(string id) => athletes.Single(a => (string?)a!["id"] == id)!["philosophy"]!;
        Of("p01").ToJsonString().ShouldBe("""{"id":"strength-first","ofRecord":true,"since":"2026-10-01","decidedBy":"R. Idris"}""");
        ((string?)Of("p03")["trainingGroup"]).ShouldBe("infield");
        Of("p04").ToJsonString().ShouldBe("""{"id":"balanced","ofRecord":false}""");
    }

    [Fact]
    public void A_roster_says_how_many_go_by_which()
        => Run(Decisions).Output.ShouldContain("Philosophy of record: carry-over-first for 1, strength-first for 1.");

    [Theory]
    [InlineData("philosophy-of-record:\n  - {id: p01, philosophy: strenght-first, since: 2026-10-01, decided-by: R. Idris}\n", "Did you mean 'strength-first'?")]
    [InlineData("philosophy-of-record:\n  - {id: p01, philosophy: balanced, since: 2026-10-01}\n", "lacks 'decided-by'")]
    [InlineData("philosophy-of-record:\n  - {id: p01, training-group: infield, philosophy: balanced, since: 2026-10-01, decided-by: R. Idris}\n", "HS5602")]
    [InlineData("philosophy-of-record:\n  - {id: p01, philosophy: balanced, since: 2026-10-01, decided-by: R. Idris}\n  - {id: p01, philosophy: strength-first, since: 2026-10-01, decided-by: R. Idris}\n", "HS5601")]
    public void A_faulty_decision_is_refused(string text, string message)
    {
        var run = Run(text);
        run.Code.ShouldBe(ExitCode.BadInput);
        run.Error.ShouldContain(message);
    }

    [Fact]
    public void A_decision_about_nobody_is_a_warning_with_the_nearest_name()
    {
        var run = Run("philosophy-of-record:\n  - {training-group: infeild, philosophy: balanced, since: 2026-10-01, decided-by: R. Idris}\n");
        run.Code.ShouldBe(ExitCode.Done);
        run.Error.ShouldContain("HS5603");
        run.Error.ShouldContain("Did you mean 'infield'?");
    }

    [Fact]
    public void The_explanation_says_what_your_philosophy_changed()
    {
        var told = Flat(Athlete("p01", "--why", "conventional"));
        told.ShouldContain("Overload match: +1 -1 = 0; times weight 4 = 0 (your philosophy changed this: 2 in the base)");
        told.ShouldContain("Switched off: set-days-leave-room-for-heavy-bars");
        told.ShouldContain("Your philosophy (strength-first) switched this off. Staff who plan strength first make room");
    }

    [Fact]
    public void A_changed_and_an_added_rule_say_so_where_they_hold()
    {
        var told = Run("", "--philosophy", "carry-over-first", "--format", "json").Output;
        told.ShouldContain("\"kind\": \"added\"");
        var rules = new List<JsonNode>();
        Collect(JsonNode.Parse(told)!["athletes"]!, rules);
        rules.ShouldContain(r => (string?)r["id"] == "no-slow-lowering-the-day-before-a-competition" && (string?)r["philosophyChange"]!["kind"] == "added");
        rules.ShouldAllBe(r => r["philosophyChange"] == null || (string?)r["philosophyChange"]!["philosophy"] == "carry-over-first");
    }

    private static void Collect(JsonNode node, List<JsonNode> rules)
    {
        if (node is JsonObject map)
        {
            if (map["rule"] is JsonObject rule)
                rules.Add(rule);
            foreach (var (_, child) in map)
            {
                if (child is not null)
                    Collect(child, rules);
            }
        }
        else if (node is JsonArray list)
        {
            foreach (var item in list)
                Collect(item!, rules);
        }
    }

    // Rows are wrapped; what they say is not.
    private static string Flat(CliRun run) => string.Join(' ', run.Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private CliRun Athlete(string id, params string[] more) => Run(Decisions, ["--athlete", id, .. more]);

    // The demo club with a group for its third athlete.
    private CliRun Run(string decisions, params string[] more)
    {
        var standing = Path.Combine(_folder, "standing.yaml");
        var roster = Path.Combine(_folder, "club.csv");
        File.WriteAllText(standing, decisions.Length == 0 ? "standing: []\n" : decisions);
        var rows = File.ReadAllLines(Path.Combine(RepositoryFiles.Root, CliRun.Roster));
        File.WriteAllLines(roster, rows.Select((r, i) => i == 0 ? $"training-group,{r}" : r.StartsWith("p03,", StringComparison.Ordinal) ? $"infield,{r}" : $",{r}"));
        return CliRun.Of(["choose", "--roster", roster, "--standing", standing, "--on", CliRun.Day, .. more]);
    }
}
