using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Cli;
using HingeSelector.Tests.Support;
using Json.Schema;

namespace HingeSelector.Tests.Comparing;

/// <summary>Who changes between two versions of the rules, because of which edited line, and what may not disappear unseen.</summary>
public sealed class ImpactTests : IDisposable
{
    private const string Emergency = "stops/emergency.yaml";
    private const string Saddle = "emergency-bladder-bowel-or-saddle";
    private const string Thrower = "carry-over/thrower.yaml";
    private const string TrunkBefore = "or back-court or position-player\n    then:\n      - points: +1 for carry-over";
    private const string TrunkAfter = "or back-court or position-player\n    then:\n      - points: +3 for carry-over";

    private static readonly JsonSchema _schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(RepositoryFiles.Root, "rules/schema/impact.schema.json")));

    private readonly EditedHome _home = new();

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Nothing_edited_changes_nobody()
    {
        var run = Impact();
        run.Code.ShouldBe(ExitCode.Done, run.Error);
        run.Output.ShouldStartWith("0 of 24 athletes change; 0 edits.\n");
    }

    [Fact]
    public void One_edited_line_is_named_with_those_whom_it_changes()
    {
        _home.Edit(Thrower, TrunkBefore, TrunkAfter);
        Golden.ShouldMatch(Impact().Output, "impact/one-line.txt");
    }

    [Fact]
    public void Wording_sources_and_examples_are_no_edits_that_count()
    {
        _home.Edit("overload-match/strength.yaml", "More strength is the first need here, and", "More strength comes first, and");
        Impact().Output.ShouldStartWith("0 of 24 athletes change; 0 edits, 1 more in wording, sources or examples only.\n");
    }

    [Fact]
    public void A_rule_that_moves_to_another_file_of_its_topic_is_no_edit()
    {
        var text = RepositoryFiles.Rules.Texts["overload-match/season.yaml"];
        _home.Write("overload-match/season.yaml", "rules: []\n").Write("overload-match/moved.yaml", text);
        Impact().Output.ShouldStartWith("0 of 24 athletes change; 0 edits");
    }

    [Fact]
    public void Each_of_several_edits_gets_its_own_athletes()
    {
        _home.Edit(Thrower, TrunkBefore, TrunkAfter)
            .Edit("criteria.yaml", "criterion: skill, weight: 2", "criterion: skill, weight: 4")
            .Edit("model.yaml", "default: 18 deg", "default: 20 deg");
        var both = Json();
        var edits = both["edits"]!.AsArray();
        edits.Count.ShouldBe(3);
        edits.ShouldContain(e => (string?)e!["element"] == "rule hips-for-those-who-throw-from-the-trunk" && (int)e["changes"]! > 0);
        foreach (var edit in edits)
            ((int)edit!["changes"]!).ShouldBe(Alone(edit, both), (string?)edit["element"]);
    }

    [Fact]
    public void A_parameter_of_the_model_is_an_edit_like_any_other()
    {
        _home.Edit("model.yaml", "default: 18 deg", "default: 20 deg");
        var json = Json();
        var edit = json["edits"]!.AsArray().Single()!;
        ((string?)edit["element"]).ShouldStartWith("parameter ");
        ((string?)edit["lines"]![0]!["file"]).ShouldBe("after/rules/model.yaml");
        ((int)edit["changes"]!).ShouldBe((int)json["changed"]!);
    }

    [Fact]
    public void A_stop_that_disappears_comes_first_and_fails()
    {
        _home.Remove(Emergency, Saddle);
        var run = Impact();
        run.Code.ShouldBe(ExitCode.StopGone);
        Golden.ShouldMatch(run.Output, "impact/stop-gone.txt");
    }

    [Fact]
    public void It_passes_when_acknowledged_and_still_comes_first()
    {
        _home.Remove(Emergency, Saddle);
        var run = Impact("--acknowledge", Saddle);
        run.Code.ShouldBe(ExitCode.Done, run.Output);
        run.Output.Split('\n')[1].ShouldBe(" Stops or holds disappear, acknowledged");
        Impact("--acknowledge", "another-rule").Code.ShouldBe(ExitCode.StopGone);
    }

    [Fact]
    public void A_stop_of_a_lower_level_counts_as_gone()
    {
        var block = RepositoryFiles.Rules.Texts[Emergency];
        var at = block.IndexOf(Saddle, StringComparison.Ordinal);
        _home.Write(Emergency, block[..at] + ReplaceFirst(block[at..], "level: emergency", "level: today"));
        var run = Impact();
        run.Code.ShouldBe(ExitCode.StopGone);
        run.Output.ShouldContain("the stop is weaker: today instead of emergency");
    }

    [Fact]
    public void A_hold_that_disappears_fails_as_well()
    {
        _home.Edit("vocabulary.yaml", "group: must-answer, not suggested: only its own answer counts, lifetime: 365 days, protocol: health-questionnaire", "lifetime: 365 days, protocol: health-questionnaire");
        var roster = Path.Combine(_home.Folder, "club.csv");
        File.WriteAllText(roster, File.ReadAllText(Path.Combine(RepositoryFiles.Root, CliRun.Roster)).Replace(",clear,", ",,", StringComparison.Ordinal));
        var run = ImpactIn(_home.Folder, roster);
        run.Code.ShouldBe(ExitCode.StopGone, run.Error + run.Output);
        run.Output.Split('\n')[2].ShouldContain("health-questionnaire: no longer holds athletes who have not answered it");
    }

    [Fact]
    public void A_fact_that_only_the_new_vocabulary_knows_may_have_its_column_already()
    {
        _home.Edit("vocabulary.yaml", "  - {fact: sport,", "  - {fact: club-colour, label: Colour of the club, about: athlete, kind: choice, values: [red, blue], lifetime: always, protocol: athlete}\n  - {fact: sport,");
        var roster = Path.Combine(_home.Folder, "club.csv");
        var rows = File.ReadAllLines(Path.Combine(RepositoryFiles.Root, CliRun.Roster));
        File.WriteAllLines(roster, rows.Select((r, i) => i == 0 ? $"club-colour,{r}" : $"red,{r}"));
        var run = ImpactIn(_home.Folder, roster);
        run.Code.ShouldBe(ExitCode.Done, run.Error);
        run.Output.ShouldStartWith("0 of 24 athletes change; 1 edit.\n");
    }

    [Fact]
    public void The_document_follows_its_schema()
    {
        _home.Remove(Emergency, Saddle).Edit("criteria.yaml", "criterion: skill, weight: 2", "criterion: skill, weight: 4");
        using var document = JsonDocument.Parse(Impact("--format", "json").Output);
        var result = _schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        result.IsValid.ShouldBeTrue(string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).Take(5)));
        document.RootElement.GetProperty("groups").GetArrayLength().ShouldBeGreaterThan(1);
    }

    [Fact]
    public void A_revision_of_a_repository_can_be_compared()
    {
        Git("init", "--quiet");
        Git("add", "rules");
        Git("-c", "user.name=t", "-c", "user.email=t@example.org", "commit", "--quiet", "-m", "x");
        _home.Edit("criteria.yaml", "criterion: skill, weight: 2", "criterion: skill, weight: 4");
        var run = CliRun.Of("rules", "impact", "--home", Path.Combine(_home.Folder, "after"), "--from", "HEAD", "--roster", Path.Combine(RepositoryFiles.Root, CliRun.Roster), "--on", CliRun.Day);
        run.Code.ShouldBe(ExitCode.Done, run.Error);
        run.Output.ShouldContain("criterion skill at rules/criteria.yaml:11: weight: 2 -> 4");
        var wrong = CliRun.Of("rules", "impact", "--home", Path.Combine(_home.Folder, "after"), "--from", "no-such-branch", "--roster", CliRun.Roster);
        wrong.Code.ShouldBe(ExitCode.Usage);
        wrong.Error.ShouldStartWith("hinge-selector: 'no-such-branch' is neither a folder nor a git revision that holds 'rules'.\n");
    }

    [Theory]
    [InlineData("'rules impact' needs the rules before.", "--roster", CliRun.Roster)]
    [InlineData("'rules impact' needs a roster.", "--from", "rules")]
    [InlineData("'content' holds no rules/vocabulary.yaml.", "--from", "content", "--roster", CliRun.Roster)]
    [InlineData("'--output=x' is neither a folder nor a git revision that holds 'rules'.", "--from=--output=x", "--roster", CliRun.Roster)]
    [InlineData("There is no philosophy 'strenght-first'.", "--from", "rules", "--roster", CliRun.Roster, "--philosophy", "strenght-first")]
    public void What_cannot_be_is_said_in_one_sentence(string message, params string[] args)
    {
        var run = CliRun.Of(["rules", "impact", .. args]);
        run.Code.ShouldBe(ExitCode.Usage);
        run.Error.ShouldStartWith($"hinge-selector: {message}\n");
        run.Output.ShouldBeEmpty();
    }

    [Fact]
    public void A_fault_in_either_version_is_shown_in_place()
    {
        _home.Edit("overload-match/strength.yaml", "points: +3 for overload-match", "points: +3 for overlaod-match");
        var run = Impact();
        run.Code.ShouldBe(ExitCode.BadRules);
        run.Error.ShouldContain("rules/overload-match/strength.yaml:12:17: error HS3005");
    }

    // What the edit would change if it were the only one, by a run of its own.
    private static int Alone(JsonNode edit, JsonNode both)
    {
        using var home = new EditedHome();
        _ = (string?)edit["element"] switch
        {
            "criterion skill" => home.Edit("criteria.yaml", "criterion: skill, weight: 2", "criterion: skill, weight: 4"),
            "rule hips-for-those-who-throw-from-the-trunk" => home.Edit(Thrower, TrunkBefore, TrunkAfter),
            _ => home.Edit("model.yaml", "default: 18 deg", "default: 20 deg"),
        };
        var alone = JsonNode.Parse(ImpactTo(home.Folder, "--format", "json").Output)!;
        var changed = Groups(alone).ToDictionary(g => g.Athlete, g => g.Changes);
        return Groups(both).Count(g => changed.TryGetValue(g.Athlete, out var changes) && changes.Intersect(g.Changes).Any());
    }

    private static IEnumerable<(string Athlete, string[] Changes)> Groups(JsonNode document)
        => document["groups"]!.AsArray().SelectMany(g => g!["athletes"]!.AsArray().Select(a => ((string)a!, g["changes"]!.AsArray().Select(c => (string)c!).ToArray())));

    private static string ReplaceFirst(string text, string old, string with)
    {
        var at = text.IndexOf(old, StringComparison.Ordinal);
        return text[..at] + with + text[(at + old.Length)..];
    }

    private JsonNode Json() => JsonNode.Parse(Impact("--format", "json").Output)!;

    private CliRun Impact(params string[] more) => ImpactTo(_home.Folder, more);

    private static CliRun ImpactTo(string folder, params string[] more)
        => ImpactIn(folder, Path.Combine(RepositoryFiles.Root, CliRun.Roster), ["--room", Path.Combine(RepositoryFiles.Root, "content/demo/room.yaml"), .. more]);

    private static CliRun ImpactIn(string folder, string roster, params string[] more)
        => CliRun.Of(["rules", "impact", "--home", "after", "--from", "before", "--to", "after", "--roster", roster, "--on", CliRun.Day, .. more], "", folder: folder);

    private void Git(params string[] args)
    {
        using var process = Process.Start(new ProcessStartInfo("git", args) { WorkingDirectory = Path.Combine(_home.Folder, "after"), RedirectStandardOutput = true, RedirectStandardError = true })!;
        process.WaitForExit();
        process.ExitCode.ShouldBe(0);
    }
}
