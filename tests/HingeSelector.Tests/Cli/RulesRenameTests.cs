using HingeSelector.Cli.Frame;
using HingeSelector.Editing;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

public sealed class RulesRenameTests : IDisposable
{
    private readonly HomeCopy _home = new();

    public RulesRenameTests() => _home.Write("rules/sample/sample.yaml", RepositoryFiles.Source("tests/golden/editing/sample.yaml").Text);

    public void Dispose() => _home.Dispose();

    [Theory]
    [InlineData("find-short-hamstrings", "Rule")]
    [InlineData("short-hamstrings", "Finding")]
    [InlineData("silbernagel-2007", "Source")]
    [InlineData("season-phase", "Word")]
    [InlineData("hip-share", "Word")]
    public void The_id_changes_everywhere_and_nothing_else_does(string from, string kind)
    {
        const string to = "another-name-for-it";
        var before = _home.Texts();
        var run = Run("rename", from, to);

        run.Code.ShouldBe(ExitCode.Done, run.Error);
        run.Output.ShouldStartWith($"The {kind.ToLowerInvariant()} '{from}' is now '{to}': ");
        var after = _home.Texts();
        after.Keys.ShouldBe(before.Keys, ignoreOrder: true);
        after.Values.Any(t => t.Contains(to, StringComparison.Ordinal)).ShouldBeTrue();
        // Taking the new name back gives every byte again, comments included.
        foreach (var (file, text) in after)
            text.Replace(to, from, StringComparison.Ordinal).ShouldBe(before[file], file);
        Run("check").Output.ShouldContain(" 0 errors");
        Renaming.KindOf(RepositoryFiles.Book, from).ShouldBe(Enum.Parse<IdKind>(kind));
    }

    [Fact]
    public void The_answer_is_as_agreed()
        => Golden.ShouldMatch(Run("rename", "sample-short", "sample-of-short-legs").Output, "editing/rename.txt");

    [Theory]
    [InlineData("rename short-hamstring anything", "There is no rule, finding, source or word 'short-hamstring'.", "Did you mean 'short-hamstrings'?")]
    [InlineData("rename short-hamstrings stiff-hips", "'stiff-hips' is taken: there is a finding of this name.", "Choose another name.")]
    [InlineData("rename short-hamstrings sumo", "'sumo' is taken: there is a variant of this name.", "Choose another name.")]
    [InlineData("rename sumo wide-pull", "'sumo' is a variant, and a variant is its file.", "Only rules")]
    [InlineData("rename hip-spare spare-hips", "'hip-spare' is a word that the program itself computes", "label")]
    [InlineData("rename straight-leg-raise leg-raise", "'straight-leg-raise' is a word that the program itself needs", "label")]
    [InlineData("rename knee-pain-worst knee-pain", "'knee-pain-worst' cannot be renamed by changing names alone", "pattern")]
    [InlineData("rename short-hamstrings Short_Hamstrings", "'Short_Hamstrings' is not an id.", "small letters")]
    [InlineData("rename short-hamstrings", "NEW is missing.", "new id")]
    public void What_cannot_be_renamed_changes_no_file(string args, string message, string hint)
    {
        var before = _home.Texts();
        var run = Run(args.Split(' '));

        run.Code.ShouldBe(ExitCode.Usage);
        run.Output.ShouldBeEmpty();
        run.Error.ShouldContain(message);
        run.Error.ShouldContain(hint);
        _home.Texts().ShouldBe(before);
    }

    [Fact]
    public void Faulty_rules_are_told_and_nothing_is_renamed()
    {
        _home.Write("rules/sample/sample.yaml", "rules:\n  - rule: [");
        var run = Run("rename", "short-hamstrings", "legs-are-short");

        run.Code.ShouldBe(ExitCode.BadRules);
        _home.Read("rules/findings/body.yaml").ShouldNotContain("legs-are-short");
    }

    private CliRun Run(params string[] args) => CliRun.Of(["rules", .. args, "--home", _home.Folder]);
}
