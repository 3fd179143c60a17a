using HingeSelector.Diagnostics;

namespace HingeSelector.Reading;

/// <summary>Reads the plain part of YAML that staff files keep to, many times faster than the YAML library does.</summary>
/// <remarks>
/// Half a megabyte of rules is read at every start. This reader knows maps, lists and values that stand on one line, and gives up
/// at the first thing beyond them, be it allowed or a fault: the library then reads the file from its beginning and is alone in
/// judging it. So this reader never reports anything, and a tree of its own is the very tree that the library gives.
/// </remarks>
internal sealed class PlainYaml
{
    private const int DeepestNesting = 16;

    /// <summary>The library refuses keys a little longer than this.</summary>
    internal const int LongestKey = 1000;

    private readonly SourceText _source;
    private readonly string _text;
    private readonly FlowYaml _flow;
    private bool _beyond;

    // The line to be read next: where it starts, where its words start and end, and its number.
    private int _start;
    private int _first;
    private int _end;
    private int _line = -1;
    private int _next;

    private PlainYaml(SourceText source)
    {
        _source = source;
        _text = source.Text;
        _flow = new FlowYaml(source);
    }

    private int Indent => _first - _start;

    private bool AtEnd => _first >= _text.Length;

    /// <summary>Reads one file.</summary>
    /// <returns>The root, or null when the file goes beyond the plain part.</returns>
    public static YamlNode? Read(SourceText source)
    {
        if (!PlainYamlText.IsPlain(source.Text))
            return null;
        var reader = new PlainYaml(source);
        reader.Advance();
        var root = reader.AtEnd ? null : reader.ReadBlock(0);
        return reader._beyond || !reader.AtEnd ? null : root;
    }

    /// <summary>Moves to the next line that holds more than a comment.</summary>
    private void Advance()
    {
        while (_next < _text.Length)
        {
            _line++;
            _start = _next;
            var feed = _text.IndexOf('\n', _start);
            _end = feed < 0 ? _text.Length : feed;
            _next = _end + 1;
            _first = _start;
            while (_first < _end && _text[_first] == ' ')
                _first++;
            if (_first < _end && _text[_first] != '#')
                return;
        }
        _start = 0;
        _first = _text.Length;
    }

    private YamlNode? ReadBlock(int depth)
    {
        if (depth > DeepestNesting || AtEnd)
            return Beyond();
        return IsItem() ? ReadList(depth) : ReadMap(depth);
    }

    private bool IsItem() => _text[_first] == '-' && _first + 1 < _end && _text[_first + 1] == ' ';

    private YamlList? ReadList(int depth)
    {
        var (indent, span) = (Indent, SpanAt(_first, 1));
        var items = new List<YamlNode>();
        while (!_beyond && !AtEnd && Indent == indent && IsItem())
        {
            // What follows the hyphen starts a block of its own, indented by hyphen and blanks.
            _first++;
            while (_first < _end && _text[_first] == ' ')
                _first++;
            if (_first == _end || _text[_first] == '#' || IsItem())
                return (YamlList?)Beyond();
            var item = KeyEnd() >= 0 ? ReadMap(depth + 1) : ReadValue(indent);
            if (item is not null)
                items.Add(item);
        }
        return _beyond || (!AtEnd && Indent >= indent) ? (YamlList?)Beyond() : new YamlList(items, span);
    }

    private YamlMap? ReadMap(int depth)
    {
        var (indent, span) = (Indent, SpanAt(_first, 1));
        var entries = new List<KeyValuePair<YamlScalar, YamlNode>>();
        while (!_beyond && !AtEnd && Indent == indent)
        {
            var colon = KeyEnd();
            if (colon < 0 || colon - _first > LongestKey || _flow.ReadKey(_first, colon, _line, _start) is not { } key || YamlMap.Holds(entries, key.Value))
                return (YamlMap?)Beyond();
            _first = colon + 1;
            while (_first < _end && _text[_first] == ' ')
                _first++;
            if ((_first == _end || _text[_first] == '#' ? ReadBelow(indent, depth) : ReadValue(indent)) is { } value)
                entries.Add(new(key, value));
        }
        return _beyond || (!AtEnd && Indent > indent) ? (YamlMap?)Beyond() : new YamlMap(entries, span);
    }

    private YamlNode? ReadBelow(int indent, int depth)
    {
        Advance();
        return AtEnd || Indent <= indent ? Beyond() : ReadBlock(depth + 1);
    }

    // A value ends with its line; a deeper line below would continue it.
    private YamlNode? ReadValue(int indent)
    {
        var value = _flow.ReadLine(_first, _end, _line, _start);
        Advance();
        return value is null || (!AtEnd && Indent > indent) ? Beyond() : value;
    }

    /// <summary>Where the colon behind a key stands; negative when the line holds none.</summary>
    private int KeyEnd()
    {
        var from = _first;
        if (_text[from] is '\'' or '"')
        {
            from = _text.IndexOf(_text[from], from + 1, _end - from - 1);
            if (from < 0)
                return -1;
        }
        else if (!FlowYaml.StartsPlain(_text, from, _end))
        {
            return -1;
        }
        for (var colon = from; colon < _end; colon++)
        {
            if (_text[colon] == ':' && (colon + 1 == _end || _text[colon + 1] == ' '))
                return colon;
        }
        return -1;
    }

    private SourceSpan SpanAt(int place, int length) => new(_source, _line, place - _start, length);

    private YamlNode? Beyond()
    {
        _beyond = true;
        return null;
    }
}
