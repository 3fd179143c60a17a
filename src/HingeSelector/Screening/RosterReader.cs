using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Reads a roster: one athlete a row, the words of the vocabulary as columns.</summary>
/// <remarks>A faulty header refuses the file; a faulty row is reported with all its faults and the other rows still load.</remarks>
public sealed class RosterReader
{
    private readonly IReadOnlyList<RosterColumn> _columns;
    private readonly Vocabulary _vocabulary;
    private readonly DateOnly _on;
    private readonly List<ReadRow> _rows = [];

    private sealed record ReadRow(CsvRow Row, string? Id, AthleteRecord? Record, List<Diagnostic> Faults);

    private RosterReader(IReadOnlyList<RosterColumn> columns, Vocabulary vocabulary, DateOnly on)
    {
        _columns = columns;
        _vocabulary = vocabulary;
        _on = on;
    }

    /// <summary>Reads one file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="on">Day of the answer.</param>
    /// <param name="bag">Collects every fault and warning, those of bad rows included.</param>
    public static RosterResult Read(SourceText source, Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
    {
        var rows = CsvReader.Read(source).Where(r => !r.IsBlank).ToList();
        if (rows.Count == 0)
        {
            bag.Add(Problems.EmptyRoster(new SourceSpan(source, 0, 0, 1)));
            return new RosterResult([], [], false);
        }
        var columns = RosterHeader.Read(rows[0], vocabulary, bag);
        if (columns is null)
            return new RosterResult([], [], false);
        var reader = new RosterReader(columns, vocabulary, on);
        foreach (var row in rows.Skip(1))
            reader.Read(row, bag);
        return reader.Result(bag);
    }

    private void Read(CsvRow row, DiagnosticBag all)
    {
        var bag = new DiagnosticBag();
        string? id = null;
        AthleteRecord? record = null;
        if (row.Fault is not null)
            bag.Add(row.Fault);
        else if (row.Cells.Count != _columns.Count)
            bag.Add(WrongCellCount(row));
        else
            record = ReadCells(row, bag, out id);
        foreach (var fault in bag.Sorted)
            all.Add(fault);
        _rows.Add(new ReadRow(row, id, bag.HasErrors ? null : record, [.. bag.Sorted]));
    }

    private Diagnostic WrongCellCount(CsvRow row)
    {
        var (found, expected) = (row.Cells.Count, _columns.Count);
        var at = found > expected ? row.Cells[expected].Span : row.Cells[^1].Span;
        return Problems.WrongCellCount(at, row.Number, found, expected);
    }

    private AthleteRecord ReadCells(CsvRow row, DiagnosticBag bag, out string? id)
    {
        id = null;
        var draft = new RecordDraft(_vocabulary, _on, bag)
        {
            WhereScreenDate = "Fill the column 'screen date'.",
            WhereDayDate = "Fill the column 'day date'.",
        };
        for (var i = 0; i < _columns.Count; i++)
        {
            var (column, cell) = (_columns[i], row.Cells[i]);
            if (column.Kind == RosterColumnKind.Id)
            {
                id = cell.IsBlank ? null : cell.Text.Trim();
                if (id is null)
                    bag.Add(Problems.MissingAthleteId(cell.Span));
            }
            else if (!cell.IsBlank)
            {
                ReadCell(column, cell, draft, bag);
            }
        }
        return draft.Finish(id ?? "");
    }

    private void ReadCell(RosterColumn column, Typed cell, RecordDraft draft, DiagnosticBag bag)
    {
        switch (column.Kind)
        {
            case RosterColumnKind.Fact:
                if (AnswerText.Read(column.Word!, cell, bag, column.Unit) is { } value)
                    draft.Add(new GivenAnswer(column.Word!, column.Side, value, cell, column.Unit ?? column.Word!.Unit, cell.Span));
                break;
            case RosterColumnKind.Blanket:
                draft.Add(BlanketText.Read(column.Group!, cell, _on, bag));
                break;
            case RosterColumnKind.Clearance:
                var reader = new ClearanceReader(_vocabulary, bag);
                foreach (var letter in cell.Text.Trim() == "none" ? [] : cell.Split('|'))
                    draft.Add(reader.Read(letter));
                break;
            case RosterColumnKind.HeldHeights:
                var held = new HeldReader(_vocabulary, _on, bag);
                foreach (var seen in cell.Split('|'))
                    draft.Add(held.Read(seen));
                break;
            case RosterColumnKind.ScreenDate:
                draft.Screen.ReadDate(cell, "The screen", _on, bag);
                break;
            case RosterColumnKind.DayDate:
                draft.Day.ReadDate(cell, "The day", _on, bag);
                break;
            case RosterColumnKind.MeasuredBy:
                draft.Athlete.By = draft.Screen.By = cell.Text.Trim();
                break;
            case RosterColumnKind.AskedBy:
                draft.Day.By = cell.Text.Trim();
                break;
            default:
                bag.Add(Problems.ValueWithoutColumn(cell.Span, cell.Shown));
                break;
        }
    }

    /// <summary>Two rows for one athlete: nobody can tell which is right, so neither is used.</summary>
    private RosterResult Result(DiagnosticBag bag)
    {
        var repeated = new HashSet<string>(StringComparer.Ordinal);
        foreach (var group in _rows.Where(r => r.Id is not null).GroupBy(r => r.Id!, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            repeated.Add(group.Key);
            foreach (var (row, id, _, faults) in group.Skip(1))
            {
                var fault = Problems.RepeatedAthlete(row.Cells[IdColumn].Span, id!);
                bag.Add(fault);
                faults.Add(fault);
                group.First().Faults.Add(fault);
            }
        }
        bool IsGood(ReadRow row) => row.Record is not null && !repeated.Contains(row.Record.Id);
        return new RosterResult(
            [.. _rows.Where(IsGood).Select(r => r.Record!)],
            [.. _rows.Where(r => !IsGood(r)).Select(r => new BadRow(r.Row.Number, r.Id, r.Row.Span, r.Faults))],
            true);
    }

    private int IdColumn => _columns.Select((c, i) => (c, i)).First(p => p.c.Kind == RosterColumnKind.Id).i;
}
