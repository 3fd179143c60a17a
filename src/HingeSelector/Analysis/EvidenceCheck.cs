using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Analysis;

/// <summary>HS3110, HS3111, HS3120 and HS3121: what the sources carry, which of them nobody cites, which no longer stand.</summary>
internal static partial class EvidenceCheck
{
    private const string Bibliography = "sources.yaml";
    private const string ModelFile = "model.yaml";
    private const string AcceptedFile = "accepted.yaml";

    /// <summary>Looks at every rule, every claim of a variant, every parameter of the model and every source.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        foreach (var rule in book.Book.Rules)
            CheckOne(book.Book, $"The rule '{rule.Id}'", rule.Span, rule.Grade, rule.Sources, bag);
        foreach (var variant in book.Book.Variants)
        {
            foreach (var claim in variant.Claims)
                CheckOne(book.Book, $"The claim '{claim.Kind}: {Start(claim.Text)}' of '{variant.Id}'", variant.Span, claim.Grade, claim.Sources, bag);
        }
        foreach (var note in book.Book.Model.Notes)
            CheckOne(book.Book, $"The parameter '{note.Id}' of the model", PlaceOf(book.Files, note.Id), note.Grade, note.Sources, bag);
        var cited = Cited(book.Files);
        foreach (var source in book.Book.Sources.Values.Where(s => !cited.Contains(s.Id)))
            bag.Add(Problems.NeverCited(source.Span, source.Id));
    }

    private static void CheckOne(RuleBook book, string where, SourceSpan at, Grade grade, IReadOnlyList<string> sources, DiagnosticBag bag)
    {
        var named = sources.Select(s => book.Sources[s]).ToList();
        foreach (var source in named.Where(s => s.Status is not null))
            bag.Add(source.Status == "retracted" ? Problems.Retracted(at, where, source.Id) : Problems.Superseded(at, where, source.Id));
        var standing = named.Where(s => s.Status != "retracted").ToList();
        if (standing.Count > 0 && book.Carriers.TryGetValue(grade, out var kinds) && !standing.Exists(s => kinds.Contains(s.Kind)))
            bag.Add(Problems.GradeNotCarried(at, where, Parse.Name(grade), [.. standing.Select(s => s.Kind).Distinct()], kinds));
    }

    private static SourceSpan PlaceOf(RuleFiles files, string parameter)
    {
        var source = files.Source(ModelFile);
        var line = 0;
        while (source is not null && line < source.LineCount - 1 && !source.Line(line).EndsWith($"parameter: {parameter}", StringComparison.Ordinal))
            line++;
        return new SourceSpan(source, line, Math.Max(0, (source?.Line(line).Length ?? 0) - parameter.Length), parameter.Length);
    }

    // Sources are named in lists, as the source of an error, and in sentences; remarks of the file's author do not count.
    private static HashSet<string> Cited(RuleFiles files)
        => [.. files.Texts.Where(t => t.Key is not (Bibliography or AcceptedFile)).SelectMany(t => t.Value.Split('\n')).Where(l => l.TrimStart() is not ['#', ..]).SelectMany(l => Names().Matches(l).Select(m => m.Value))];

    [GeneratedRegex("[a-z][a-z0-9-]*[a-z0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Names();

    private static string Start(string text) => text.Length <= 40 ? text : text[..40].TrimEnd() + "...";
}
