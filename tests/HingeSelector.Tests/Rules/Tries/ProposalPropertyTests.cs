using CsCheck;
using HingeSelector.Examples;
using HingeSelector.Examples.Covering;
using HingeSelector.Examples.Mutating;
using HingeSelector.Examples.Proposing;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Tries;

/// <summary>For random rules over two words the written proposals show everything and leave no mutant alive.</summary>
public sealed class ProposalPropertyTests
{
    private static readonly IReadOnlyList<Word> _numbers = [.. RepositoryFiles.Book.Vocabulary.Words.Where(w => w is { IsMeasured: true, Kind: WordKind.Number, NotBelow: null, Range: not null })];
    private static readonly IReadOnlyList<Word> _choices = [.. RepositoryFiles.Book.Vocabulary.Words.Where(w => w is { IsMeasured: true, Kind: WordKind.Choice, Sided: false })];

    private static readonly Gen<(string When, string Given)> _rule =
        from number in Gen.Int[0, _numbers.Count - 1]
        from form in Gen.Int[0, 5]
        from low in Gen.Int[0, 40]
        from width in Gen.Int[2, 30]
        from choice in Gen.Int[0, _choices.Count - 1]
        from values in Gen.Int[1, 3]
        from negated in Gen.Bool
        select Join(Number(_numbers[number], form, low, width), Choice(_choices[choice], values, negated));

    [Fact]
    public void Written_proposals_show_everything_and_leave_no_mutant_alive() => _rule.Sample(
        rule =>
        {
            var files = SmallRules.Files(rule.When, $"- given: {{{rule.Given}}}\n  expect: fires\n");
            var book = RuleBookReader.Read(files);
            var text = TriesEdit.Apply(files.Texts[SmallRules.Path], SmallRules.Cases(book).SelectMany(new Proposer(book).For), out _);
            var after = RuleBookReader.Read(files.With(SmallRules.Path, text));
            var cases = SmallRules.Cases(after);
            return CoverageReport.Of(after, cases).Missing.Count == 0 && MutationReport.Of(after, cases).Survivors.Count == 0;
        },
        iter: 25, print: r => $"{r.When}\n{r.Given}");

    private static (string When, string Given) Join((string When, string Given) a, (string When, string Given) b) => ($"{a.When}\n{b.When}", $"{a.Given}, {b.Given}");

    // Thresholds lie inside the range by at least two steps, so that both sides exist.
    private static (string, string) Number(Word word, int form, int low, int width)
    {
        var step = Steps.Of(word, word.Range!.Value.Low);
        var room = (int)Math.Floor((word.Range.Value.High - word.Range.Value.Low) / step) - 4;
        var from = 2 + (low % Math.Max(1, room - 2));
        var to = Math.Min(from + width, room + 2);
        string At(int steps) => Steps.Print(word, Math.Round(word.Range.Value.Low + (steps * step), 9));
        var demand = form switch
        {
            0 => $"below {At(to)}",
            1 => $"at most {At(to)}",
            2 => $"above {At(from)}",
            3 => $"at least {At(from)}",
            4 => $"from {At(from)} to {At(to)}",
            _ => $"between {At(from)} and {At(to)}",
        };
        var name = word.Sided ? $"{word.Id}, worse" : word.Id;
        return ($"{name}: {demand}", $"'{name}': {At(form is 0 or 1 or 5 ? to - 1 : from + 1)}");
    }

    private static (string, string) Choice(Word word, int values, bool negated)
    {
        var listed = word.Values.Take(Math.Min(values, word.Values.Count - 1)).ToList();
        return ($"{word.Id}: is {(negated ? "not " : "")}{string.Join(" or ", listed)}", $"{word.Id}: {(negated ? word.Values[listed.Count] : listed[0])}");
    }
}
