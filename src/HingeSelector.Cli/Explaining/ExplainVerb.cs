using System.CommandLine;
using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Explaining;

/// <summary>A verb that explains the answer for one athlete; it takes the inputs of <c>choose</c>.</summary>
public abstract class ExplainVerb : Verb
{
    private static readonly string[] _formats = [ChooseRequest.Table, ChooseRequest.Json];

    private readonly Option<string?> _screen;
    private readonly Option<string?> _roster;
    private readonly Option<string?> _athlete;
    private readonly Option<string?> _room;
    private readonly Option<string?> _standing;
    private readonly Option<string?> _on;
    private readonly Option<string?> _philosophy;
    private readonly Option<string?> _format;
    private Argument<string[]>? _words;

    /// <summary>Declares the options.</summary>
    protected ExplainVerb(string name, string purpose)
        : base(name, purpose)
    {
        _screen = Value("--screen", "FILE", "Screen of one athlete (YAML); - reads standard input.");
        _roster = Value("--roster", "FILE", "Athletes, one a row (CSV); - reads standard input. Needs --athlete.");
        _athlete = Value("--athlete", "ID", "One athlete of the roster.");
        _room = Value("--room", "FILE", "What the room has (YAML).");
        _standing = Value("--standing", "FILE", "What athletes pull in the present block (YAML).");
        _on = Value("--on", "DATE", "Day of the answer, such as 2026-11-24 (default: today).");
        _philosophy = Value("--philosophy", "NAME", "How much each criterion counts (default: balanced).");
        _format = Value("--format", "FORMAT", $"{string.Join(", ", _formats)} (default: table).");
    }

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        // What stands beside the options would take a mistyped option for one of its own.
        if (_words is not null && (line.GetValue(_words) ?? []).FirstOrDefault(w => w.StartsWith('-') && w.Length > 1) is { } option)
            throw UsageReport.UnknownOption(option, Command);
        var request = Request(line, around);
        var book = Home.Book(line, around);
        CheckArguments(line, book);
        var input = new ChooseInput(request, book, around);
        if (input.Diagnostics.Count > 0)
            around.Error.Write(DiagnosticPrinter.Print(input.Diagnostics));
        var question = input.About(input.Athletes[0]);
        var decider = new Deciders(book).For(question.Philosophy);
        var told = Explain(line, decider.Book, decider.Engine, question, decider.Selector.Choose(question));
        if (request.Format == ChooseRequest.Json)
            told.WriteJson(around.OutputStream);
        else
            new LinePrinter(around, false).Print(told.Lines());
        return ExitCode.Done;
    }

    /// <summary>Checks what stands beside the options, before any file of an athlete is read.</summary>
    /// <exception cref="UsageException">Something cannot be.</exception>
    protected virtual void CheckArguments(ParseResult line, RuleBook book)
    {
    }

    /// <summary>Explains.</summary>
    protected abstract Told Explain(ParseResult line, RuleBook book, IRuleEngine engine, Question question, Recommendation answer);

    /// <summary>Adds what stands beside the options.</summary>
    protected Argument<string[]> Words(string name, string help)
    {
        var argument = new Argument<string[]>(name) { Description = help, Arity = ArgumentArity.ZeroOrMore };
        Command.Arguments.Add(argument);
        _words = argument;
        return argument;
    }

    /// <summary>A variant of the catalogue by its id.</summary>
    /// <exception cref="UsageException">There is none.</exception>
    protected static Variant VariantOf(RuleBook book, string id)
        => book.Variants.FirstOrDefault(v => v.Id == id) ?? throw new UsageException($"There is no variant '{id}'.", Slip.DidYouMeanOneOf(id, [.. book.Variants.Select(v => v.Id)]));

    /// <summary>An explanation that can be told in both formats.</summary>
    /// <param name="Answer">The answer that is explained.</param>
    /// <param name="Book">The rules.</param>
    /// <param name="Lines">As lines.</param>
    /// <param name="Json">As a part of a document.</param>
    protected sealed record Told(Recommendation Answer, RuleBook Book, Func<IEnumerable<Line>> Lines, Action<JsonExplanation> Json)
    {
        /// <summary>Writes the document.</summary>
        public void WriteJson(Stream output)
        {
            using var document = new JsonExplanation(output, Book, Answer);
            Json(document);
            document.Finish();
        }
    }

    private ChooseRequest Request(ParseResult line, Surroundings around)
    {
        var (screen, roster, athlete) = (line.GetValue(_screen), line.GetValue(_roster), line.GetValue(_athlete));
        if (screen is null && roster is null)
            throw new UsageException($"'{Command.Name}' needs one athlete.", "Give '--screen FILE', or '--roster FILE' with '--athlete ID'.");
        if (screen is null && athlete is null)
            throw new UsageException($"'{Command.Name}' speaks about one athlete.", "Add '--athlete ID'.");
        var format = line.GetValue(_format);
        if (format is not null && !_formats.Contains(format))
            throw new UsageException($"'{format}' is not a format of '{Command.Name}'.", Slip.DidYouMeanOneOf(format, _formats));
        return ChooseRequest.Read(new ChooseOptions(screen, roster, athlete, line.GetValue(_room), line.GetValue(_standing), line.GetValue(_on), line.GetValue(_philosophy), format, null, null, false), around.Clock);
    }
}
