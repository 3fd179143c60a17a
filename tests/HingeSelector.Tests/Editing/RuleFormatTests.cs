using CsCheck;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Reading;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Editing;

public class RuleFormatTests
{
    private const string Path = "fit/hips.yaml";

    [Fact]
    public void The_shipped_files_are_in_the_layout()
        => RepositoryFiles.Rules.Texts.Where(t => Format(t.Key, t.Value) != t.Value).Select(t => t.Key).ShouldBeEmpty();

    [Fact]
    public void Keys_blanks_and_indentation_are_mended_and_comments_stay()
        => Golden.ShouldMatch(Format(Path, RepositoryFiles.Source("tests/golden/editing/untidy.yaml").Text), "editing/tidy.yaml");

    [Theory]
    [InlineData("rules:\n  - rule: [a\n")]
    [InlineData("rules:\n\t- rule: a\n")]
    [InlineData("rules: {a: 1}\nrules: 2\n")]
    public void A_file_with_yaml_faults_is_left_alone_and_told(string text)
    {
        var bag = new DiagnosticBag();
        RuleFormat.Of(Path, new SourceText(Path, text), bag).ShouldBe(text);
        bag.HasErrors.ShouldBeTrue();
    }

    [Theory]
    [InlineData("rules:\n  - rule: a\n    because: >\n      folded\n\n\n      text  \n    when: {}\n")]
    [InlineData("rules: [{rule: a,\n  when: {}}]\n")]
    public void What_is_not_plain_yaml_says_the_same_afterwards(string text) => SaysTheSame(Path, text);

    /// <summary>Lines are moved, doubled, dropped, shifted and commented at random: what is still YAML must read alike and be settled by one run.</summary>
    [Fact]
    public void Edits_at_random_are_formatted_once_and_for_all()
    {
        var files = RepositoryFiles.Rules.Texts.ToArray();
        var readable = 0;
        Gen.Select(Gen.Int[0, files.Length - 1], Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5000], Gen.Int[0, 6]).List[1, 6]).Sample(
            (file, edits) =>
            {
                var text = edits.Aggregate(Part(files[file].Value, edits[0].Item2), (t, e) => Edit(t, e.Item1, e.Item2, e.Item3));
                if (SaysTheSame(files[file].Key, text))
                    Interlocked.Increment(ref readable);
            },
            iter: 3000);
        // Else the test would look at nothing but faults.
        readable.ShouldBeGreaterThan(600);
    }

    [Fact]
    public void Rules_out_of_order_compile_to_the_same_rules()
    {
        var shuffled = RepositoryFiles.Rules.Texts.Aggregate(RepositoryFiles.Rules, (all, t) => all.With(t.Key, Upset(t.Value)));
        var formatted = shuffled.Texts.Aggregate(shuffled, (all, t) => all.With(t.Key, Format(t.Key, t.Value)));

        shuffled.Texts.Count(t => RepositoryFiles.Rules.Texts[t.Key] != t.Value).ShouldBeGreaterThan(40);
        formatted.Texts.Where(t => t.Value != RepositoryFiles.Rules.Texts[t.Key]).Select(t => t.Key).ShouldBeEmpty();
        BookPrint.Of(RuleBookReader.Read(shuffled)).ShouldBe(BookPrint.Of(RuleBookReader.Read(formatted)));
    }

    // The grade above the reason, deeper indentation of tries, blanks at the end, other line ends.
    private static string Upset(string text)
    {
        if (!text.Contains("\nrules:\n", StringComparison.Ordinal) && !text.StartsWith("rules:\n", StringComparison.Ordinal))
            return text;
        var lines = text.Split('\n').ToList();
        var inTries = false;
        for (var i = 1; i < lines.Count; i++)
        {
            if (lines[i].StartsWith("    grade: ", StringComparison.Ordinal) && lines[i - 1].StartsWith("    because: ", StringComparison.Ordinal))
                (lines[i], lines[i - 1]) = (lines[i - 1] + "   ", lines[i]);
            inTries = lines[i].Length > 0 && (lines[i] == "    tries:" || (inTries && lines[i].StartsWith("      ", StringComparison.Ordinal)));
            if (inTries && lines[i] != "    tries:")
                lines[i] = "  " + lines[i];
        }
        return string.Join("\r\n", lines);
    }

    private static bool SaysTheSame(string path, string text)
    {
        var bag = new DiagnosticBag();
        var source = new SourceText(path, text);
        var once = RuleFormat.Of(path, source, bag);
        RuleFormat.Of(path, new SourceText(path, once), new DiagnosticBag()).ShouldBe(once);
        if (bag.HasErrors || YamlReader.Read(source, new DiagnosticBag()) is not { } before)
        {
            once.ShouldBe(text);
            return false;
        }
        RuleFormat.ReadsAlike(before, YamlReader.Read(new SourceText(path, once), new DiagnosticBag())!).ShouldBeTrue(text);
        Comments(once).ShouldBe(Comments(text), ignoreOrder: true);
        return true;
    }

    // Every comment that takes a line of its own.
    private static IEnumerable<string> Comments(string text) => text.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith('#'));

    private static string Format(string path, string text) => RuleFormat.Of(path, new SourceText(path, text), new DiagnosticBag());

    // Sixty lines are enough, and quick.
    private static string Part(string text, int seed)
    {
        var lines = text.Split('\n');
        return lines.Length < 60 || !text.Contains("\n  - rule: ", StringComparison.Ordinal) ? text : "rules:\n" + string.Join('\n', lines.Skip(NextRule(lines, seed)).Take(60)) + "\n";
    }

    private static int NextRule(string[] lines, int seed)
    {
        var rules = Enumerable.Range(0, lines.Length).Where(i => lines[i].StartsWith("  - rule: ", StringComparison.Ordinal)).ToList();
        return rules[seed % rules.Count];
    }

    private static string Edit(string text, int how, int where, int size)
    {
        var lines = text.Split('\n').ToList();
        var at = where % lines.Count;
        switch (how)
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, new string(' ', size) + "# a note of somebody");
                break;
            case 2:
                lines.Insert(at, "");
                lines.Insert(at, new string(' ', size));
                break;
            case 3:
                lines[at] = new string(' ', size) + lines[at].TrimStart();
                break;
            case 4:
                lines[at] += "  # behind it";
                break;
            default:
                (lines[at], lines[(at + 1) % lines.Count]) = (lines[(at + 1) % lines.Count], lines[at]);
                break;
        }
        return string.Join('\n', lines);
    }
}
