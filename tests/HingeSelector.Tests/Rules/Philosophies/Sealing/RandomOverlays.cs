using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Reading;
using HingeSelector.Rules;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Tests.Rules.Philosophies.Sealing;

/// <summary>Random philosophies, read by the reader that reads those of staff, so that exactly what it lets pass is tried.</summary>
internal sealed class RandomOverlays
{
    private const string Head = "philosophy: drawn\nlabel: Drawn\nsummary: Drawn at random.\n";

    private readonly RuleBook _book;
    private readonly List<(string Key, string Text)> _accepted = [];

    public RandomOverlays(RuleBook book, int entries, int seed)
    {
        _book = book;
        Seals = SealedRules.Of(book.Vocabulary, book.Rules);
        var random = new Random(seed);
        var source = new RandomEntries(book);
        for (var i = 0; i < entries; i++)
            Try(source.Next(random, i));
    }

    /// <summary>The seal over the base.</summary>
    public SealedRules Seals { get; }

    /// <summary>How many entries were refused, by diagnostic.</summary>
    public Dictionary<string, int> Refused { get; } = new(StringComparer.Ordinal);

    /// <summary>How many entries can be drawn from.</summary>
    public int Accepted => _accepted.Count;

    /// <summary>A philosophy of some accepted entries; null where they do not go together.</summary>
    public Overlay? Next(Random random)
    {
        var chosen = Enumerable.Range(0, random.Next(1, 13)).Select(_ => _accepted[random.Next(_accepted.Count)]).Distinct().ToList();
        return Read(Text(chosen), out _);
    }

    private void Try((string Key, string Text) entry)
    {
        if (Read(Text([entry]), out var faults) is not null)
            _accepted.Add(entry);
        foreach (var id in faults.Select(f => f.Id).Distinct())
            Refused[id] = Refused.GetValueOrDefault(id) + 1;
    }

    private static string Text(IReadOnlyList<(string Key, string Text)> entries)
        => Head + string.Concat(entries.GroupBy(e => e.Key, StringComparer.Ordinal).Select(g => $"{g.Key}:\n{string.Concat(g.Select(e => e.Text))}"));

    private Overlay? Read(string text, out IReadOnlyList<Diagnostic> faults)
    {
        var bag = new DiagnosticBag();
        var root = YamlReader.Read(new SourceText("drawn.yaml", text), bag);
        var philosophy = PhilosophyReader.Read(root, _book.Criteria, bag);
        // A reader of its own bag: what one philosophy gets wrong must not stick to the next.
        var reader = new RuleReader(_book.Vocabulary, _book.Variants, _book.Sources, _book.Criteria, _book.Findings.ToDictionary(f => f.Id, StringComparer.Ordinal), bag);
        var overlay = philosophy is null || bag.HasErrors ? null : new OverlayReader(_book, reader, Seals, bag).Read(root!, philosophy);
        faults = bag.Sorted;
        return overlay;
    }
}
