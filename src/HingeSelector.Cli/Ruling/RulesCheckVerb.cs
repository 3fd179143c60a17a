using System.CommandLine;
using HingeSelector.Analysis;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules check</c>: every fault of the rules folder at once, examples included.</summary>
public sealed class RulesCheckVerb : Verb
{
    /// <summary>Declares the verb.</summary>
    public RulesCheckVerb()
        : base("check", "Check every file of the rules folder and run the examples inside the rules.")
    {
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules check",
        "hinge-selector rules check --home .",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var bag = new DiagnosticBag();
        var files = Home.Files(line, around);
        var book = RuleBookReader.Read(files, bag);
        // Examples of a rule book with faults would only repeat them.
        var examples = book is not null && !bag.HasErrors ? new ExampleRunner(book).RunAll(bag).Count : 0;
        if (book is not null && !bag.HasErrors)
            RuleCheck.Run(book, files, bag);
        var found = bag.Sorted;
        if (found.Count > 0)
            around.Output.WriteLine(DiagnosticPrinter.Print(found));
        around.Output.WriteLine($"{book?.Rules.Count ?? 0} rules, {book?.Variants.Count ?? 0} variants, {examples} examples run: {bag.ErrorCount} errors, {found.Count - found.Count(d => d.Severity == Severity.Error)} warnings.");
        return bag.HasErrors ? ExitCode.BadRules : found.Count > 0 ? ExitCode.Findings : ExitCode.Done;
    }
}
