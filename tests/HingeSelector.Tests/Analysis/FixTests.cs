using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Cli;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Analysis;

/// <summary>Safe edits are made, and nothing else in the file is touched.</summary>
public sealed class FixTests
{
    private const string Wrong = """
        # Remarks stay where they are.
        rules:
          - rule: a-rule            # also behind a line
            when:
              limb-diffrence: is yes
              season-phase: is in-seasn or post-season
            then:
        	  - caution: Look here.
            because: Planted.
            grade: practise
            sources: []

          # This one covers the other.
          - rule: b-rule
            when:
              limb-difference: is yes
            then:
              - caution: Look here.
            becuase: Planted.
            grade: practice
            sources: []

        """;

    private const string Right = """
        # Remarks stay where they are.
        rules:
          # This one covers the other.
          - rule: b-rule
            when:
              limb-difference: is yes
            then:
              - caution: Look here.
            because: Planted.
            grade: practice
            sources: []

        """;

    [Fact]
    public void Names_tabs_and_rules_that_add_nothing_are_mended()
    {
        using var home = new TemporaryHome();
        home.Write("planted/planted.yaml", Wrong);
        var run = CliRun.Of("rules", "check", "--fix", "--home", home.Path);

        run.Code.ShouldBe(ExitCode.Done, run.Output);
        home.Read("planted/planted.yaml").ShouldBe(Right);
        run.Output.ShouldContain("Fixed rules/planted/planted.yaml:5: write 'limb-difference' instead of 'limb-diffrence'.");
        run.Output.ShouldContain("Fixed rules/planted/planted.yaml:3: remove the rule 'a-rule'.");
    }

    [Fact]
    public void Sound_files_are_left_alone()
    {
        using var home = new TemporaryHome();
        CliRun.Of("rules", "check", "--fix", "--home", home.Path).Code.ShouldBe(ExitCode.Done);
        foreach (var (path, text) in RepositoryFiles.Rules.Texts)
            home.Read(path).ShouldBe(text);
    }

    [Fact]
    public void What_could_be_meant_in_two_ways_is_left_to_the_author()
    {
        using var home = new TemporaryHome();
        var text = Wrong[..Wrong.IndexOf("    then:", StringComparison.Ordinal)].Replace("season-phase: is in-seasn or post-season", "sex: is emale", StringComparison.Ordinal).Replace("limb-diffrence: is yes", "hip-pain-wrst, wrse: above 1 points", StringComparison.Ordinal)
            + "    then:\n      - points: +1 for fti\n    because: Planted.\n    grade: practice\n    sources: []\n";
        home.Write("planted/planted.yaml", text);
        CliRun.Of("rules", "check", "--fix", "--home", home.Path).Code.ShouldBe(ExitCode.BadRules);
        home.Read("planted/planted.yaml").ShouldContain("+1 for fti");
    }
}
