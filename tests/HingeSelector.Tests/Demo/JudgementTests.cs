using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Recommending;
using HingeSelector.Rules.Firing;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Demo;

/// <summary>
/// The 24 judgements were written from the screens alone, before the engine ran on them. Where tool and judgement differ, the
/// difference stands in writing in settled.yaml; a difference that is not settled fails, and so does a settlement that no longer differs.
/// </summary>
public sealed class JudgementTests
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    [Fact]
    public void Every_difference_between_tool_and_judgement_is_settled_in_writing()
    {
        var differences = Differences().Order(StringComparer.Ordinal).ToList();
        var settled = Settled().Order(StringComparer.Ordinal).ToList();
        differences.Except(settled).ShouldBeEmpty("not settled in tests/golden/demo/settled.yaml");
        settled.Except(differences).ShouldBeEmpty("settled, but tool and judgement no longer differ");
    }

    private static IEnumerable<string> Differences()
    {
        var answers = Answers();
        foreach (var judgement in Judgements())
        {
            var map = MapReader.Open(judgement, "a judgement", new DiagnosticBag())!;
            var id = map.Required("id")!.Value;
            foreach (var difference in Compare(map, answers[id]))
                yield return $"{id} {difference}";
        }
    }

    private static IEnumerable<string> Compare(MapReader judgement, Recommendation answer)
    {
        var expected = judgement.Required("outcome")!.Value;
        var outcome = Word(answer.Outcome);
        if (expected != outcome)
            yield return $"outcome: judged {expected}, got {outcome}";
        if (answer.Ranked.Count == 0)
            yield break;
        var first = judgement.Scalars("first").Select(s => s.Value).ToList();
        var got = answer.Ranked[0].Candidate.Variant.Id;
        if (first.Count > 0 && !first.Contains(got))
            yield return $"first: got {got}";
        var wrong = judgement.Scalars("not-first").Select(s => s.Value).ToList();
        if (wrong.Contains(got))
            yield return $"not-first: got {got}";
        foreach (var variant in judgement.Scalars("excluded").Select(s => s.Value))
        {
            if (answer.Ranked.Any(r => r.Candidate.Variant.Id == variant))
                yield return $"excluded: {variant} is ranked";
        }
        var load = judgement.Scalar("load")?.Value;
        if (load is "usual" or "lower" or "light" && answer.Ranked[0].Wishes.Word("load") != load)
            yield return $"load: judged {load}, got {answer.Ranked[0].Wishes.Word("load")}";
    }

    private static string Word(Outcome outcome) => outcome switch
    {
        Outcome.LimitedToday => "today",
        _ => outcome.ToString().ToLowerInvariant(),
    };

    private static Dictionary<string, Recommendation> Answers()
    {
        var book = RepositoryFiles.Book;
        var bag = new DiagnosticBag();
        var roster = RosterReader.Read(RepositoryFiles.Source("content/demo/club.csv"), book.Vocabulary, _day, bag);
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), bag);
        var standing = StandingReader.Read(RepositoryFiles.Source("content/demo/standing.yaml"), [.. book.Variants.Select(v => v.Id)], _day, bag)!;
        bag.HasErrors.ShouldBeFalse(DiagnosticPrinter.Print(bag.Sorted));
        var selector = new Selector(book, new Network(book));
        return roster.Good.ToDictionary(a => a.Id, a => selector.Choose(new Question(a, room, standing.GetValueOrDefault(a.Id), book.Philosophies["balanced"], _day)));
    }

    private static IReadOnlyList<YamlNode> Judgements() => List("tests/golden/demo/judgements.yaml", "judgements");

    private static IEnumerable<string> Settled()
    {
        foreach (var node in List("tests/golden/demo/settled.yaml", "settled"))
        {
            var map = MapReader.Open(node, "a settlement", new DiagnosticBag())!;
            map.Required("because").ShouldNotBeNull();
            yield return $"{map.Required("id")!.Value} {map.Required("difference")!.Value}";
        }
    }

    private static IReadOnlyList<YamlNode> List(string path, string key)
    {
        var bag = new DiagnosticBag();
        var root = YamlReader.Read(RepositoryFiles.Source(path), bag);
        bag.HasErrors.ShouldBeFalse(DiagnosticPrinter.Print(bag.Sorted));
        return MapReader.Open(root, "the file", bag)!.List(key);
    }
}
