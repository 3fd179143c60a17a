using System.Text;
using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>Separated text by RFC 4180 to rows of cells with exact places.</summary>
/// <remarks>
/// An own reader, because fast CSV libraries do not serve here. Sep gives the lines of a row but not the place of a
/// cell; a quote that is never closed swallows the rest of the file without a word; and a quote in the middle of an
/// unquoted cell opens a quotation, so that a stature typed as 5'11" swallows the rows of other athletes.
/// Here a quote counts only at the start of a cell.
/// </remarks>
internal sealed class CsvReader
{
    private static readonly char[] _separators = [',', ';', '\t'];

    private readonly SourceText _source;
    private readonly string _text;
    private readonly char _separator;
    private int _at;
    private int _line;
    private int _lineStart;

    private CsvReader(SourceText source, int start, int line, char separator)
    {
        _source = source;
        _text = source.Text;
        _separator = separator;
        _at = start;
        _line = line;
        _lineStart = start;
    }

    /// <summary>Reads all rows; the separator is the one that the first line uses most.</summary>
    public static IReadOnlyList<CsvRow> Read(SourceText source)
    {
        source = Tidy(source);
        var text = source.Text;
        var end = text.IndexOf('\n');
        var first = end < 0 ? text : text[..end];

        // Some spreadsheets open with a line that names the separator.
        if (first.Length == 5 && first.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && end > 0)
            return new CsvReader(source, end + 1, 1, first[4]).ReadAll();
        return new CsvReader(source, 0, 0, Guess(first)).ReadAll();
    }

    /// <summary>Without a byte order mark and with one kind of line end; lines and columns stay what they were.</summary>
    private static SourceText Tidy(SourceText source)
    {
        source = ByteOrderMark.Without(source);
        return source.Text.Contains('\r')
            ? new SourceText(source.Path, source.Text.Replace("\r\n", "\n").Replace('\r', '\n'))
            : source;
    }

    private static char Guess(string header)
    {
        var counts = new int[_separators.Length];
        var quoted = false;
        foreach (var c in header)
        {
            if (c == '"')
                quoted = !quoted;
            var place = Array.IndexOf(_separators, c);
            if (!quoted && place >= 0)
                counts[place]++;
        }
        return _separators[Array.IndexOf(counts, counts.Max())];
    }

    private List<CsvRow> ReadAll()
    {
        var rows = new List<CsvRow>();
        while (_at < _text.Length)
            rows.Add(ReadRow(rows.Count + 1));
        return rows;
    }

    private CsvRow ReadRow(int number)
    {
        var (line, column) = (_line, _at - _lineStart);
        var cells = new List<Typed>();
        Diagnostic? fault = null;
        while (true)
        {
            cells.Add(ReadCell(ref fault));
            if (_at >= _text.Length)
                break;
            var ended = _text[_at] == '\n';
            _at++;
            if (ended)
            {
                _line++;
                _lineStart = _at;
                break;
            }
        }
        return new CsvRow(number, cells, new SourceSpan(_source, line, column, _source.Line(line).Length - column), fault);
    }

    private Typed ReadCell(ref Diagnostic? fault)
    {
        while (_at < _text.Length && _text[_at] == ' ')
            _at++;
        return _at < _text.Length && _text[_at] == '"' ? ReadQuoted(ref fault) : ReadPlain();
    }

    private Typed ReadPlain()
    {
        var start = _at;
        while (_at < _text.Length && _text[_at] != _separator && _text[_at] != '\n')
            _at++;
        var text = _text[start.._at].TrimEnd();
        return Cell(text, new SourceSpan(_source, _line, start - _lineStart, text.Length));
    }

    private Typed ReadQuoted(ref Diagnostic? fault)
    {
        var (line, column, start) = (_line, _at - _lineStart, _at);
        var text = new StringBuilder();
        for (_at++; _at < _text.Length; _at++)
        {
            var c = _text[_at];
            if (c == '"')
            {
                if (_at + 1 >= _text.Length || _text[_at + 1] != '"')
                    break;
                _at++;
            }
            else if (c == '\n')
            {
                _line++;
                _lineStart = _at + 1;
            }
            text.Append(c);
        }
        if (_at >= _text.Length)
            fault ??= Problems.OpenQuote(new SourceSpan(_source, line, column, 1));
        else
            _at++;
        var span = new SourceSpan(_source, line, column, line == _line ? _at - start : _source.Line(line).Length - column);
        SkipToSeparator(ref fault);
        return Cell(text.ToString(), span);
    }

    private void SkipToSeparator(ref Diagnostic? fault)
    {
        var start = _at;
        while (_at < _text.Length && _text[_at] != _separator && _text[_at] != '\n')
            _at++;
        var rest = _text[start.._at];
        if (!string.IsNullOrWhiteSpace(rest))
            fault ??= Problems.TextAfterQuote(new SourceSpan(_source, _line, start - _lineStart, rest.TrimEnd().Length));
    }

    /// <summary>Takes off the apostrophe that guards a spreadsheet against reading a text as a formula.</summary>
    private static Typed Cell(string text, SourceSpan span)
    {
        if (text.Length > 1 && text[0] == '\'' && text[1] is '=' or '+' or '-' or '@')
            text = text[1..];
        return new Typed(text, true, span);
    }
}
