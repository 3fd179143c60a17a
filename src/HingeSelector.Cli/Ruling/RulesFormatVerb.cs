using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules format</c>: one layout for all files of rules/.</summary>
public sealed class RulesFormatVerb : Verb
{
    private readonly Option<bool> _check;

    /// <summary>Declares the option.</summary>
    public RulesFormatVerb()
        : base("format", "Bring the files of rules/ into one layout; comments stay.")
        => _check = Flag("--check", "Write nothing; name the files that would change (exit code 1 when there are any).");

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules format --check",
        "hinge-selector rules format",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var files = Home.Files(line, around);
        var bag = new DiagnosticBag();
        var changed = Formatted(files, bag);
        var onlyCheck = line.GetValue(_check);
        if (!onlyCheck)
            Write(Home.RulesFolder(line, around), files, changed);
        if (bag.HasErrors)
            around.Output.WriteLine(DiagnosticPrinter.Print(bag.Sorted));
        foreach (var path in changed.Keys)
            around.Output.WriteLine($"{files.Name}/{path}");
        around.Output.WriteLine($"{changed.Count} of {files.Texts.Count} files {(onlyCheck ? "would change" : "changed")}.");
        return bag.HasErrors ? ExitCode.BadRules : onlyCheck && changed.Count > 0 ? ExitCode.Findings : ExitCode.Done;
    }

    private static SortedDictionary<string, string> Formatted(RuleFiles files, DiagnosticBag bag)
    {
        var changed = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, source) in files.Sources())
        {
            var text = RuleFormat.Of(path, source, bag);
            if (text != source.Text)
                changed[path] = text;
        }
        return changed;
    }

    private static void Write(string folder, RuleFiles files, SortedDictionary<string, string> changed)
    {
        try
        {
            WholeFiles.Replace(folder, files.Texts, changed);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UsageException("A file of the rules cannot be written; all are as before.", "Check the permissions of the rules folder.");
        }
    }
}
