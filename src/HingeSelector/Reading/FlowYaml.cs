using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>Reads values that stand on one line: plain or quoted text, lists and maps in brackets.</summary>
/// <remarks>Part of <see cref="PlainYaml"/>: null says that the line goes beyond the plain part, whether or not it is right.</remarks>
internal sealed class FlowYaml(SourceText source)
{
    private const int DeepestNesting = 8;

    private readonly string _text = source.Text;
    private int _at;
    private int _end;
    private int _line;
    private int _start;

    /// <summary>Whether a plain text starts here: with a letter or a digit, or with a minus before a digit.</summary>
    public static bool StartsPlain(string text, int at, int end)
        => char.IsLetterOrDigit(text[at]) || text[at] is '(' or '/' or '<' or '+' || (text[at] == '-' && at + 1 < end && char.IsAsciiDigit(text[at + 1]));

    /// <summary>Reads the key between two places.</summary>
    /// <param name="at">Where it starts.</param>
    /// <param name="colon">Where its colon stands.</param>
    /// <param name="line">Number of the line.</param>
    /// <param name="start">Where the line starts.</param>
    public YamlScalar? ReadKey(int at, int colon, int line, int start)
    {
        (_at, _end, _line, _start) = (at, colon, line, start);
        var key = ReadScalar(inBrackets: false);
        return _at == _end && key is not null && IsPlainKey(key) ? key : null;
    }

    /// <summary>Reads the value that fills the rest of a line, a comment behind it left out.</summary>
    public YamlNode? ReadLine(int at, int end, int line, int start)
    {
        (_at, _end, _line, _start) = (at, end, line, start);
        var value = ReadNode(0, inBrackets: false);
        if (value is null || _at == _end)
            return value;
        // Nothing but a comment, apart by a blank, may follow.
        var blanks = _at;
        SkipBlanks();
        return _at == _end || (_text[_at] == '#' && _at > blanks) ? value : null;
    }

    // The library has notions of its own about other signs in a key that is not quoted.
    private static bool IsPlainKey(YamlScalar key)
    {
        foreach (var c in key.Value)
        {
            if (!key.Quoted && !char.IsLetterOrDigit(c) && c is not (' ' or ',' or '-' or '_'))
                return false;
        }
        return true;
    }

    private YamlNode? ReadNode(int depth, bool inBrackets)
    {
        if (depth > DeepestNesting || _at >= _end)
            return null;
        return _text[_at] switch
        {
            '[' => ReadList(depth),
            '{' => ReadMap(depth),
            _ => ReadScalar(inBrackets),
        };
    }

    private YamlList? ReadList(int depth)
    {
        var span = Span(_at, 1);
        var items = new List<YamlNode>();
        _at++;
        SkipBlanks();
        if (Take(']'))
            return new YamlList(items, span);
        while (ReadNode(depth + 1, inBrackets: true) is { } item)
        {
            if (ReadPair(item, depth) is not { } whole)
                return null;
            items.Add(whole);
            SkipBlanks();
            if (Take(']'))
                return new YamlList(items, span);
            if (!Take(','))
                return null;
            SkipBlanks();
        }
        return null;
    }

    // In a list "age: 17 years" without braces is a map of one entry.
    private YamlNode? ReadPair(YamlNode item, int depth)
    {
        if (_at >= _end || _text[_at] != ':')
            return item;
        if (item is not YamlScalar { Value.Length: <= PlainYaml.LongestKey } key || !IsPlainKey(key) || !Take(':') || !Take(' '))
            return null;
        SkipBlanks();
        return ReadNode(depth + 1, inBrackets: true) is { } value ? new YamlMap([new(key, value)], key.Span with { Length = 1 }) : null;
    }

    private YamlMap? ReadMap(int depth)
    {
        var span = Span(_at, 1);
        var entries = new List<KeyValuePair<YamlScalar, YamlNode>>();
        _at++;
        SkipBlanks();
        if (Take('}'))
            return new YamlMap(entries, span);
        while (ReadScalar(inBrackets: true) is { Value.Length: <= PlainYaml.LongestKey } key && IsPlainKey(key) && !YamlMap.Holds(entries, key.Value) && Take(':') && Take(' '))
        {
            SkipBlanks();
            if (ReadNode(depth + 1, inBrackets: true) is not { } value)
                return null;
            entries.Add(new(key, value));
            SkipBlanks();
            if (Take('}'))
                return new YamlMap(entries, span);
            if (!Take(','))
                return null;
            SkipBlanks();
        }
        return null;
    }

    private YamlScalar? ReadScalar(bool inBrackets)
    {
        if (_at >= _end)
            return null;
        if (_text[_at] is '\'' or '"')
            return ReadQuoted();
        return StartsPlain(_text, _at, _end) ? ReadPlain(inBrackets) : null;
    }

    private YamlScalar? ReadQuoted()
    {
        var (first, quote) = (_at, _text[_at]);
        var close = _text.IndexOf(quote, first + 1, _end - first - 1);
        // A single quote inside is written twice.
        while (quote == '\'' && close >= 0 && close + 1 < _end && _text[close + 1] == quote)
            close = _text.IndexOf(quote, close + 2, _end - close - 2);
        if (close < 0 || (quote == '"' && _text.IndexOf('\\', first, close - first) >= 0))
            return null;
        _at = close + 1;
        var value = _text[(first + 1)..close];
        return new YamlScalar(quote == '\'' ? value.Replace("''", "'", StringComparison.Ordinal) : value, true, Span(first, _at - first));
    }

    private YamlScalar? ReadPlain(bool inBrackets)
    {
        var first = _at;
        var last = first;
        for (; _at < _end; _at++)
        {
            var c = _text[_at];
            if (c == ' ')
                continue;
            if (c == '#' && _text[_at - 1] == ' ')
                break;
            if (c == ':' && (_at + 1 == _end || _text[_at + 1] == ' '))
            {
                if (!inBrackets)
                    return null;
                break;
            }
            if (inBrackets && c is ',' or ']' or '}')
                break;
            // What readers take differently inside brackets is left to the library.
            if (inBrackets && c is '[' or '{' or ':' or '?')
                return null;
            last = _at;
        }
        _at = last + 1;
        return new YamlScalar(_text[first..(last + 1)], false, Span(first, last + 1 - first));
    }

    private void SkipBlanks()
    {
        while (_at < _end && _text[_at] == ' ')
            _at++;
    }

    private bool Take(char wanted)
    {
        if (_at >= _end || _text[_at] != wanted)
            return false;
        _at++;
        return true;
    }

    private SourceSpan Span(int place, int length) => new(source, _line, place - _start, length);
}
