using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads the header of a roster: words, sides and units such as <c>straight-leg-raise left (deg)</c>.</summary>
internal sealed partial class RosterHeader
{
    private static readonly Dictionary<string, RosterColumnKind> _fixed = new(StringComparer.Ordinal)
    {
        ["id"] = RosterColumnKind.Id,
        ["screen date"] = RosterColumnKind.ScreenDate,
        ["measured by"] = RosterColumnKind.MeasuredBy,
        ["day date"] = RosterColumnKind.DayDate,
        ["asked by"] = RosterColumnKind.AskedBy,
        ["clearance"] = RosterColumnKind.Clearance,
        ["held heights"] = RosterColumnKind.HeldHeights,
    };

    private readonly Vocabulary _vocabulary;
    private readonly DiagnosticBag _bag;
    private readonly IReadOnlyCollection<string> _known;

    private RosterHeader(Vocabulary vocabulary, DiagnosticBag bag)
    {
        _vocabulary = vocabulary;
        _bag = bag;
        _known = [.. Columns(vocabulary).Select(c => c.Name)];
    }

    /// <summary>Every column that a roster may have, in the order of a blank one; the unit stands apart.</summary>
    public static IEnumerable<(string Name, Unit? Unit)> Columns(Vocabulary vocabulary)
    {
        yield return ("id", null);
        foreach (var column in Facts(vocabulary, WordAbout.Athlete))
            yield return column;
        yield return ("clearance", null);
        yield return ("screen date", null);
        yield return ("measured by", null);
        foreach (var column in Facts(vocabulary, WordAbout.Screen))
            yield return column;
        yield return ("held-heights", null);
        yield return ("day date", null);
        yield return ("asked by", null);
        foreach (var group in vocabulary.Groups.Where(g => g.Blanket is not null))
            yield return (group.Id, null);
        foreach (var column in Facts(vocabulary, WordAbout.Day))
            yield return column;
    }

    private static IEnumerable<(string Name, Unit? Unit)> Facts(Vocabulary vocabulary, WordAbout about)
    {
        foreach (var word in vocabulary.Words.Where(w => w.About == about))
        {
            if (word.Sided)
            {
                yield return (word.Id + " left", word.Unit);
                yield return (word.Id + " right", word.Unit);
            }
            else
            {
                yield return (word.Id, word.Unit);
            }
        }
    }

    /// <summary>Reads the columns.</summary>
    /// <returns>The columns, or null when one of them is faulty: then no cell could be trusted to mean what its author meant.</returns>
    public static IReadOnlyList<RosterColumn>? Read(CsvRow row, Vocabulary vocabulary, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        if (row.Fault is not null)
            bag.Add(row.Fault);
        var header = new RosterHeader(vocabulary, bag);
        var columns = row.Fault is null ? row.Cells.Select(header.ReadColumn).ToList() : [];
        header.ReportRepeated(columns);
        if (bag.ErrorCount == before && !columns.Exists(c => c.Kind == RosterColumnKind.Id))
            bag.Add(Problems.MissingColumn(row.Span, "id"));
        return bag.ErrorCount == before ? columns : null;
    }

    private RosterColumn ReadColumn(Typed cell)
    {
        var unnamed = new RosterColumn(RosterColumnKind.Unnamed, cell);
        if (cell.IsBlank)
            return unnamed;
        var match = Form().Match(cell.Text);
        var name = Plain(match.Groups["name"].Value);
        var spaced = name.Replace('-', ' ');
        if (_fixed.TryGetValue(spaced, out var kind))
            return new RosterColumn(kind, cell);
        if (_vocabulary.Groups.FirstOrDefault(g => g.Id == name && g.Blanket is not null) is { } group)
            return new RosterColumn(RosterColumnKind.Blanket, cell) { Group = group };
        var side = name.EndsWith(" left", StringComparison.Ordinal) ? Sides.Left : name.EndsWith(" right", StringComparison.Ordinal) ? Sides.Right : -1;
        var id = side < 0 ? name : name[..name.LastIndexOf(' ')];
        if (_vocabulary.Find(id) is not { } word)
            _bag.Add(_vocabulary.GroupIds.Contains(id) ? Problems.GroupWithoutBlanket(cell.Span, id) : Problems.UnknownColumn(cell.Span, new Typed(name, true, cell.Span).Shown, _known));
        else if (!word.IsMeasured)
            _bag.Add(Problems.NotTyped(cell.Span, word.Id, AnswerText.WhyNotTyped(word)));
        else if (word.Sided && side < 0)
            _bag.Add(Problems.SidesExpected(cell.Span, word.Id) with { Hint = $"Give each side a column: '{word.Id} left' and '{word.Id} right'." });
        else if (!word.Sided && side >= 0)
            _bag.Add(Problems.NoSidesExpected(cell.Span, word.Id) with { Hint = $"Give it one column: '{word.Id}'." });
        else
            return new RosterColumn(RosterColumnKind.Fact, cell) { Word = word, Side = Math.Max(side, 0), Unit = ReadUnit(word, cell, match.Groups["unit"]) };
        return unnamed;
    }

    private Unit? ReadUnit(Word word, Typed cell, Group typed)
    {
        if (!typed.Success)
            return null;
        var text = typed.Value.Trim();
        var unit = Unit.Find(text);
        if (unit is not null && unit.Dimension == word.Dimension)
            return unit;
        var expected = word.Kind == WordKind.Number ? $"expected {QuantityText.Expected(word.Dimension)}" : "it takes no unit";
        _bag.Add(Problems.BadQuantity(cell.Part(typed.Index, typed.Length).Span, word.Id, $"'{text}' in the header is not its unit; {expected}"));
        return null;
    }

    private void ReportRepeated(IReadOnlyList<RosterColumn> columns)
    {
        var seen = new HashSet<(RosterColumnKind, string?, int)>();
        foreach (var column in columns.Where(c => c.Kind != RosterColumnKind.Unnamed))
        {
            if (!seen.Add((column.Kind, column.Word?.Id ?? column.Group?.Id, column.Side)))
                _bag.Add(Problems.RepeatedColumn(column.Header.Span, column.Header.Shown));
        }
    }

    /// <summary>Small letters and single spaces: capitals and wrapped headers do not matter.</summary>
    private static string Plain(string name) => string.Join(' ', name.ToLowerInvariant().Split([' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex(@"^\s*(?<name>[^()]*?)\s*(?:\((?<unit>[^()]*)\)\s*)?$|^(?<name>.*)$", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex Form();
}
