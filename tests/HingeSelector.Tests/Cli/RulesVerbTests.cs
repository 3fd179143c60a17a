using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

public class RulesVerbTests
{
    [Fact]
    public void The_shipped_rules_are_clean()
    {
        var run = CliRun.Of("rules", "check");

        run.Code.ShouldBe(ExitCode.Done, run.Output);
        run.Output.ShouldEndWith("0 errors, 0 warnings.\n");
    }

    [Fact]
    public void A_fault_is_shown_in_place_and_exits_with_four()
    {
        var home = Directory.CreateTempSubdirectory("hinge-").FullName;
        try
        {
            Copy(Path.Combine(RepositoryFiles.Root, "rules"), Path.Combine(home, "rules"));
            var file = Path.Combine(home, "rules", "fit", "hips.yaml");
            File.WriteAllText(file, File.ReadAllText(file).Replace("hip-spare, as set up: below 0 deg", "hip-spear, as set up: below 0 deg", StringComparison.Ordinal));
            var run = CliRun.Of("rules", "check", "--home", home);

            run.Code.ShouldBe(ExitCode.BadRules);
            run.Output.ShouldContain("rules/fit/hips.yaml:5:7: error HS");
            run.Output.ShouldContain("Did you mean 'hip-spare'?");
        }
        finally
        {
            Directory.Delete(home, true);
        }
    }

    [Fact]
    public void A_measured_word_without_its_page_is_told()
    {
        var home = Directory.CreateTempSubdirectory("hinge-").FullName;
        try
        {
            Copy(Path.Combine(RepositoryFiles.Root, "rules"), Path.Combine(home, "rules"));
            Copy(Path.Combine(RepositoryFiles.Root, "content", "protocols"), Path.Combine(home, "content", "protocols"));
            File.Move(Path.Combine(home, "content", "protocols", "hip-rotation.md"), Path.Combine(home, "content", "protocols", "hip-rotations.md"));
            var run = CliRun.Of("rules", "check", "--home", home);

            run.Code.ShouldBe(ExitCode.Findings);
            run.Output.ShouldContain("warning HS4001: No page says how 'hip-internal-rotation' (and 1 more) is measured: content/protocols/hip-rotation.md does not exist.");
            run.Output.ShouldContain("Did you mean the page 'hip-rotations'?");
            run.Output.ShouldEndWith("0 errors, 1 warnings.\n");
        }
        finally
        {
            Directory.Delete(home, true);
        }
    }

    [Fact]
    public void The_matrix_names_every_barbell_variant_and_every_criterion()
    {
        var run = CliRun.Of("rules", "matrix", "--rules");

        run.Code.ShouldBeOneOf(ExitCode.Done, ExitCode.Findings);
        foreach (var criterion in RepositoryFiles.Book.Criteria)
            run.Output.ShouldContain(criterion.Id);
        run.Output.ShouldContain("\nsumo");
        run.Output.ShouldNotContain("\nhip-thrust");
    }

    [Fact]
    public void The_folder_is_said_on_standard_error_when_asked()
        => CliRun.Of("rules", "matrix", "--verbose").Error.ShouldStartWith("Rules from ");

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
