using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Examples;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Editing;

/// <summary>An id under another name everywhere in the rules: only the places where it stands change, so comments and layout stay.</summary>
/// <param name="Kind">What the id names.</param>
/// <param name="Texts">New texts of the files that change, by path.</param>
/// <param name="Places">How many places changed.</param>
/// <param name="LeftInProse">Places, after the change, where the old id still stands in a comment or a sentence.</param>
public sealed record Renaming(IdKind Kind, IReadOnlyDictionary<string, string> Texts, int Places, IReadOnlyList<SourceSpan> LeftInProse)
{
    /// <summary>What an id names in a book; null when it names nothing that can be renamed.</summary>
    public static IdKind? KindOf(RuleBook book, string id)
    {
        if (book.Rules.Any(r => r.Id == id))
            return IdKind.Rule;
        if (book.Findings.Any(f => f.Id == id))
            return IdKind.Finding;
        if (book.Sources.ContainsKey(id))
            return IdKind.Source;
        return book.Vocabulary.Find(id) is not null ? IdKind.Word : null;
    }

    /// <summary>Works the new texts out and checks them; writes nothing.</summary>
    /// <param name="files">The files.</param>
    /// <param name="book">The same files, compiled.</param>
    /// <param name="from">An id that <see cref="KindOf"/> knows.</param>
    /// <param name="to">An id that names nothing yet.</param>
    /// <returns>The renaming; null when the new texts would not say the same, so that it cannot be done by text alone.</returns>
    public static Renaming? Of(RuleFiles files, RuleBook book, string from, string to)
    {
        var kind = KindOf(book, from)!.Value;
        var (texts, places) = Replace(files, kind, from, to);
        var after = texts.Aggregate(files, (all, one) => all.With(one.Key, one.Value));
        var bag = new DiagnosticBag();
        var renamed = RuleBookReader.Read(after, bag);
        if (renamed is null || bag.HasErrors || places == 0 || !SaysTheSame(book, renamed, kind, from, to) || FaultyExamples(renamed) > FaultyExamples(book))
            return null;
        return new Renaming(kind, texts, places, Tokens(after, from));
    }

    private static (Dictionary<string, string> Texts, int Places) Replace(RuleFiles files, IdKind kind, string from, string to)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var places = 0;
        foreach (var (path, source) in files.Sources())
        {
            if (!source.Text.Contains(from, StringComparison.Ordinal) || YamlReader.Read(source, new DiagnosticBag()) is not { } root)
                continue;
            var found = Mentions.In(root, kind, from);
            if (found.Count == 0)
                continue;
            texts[path] = Replace(source.Text, found, Mentions.Token(from), to);
            places += found.Count;
        }
        return (texts, places);
    }

    private static string Replace(string text, IReadOnlyList<SourceSpan> places, Regex token, string to)
    {
        var lines = text.Split('\n');
        // From the end of a line to its start, so that earlier places do not move.
        foreach (var place in places.OrderByDescending(p => p.Column))
        {
            var line = lines[place.Line];
            var end = Math.Min(line.Length, place.Column + place.Length);
            lines[place.Line] = line[..place.Column] + token.Replace(line[place.Column..end], to) + line[end..];
        }
        return string.Join('\n', lines);
    }

    private static bool SaysTheSame(RuleBook before, RuleBook after, IdKind kind, string from, string to)
    {
        var token = Mentions.Token(from);
        // Sentences may hold the same word, so both prints are told with the new name.
        string New(string text) => token.Replace(text, to);
        var (was, isNow) = (BookPrint.Of(before), BookPrint.Of(after));
        return was.Count == isNow.Count && KindOf(after, to) == kind && KindOf(after, from) is null
            && was.All(rule => isNow.TryGetValue(kind == IdKind.Rule && rule.Key == from ? to : rule.Key, out var print) && New(print) == New(rule.Value));
    }

    // A name that was left behind in an example shows when the examples are run.
    private static int FaultyExamples(RuleBook book)
    {
        var bag = new DiagnosticBag();
        new ExampleRunner(book).RunAll(bag);
        return bag.ErrorCount;
    }

    private static IReadOnlyList<SourceSpan> Tokens(RuleFiles files, string id)
    {
        var token = Mentions.Token(id);
        return [.. files.Sources().OrderBy(s => s.Key, StringComparer.Ordinal).SelectMany(s => InLines(s.Value, token))];
    }

    private static IEnumerable<SourceSpan> InLines(SourceText source, Regex token)
    {
        var lines = source.Text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (token.Match(lines[i]) is { Success: true } match)
                yield return new SourceSpan(source, i, match.Index, match.Length);
        }
    }
}
