using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Screening;

namespace HingeSelector.Cli.Screening;

/// <summary><c>screen template</c>: an empty screen or roster header, made from the vocabulary.</summary>
public sealed class ScreenTemplateVerb : Verb
{
    private const string Yaml = "yaml";
    private const string Csv = "csv";

    private static readonly string[] _formats = [Yaml, Csv];

    private readonly Option<string?> _format;

    /// <summary>Declares the options.</summary>
    public ScreenTemplateVerb()
        : base("template", "Print an empty screen (YAML) or the header of a roster (CSV), made from the vocabulary.")
        => _format = Value("--format", "FORMAT", $"{string.Join(", ", _formats)} (default: {Yaml}).");

    /// <inheritdoc/>
    public override string Group => "screen";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector screen template",
        "hinge-selector screen template --format csv",
    ];

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var format = line.GetValue(_format) ?? Yaml;
        if (!_formats.Contains(format))
            throw new UsageException($"'{format}' is not a format.", Slip.DidYouMeanOneOf(format, _formats));
        var vocabulary = Home.Book(line, around).Vocabulary;
        around.Output.Write(format == Csv ? ScreenTemplate.AsCsvHeader(vocabulary) : ScreenTemplate.AsYaml(vocabulary));
        return ExitCode.Done;
    }
}
