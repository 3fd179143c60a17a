using System.CommandLine;
using HingeSelector.Analysis;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Rendering;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules check</c>: all that can be known of the rules folder without an athlete, examples included.</summary>
public sealed class RulesCheckVerb : Verb
{
    private readonly Option<string?> _format;
    private readonly Option<bool> _strict;
    private readonly Option<bool> _fix;

    /// <summary>Declares the options.</summary>
    public RulesCheckVerb()
        : base("check", "Check every file of the rules folder, run the examples inside the rules, and say what can never fire, adds nothing, contradicts or is missing.")
    {
        _format = Value("--format", "FORMAT", "text (default) or json.");
        _strict = Flag("--strict", "Take every warning for an error.");
        _fix = Flag("--fix", "Make the safe edits in the files first, and say which. Remarks and order stay.");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules check",
        "hinge-selector rules check --strict",
        "hinge-selector rules check --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var format = line.GetValue(_format) ?? "text";
        if (format is not ("text" or "json"))
            throw new UsageException($"'{format}' is not a format.", Slip.DidYouMeanOneOf(format, ["text", "json"]));
        var files = Home.Files(line, around);
        var pages = Home.ProtocolPages(line, around);
        var result = FolderCheck.Run(files, pages);
        IReadOnlyList<SuggestedEdit> done = [];
        if (line.GetValue(_fix))
            (result, done) = RulesFix.Make(files, pages, result, Home.Folder(line.GetValue(GlobalOptions.Home), around));
        if (format == "json")
            around.Output.WriteLine(CheckReport.Of(result.Book?.Rules.Count ?? 0, result.Book?.Variants.Count ?? 0, result.Examples, done, result.Found).ToJson());
        else
            Print(result, done, around);
        var errors = result.Found.Any(d => d.Severity == Severity.Error);
        return errors || (result.Found.Count > 0 && line.GetValue(_strict)) ? ExitCode.BadRules : result.Found.Count > 0 ? ExitCode.Findings : ExitCode.Done;
    }

    private static void Print(FolderCheck result, IReadOnlyList<SuggestedEdit> done, Surroundings around)
    {
        foreach (var edit in done)
            around.Output.WriteLine($"Fixed {edit.Source.Path}:{edit.Line + 1}: {edit.Does}.");
        if (result.Found.Count > 0)
        {
            around.Output.WriteLine(DiagnosticPrinter.Print(result.Found));
            foreach (var page in result.Found.Select(d => d.Page).Distinct().Order(StringComparer.Ordinal))
                around.Output.WriteLine($"See {page}");
            around.Output.WriteLine();
        }
        var errors = result.Found.Count(d => d.Severity == Severity.Error);
        around.Output.WriteLine($"{result.Book?.Rules.Count ?? 0} rules, {result.Book?.Variants.Count ?? 0} variants, {result.Examples} examples run: {errors} errors, {result.Found.Count - errors} warnings.");
    }
}
