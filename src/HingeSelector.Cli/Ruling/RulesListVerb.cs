using System.CommandLine;
using HingeSelector.Cli.Frame;
using HingeSelector.Editing;
using HingeSelector.Knowledge;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary><c>rules list</c>: the rules of a topic, about a word, for a variant or of a grade, one row each.</summary>
public sealed class RulesListVerb : Verb
{
    private readonly Option<string?> _topic;
    private readonly Option<string?> _about;
    private readonly Option<string?> _variant;
    private readonly Option<string?> _grade;

    /// <summary>Declares the options.</summary>
    public RulesListVerb()
        : base("list", "List rules: id, place, first conclusion.")
    {
        _topic = Value("--topic", "DIR", "Only rules of this folder of rules/, such as fit.");
        _about = Value("--about", "WORD", "Only rules that read this word or finding, or give this finding; rules that rest on it through a finding are marked.");
        _variant = Value("--variant", "ID", "Only rules about candidates that can hold for this variant.");
        _grade = Value("--grade", "GRADE", $"Only rules of this grade: {string.Join(", ", Grades.Keys)}.");
    }

    /// <inheritdoc/>
    public override string Group => "rules";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Examples { get; } =
    [
        "hinge-selector rules list --about straight-leg-raise",
        "hinge-selector rules list --topic fit --variant sumo",
        "hinge-selector rules list --grade consensus",
    ];

    private static IReadOnlyDictionary<string, Grade> Grades { get; } = Enum.GetValues<Grade>().ToDictionary(GradeText.Word, g => g, StringComparer.Ordinal);

    /// <inheritdoc/>
    public override int Run(ParseResult line, Surroundings around)
    {
        var grade = line.GetValue(_grade) is { } word ? Known(word, "grade", [.. Grades.Keys]) : null;
        var book = Home.Book(line, around);
        var rules = RuleLister.List(book, Filter(line, book, grade is null ? null : Grades[grade]));
        foreach (var rule in rules)
            around.Output.WriteLine(RuleListText.Row(book, rule));
        around.Output.WriteLine($"{rules.Count} of {book.Rules.Count} rules.");
        return ExitCode.Done;
    }

    private RuleFilter Filter(ParseResult line, RuleBook book, Grade? grade)
    {
        var topic = line.GetValue(_topic)?.TrimEnd('/');
        if (topic is not null)
            Known(topic, "topic", [.. book.Rules.Select(r => r.Topic).Distinct()]);
        var about = line.GetValue(_about);
        if (about is not null && !RuleLister.Names(book).Contains(about))
            throw new UsageException($"There is no word or finding '{about}'.", Slip.DidYouMean(about, RuleLister.Names(book)) ?? "See rules/vocabulary.yaml for the words.");
        int? variant = line.GetValue(_variant) is { } id
            ? book.Variants.First(v => v.Id == Known(id, "variant", [.. book.Variants.Select(v => v.Id)])).Index
            : null;
        return new RuleFilter(topic, about, variant, grade);
    }

    private static string Known(string typed, string what, IReadOnlyCollection<string> names)
        => names.Contains(typed) ? typed : throw new UsageException($"There is no {what} '{typed}'.", Slip.DidYouMeanOneOf(typed, names));
}
