using System.CommandLine;
using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Frame;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules show</c>: one rule read aloud.</summary>
public sealed class RulesShowVerb : Verb
{
    private static readonly string[] _formats = [ChooseRequest.Table, ChooseRequest.Json];

    private readonly Argument<string> _id;
    private readonly Option<string?> _format;

    /// <summary>Declares argument and option.</summary>
    public RulesShowVerb()
        : base("show", "Read one rule aloud, with its sources, findings and tries.")
    {
        _id = Name("ID", "Id of a rule; 'rules list' shows them.");
        _format = Value("--format", "FORMAT", $"{string.Join(", ", _formats)} (default: table).");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules show find-short-hamstrings",
        "hinge-selector rules show hips-run-out-of-bend --format json",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var format = line.GetValue(_format) ?? ChooseRequest.Table;
        if (!_formats.Contains(format))
            throw new UsageException($"'{format}' is not a format of 'rules show'.", Slip.DidYouMeanOneOf(format, _formats));
        var book = Home.Book(line, around);
        var rule = RuleOf(book, line.GetValue(_id)!);
        if (format == ChooseRequest.Json)
            JsonRule.Write(around.OutputStream, book, rule);
        else
            new LinePrinter(around, false).Print(RuleText.Of(book, rule));
        return ExitCode.Done;
    }

    private static Rule RuleOf(RuleBook book, string id)
    {
        if (book.Rules.FirstOrDefault(r => r.Id == id) is { } rule)
            return rule;
        var isOther = book.Findings.Any(f => f.Id == id) || book.Vocabulary.Find(id) is not null;
        throw isOther
            ? new UsageException($"'{id}' is a finding or a word, not a rule.", $"See the rules that read it: hinge-selector rules list --about {id}")
            : new UsageException($"There is no rule '{id}'.", Slip.DidYouMean(id, [.. book.Rules.Select(r => r.Id)]) ?? "'hinge-selector rules list' shows them all.");
    }
}
