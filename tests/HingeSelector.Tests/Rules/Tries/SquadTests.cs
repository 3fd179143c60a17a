using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Examples.Squads;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;
using Json.Schema;

namespace HingeSelector.Tests.Rules.Tries;

public sealed class SquadTests
{
    private const string Points = "between 5 and 15 deg\n    then:\n      - points: +1 for fit";

    private static readonly Lazy<SquadRecord> _shipped = new(() => Decide(RepositoryFiles.Book));

    [Fact]
    public void What_is_written_reads_back_and_writes_the_same_bytes()
    {
        var first = Bytes(_shipped.Value);
        var back = SquadJson.Read(Encoding.UTF8.GetString(first));

        Bytes(back).ShouldBe(first);
        back.Input.Roster.ShouldBe(_shipped.Value.Input.Roster);
        SquadComparison.Of(_shipped.Value, back).ShouldBeEmpty();
    }

    /// <summary>What <c>rules replay tests/golden/squad/club.json</c> compares with; rewritten with HINGE_UPDATE_GOLDEN=1.</summary>
    [Fact]
    public void The_demo_club_is_decided_as_recorded() => Golden.ShouldMatch(Encoding.UTF8.GetString(Bytes(_shipped.Value)), "squad/club.json");

    [Fact]
    public void Deciding_again_gives_the_same_bytes() => Bytes(Decide(RepositoryFiles.Book)).ShouldBe(Bytes(_shipped.Value));

    [Fact]
    public void A_changed_rule_shows_exactly_the_athletes_that_it_touches()
    {
        var text = RepositoryFiles.Rules.Texts["fit/hips.yaml"];
        var changed = RuleBookReader.Read(RepositoryFiles.Rules.With("fit/hips.yaml", text.Replace(Points, Points.Replace("+1", "+3", StringComparison.Ordinal), StringComparison.Ordinal)));
        changed.Hash.ShouldNotBe(RepositoryFiles.Book.Hash);
        var after = Decide(changed);

        // Whoever reads otherwise in the file, found without the comparison.
        var expected = _shipped.Value.Athletes.Zip(after.Athletes).Where(p => !Bytes(Only(p.First)).SequenceEqual(Bytes(Only(p.Second)))).Select(p => p.First.Id).ToList();
        var changes = SquadComparison.Of(_shipped.Value, after);
        changes.Select(c => c.Athlete).Distinct().ShouldBe(expected);
        expected.Count.ShouldBeInRange(1, after.Athletes.Count - 1);
        changes.ShouldAllBe(c => c.Kind == ChangeKind.Points || c.Kind == ChangeKind.Order || c.Kind == ChangeKind.FirstChoice);
        changes.Where(c => c.Kind == ChangeKind.Points).ShouldAllBe(c => c.Before.EndsWith("for fit") && c.After.EndsWith("for fit"));
    }

    [Fact]
    public void A_stop_that_disappears_comes_first()
    {
        var stopped = _shipped.Value.Athletes.First(a => a.Stops.Count > 0 && a.Outcome == "refer");
        var before = _shipped.Value with { Athletes = [_shipped.Value.Athletes.First(a => a.Stops.Count == 0), stopped] };
        var after = before with { Athletes = [before.Athletes[0] with { Cautions = ["Another."] }, stopped with { Stops = [], Outcome = "ranked" }] };
        var rows = SquadText.Rows(before, after, SquadComparison.Of(before, after)).ToList();

        rows[0].ShouldBe(stopped.Id);
        rows[1].ShouldStartWith("    stop: gone: refer (");
        rows.ShouldContain("2 of 2 athletes are decided otherwise.");
    }

    [Fact]
    public void The_record_follows_its_schema_in_which_everything_is_described()
    {
        var path = Path.Combine(RepositoryFiles.Root, "rules", "schema", "squad.schema.json");
        using var document = JsonDocument.Parse(Bytes(_shipped.Value));
        JsonSchema.FromText(File.ReadAllText(path)).Evaluate(document.RootElement).IsValid.ShouldBeTrue();
        foreach (Match part in Regex.Matches(File.ReadAllText(path), "\"type\": [^\\n]*,\\s*\"(?<next>[a-z]+)\""))
            part.Groups["next"].Value.ShouldBe("description");
    }

    [Fact]
    public void A_faulty_row_leaves_no_record()
    {
        var bag = new DiagnosticBag();
        var input = Input with { Roster = Input.Roster with { Text = Input.Roster.Text.Replace("male", "mail", StringComparison.Ordinal) } };
        new SquadDecider(RepositoryFiles.Book, new LoopEvaluator(RepositoryFiles.Book)).Decide(input, bag).ShouldBeNull();
        bag.HasErrors.ShouldBeTrue();
    }

    private static SquadRecord Only(AthleteDecision athlete) => _shipped.Value with { Athletes = [athlete] };

    private static SquadInput Input => new(new DateOnly(2026, 11, 24), "balanced", FileOf("content/demo/club.csv"), FileOf("content/demo/room.yaml"), FileOf("content/demo/standing.yaml"));

    private static SquadFile FileOf(string path) => new(path, File.ReadAllText(Path.Combine(RepositoryFiles.Root, path)));

    private static SquadRecord Decide(RuleBook book) => new SquadDecider(book, new LoopEvaluator(book)).Decide(Input, new DiagnosticBag())!;

    private static byte[] Bytes(SquadRecord record)
    {
        using var bytes = new MemoryStream();
        SquadJson.Write(bytes, record);
        return bytes.ToArray();
    }
}
