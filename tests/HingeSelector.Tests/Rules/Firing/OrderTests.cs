using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Rules.Firing;

public sealed class OrderTests
{
    private const int Cases = 60;

    [Fact]
    public void The_order_of_rules_in_a_file_changes_nothing()
        => Answers(RulesFolder.Book(RulesFolder.WithTopics([.. EveryOperator.Topics.Select(t => (t.Path, Reversed(t.Text)))]))).ShouldBe(Answers(RulesFolder.Book(EveryOperator.Files)));

    [Fact]
    public void The_order_of_files_changes_nothing()
    {
        (string, string)[] renamed = [.. EveryOperator.Topics.Select((t, i) => ($"fit/{9 - i}.yaml", t.Text))];
        Answers(RulesFolder.Book(RulesFolder.WithTopics(renamed))).ShouldBe(Answers(RulesFolder.Book(EveryOperator.Files)));
    }

    [Fact]
    public void The_order_in_which_candidates_enter_changes_nothing()
    {
        var book = RulesFolder.Book(EveryOperator.Files);
        var shuffled = Enumerable.Range(0, book.Variants.Count).ToArray();
        new Random(3).Shuffle(shuffled);
        Answers(book, order: shuffled).ShouldBe(Answers(book));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_order_of_definitions_and_their_priorities_change_nothing(int seed)
    {
        var book = RulesFolder.Book(EveryOperator.Files);
        var random = new Random(seed);
        var shuffled = Definitions.Of(book).Select(d => d with { Priority = random.Next(100) }).ToArray();
        random.Shuffle(shuffled);
        Answers(book, new Network(book, shuffled)).ShouldBe(Answers(book));
    }

    private static List<string> Answers(RuleBook book, Network? network = null, int[]? order = null)
    {
        network ??= new Network(book);
        var cases = new RandomCases(RulesFolder.Book(EveryOperator.Files));
        var answers = new List<string>();
        for (var seed = 0; seed < Cases; seed++)
        {
            var facts = cases.First(seed);
            var session = network.Start(facts);
            session.Order = order;
            var evaluation = session.First();
            cases.FillChosen(facts, seed);
            session.Second();
            var findings = book.Findings.OrderBy(f => f.Id, StringComparer.Ordinal).Select(f => $"{f.Id} {evaluation.Findings[f.Index]}");
            answers.Add(string.Join("; ", evaluation.Fired.Select(f => $"{book.Rules[f.Rule].Id} {f.Candidate}").Concat(findings)));
        }
        return answers;
    }

    // Text blocks of the list, last first.
    private static string Reversed(string text)
    {
        const string start = "  - rule: ";
        var head = text[..text.IndexOf(start, StringComparison.Ordinal)];
        var rules = text[head.Length..].Split(start, StringSplitOptions.RemoveEmptyEntries);
        return head + string.Concat(rules.Reverse().Select(r => start + r.TrimEnd() + "\n"));
    }
}
