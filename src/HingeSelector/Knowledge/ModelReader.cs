using HingeSelector.Body;
using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Statics;

namespace HingeSelector.Knowledge;

/// <summary>Reads rules/model.yaml. The code of the model holds no number of its own.</summary>
public sealed class ModelReader
{
    private static readonly IReadOnlyDictionary<string, SegmentName> _segments = Enum.GetValues<SegmentName>().ToDictionary(Kebab, s => s, StringComparer.Ordinal);

    private readonly IReadOnlyDictionary<string, Source> _sources;
    private readonly DiagnosticBag _bag;
    private readonly Dictionary<string, ParameterValue> _values = new(StringComparer.Ordinal);
    // A parameter with a fault is not missing as well.
    private readonly HashSet<string> _named = new(StringComparer.Ordinal);
    private readonly List<ParameterNote> _notes = [];

    private ModelReader(IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
    {
        _sources = sources;
        _bag = bag;
    }

    /// <summary>Reads the model.</summary>
    /// <returns>The model, or null when the file is faulty (the bag says why).</returns>
    public static Model? Read(YamlNode? root, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
        => MapReader.Open(root, "the model", bag) is { } map ? new ModelReader(sources, bag).Read(map) : null;

    private Model? Read(MapReader map)
    {
        var before = _bag.ErrorCount;
        foreach (var node in map.List("parameters"))
            ReadParameter(node);
        var survey = ReadSurvey(map);
        var masses = map.List("mass-tables").Select(ReadMassTable).OfType<MassTablePair>().ToList();
        map.Finish();
        foreach (var id in ModelParameters.Ids.Where(p => !_named.Contains(p.Id)))
            _bag.Add(Problems.MissingKey(map.Span, $"parameter: {id.Id}", "the model"));
        if (masses.Count == 0)
            _bag.Add(Problems.MissingKey(map.Span, "mass-tables", "the model"));
        return _bag.ErrorCount == before && survey is not null ? new Model(new ModelParameters(_values), survey, masses, _notes) : null;
    }

    private void ReadParameter(YamlNode node)
    {
        var map = MapReader.Open(node, "a parameter", _bag);
        if (map is null)
            return;
        var id = map.Required("parameter");
        if (id is not null)
            _named.Add(id.Value);
        var label = map.Required("label");
        var value = map.Required("default");
        var range = map.Required("range");
        var grade = Parse.Grade(map.Required("grade"), _bag);
        var sources = Parse.Sources(map, _sources, _bag);
        var because = map.Required("because");
        map.Finish();
        if (grade is not (null or Grade.Practice or Grade.Mechanics) && sources.Count == 0)
            _bag.Add(Problems.GradeWithoutSource(map.Span, Parse.Name(grade.Value)));
        if (id is null || label is null || value is null || range is null || grade is null || because is null)
            return;
        var known = ModelParameters.Ids.FirstOrDefault(p => p.Id == id.Value);
        if (known is null)
        {
            _bag.Add(Problems.UnknownValue(id.Span, id.Value, "parameter", [.. ModelParameters.Ids.Select(p => p.Id)]));
            return;
        }
        _notes.Add(new ParameterNote(id.Value, label.Value, value.Value, range.Value, grade.Value, sources, because.Value));
        if (Number(value, known) is not { } middle || ReadRange(range, t => Number(t, known)) is not { } ends)
            return;
        if (middle < ends.Low || middle > ends.High)
            _bag.Add(Problems.OutOfRange(value.Span, id.Value, value.Value, range.Value.Split(" to ")[0], range.Value.Split(" to ")[^1]));
        else if (!_values.TryAdd(id.Value, new ParameterValue(middle, ends.Low, ends.High)))
            _bag.Add(Problems.DuplicateId(id.Span, "parameter", id.Value, map.Span));
    }

    private double? Number(YamlScalar text, ParameterId known) => Parse.Quantity(text, known.Id, known.Dimension, _bag);

    private (double Low, double High)? ReadRange(YamlScalar? text, Func<YamlScalar, double?> read)
    {
        var ends = text?.Value.Split(" to ", 2);
        if (ends is not { Length: 2 })
        {
            if (text is not null)
                _bag.Add(Problems.BadQuantity(text.Span, "range", $"'{text.Value}' is not a range; write it like '0 cm to 8 cm'"));
            return null;
        }
        return read(text! with { Value = ends[0] }) is { } low && read(text with { Value = ends[1] }) is { } high ? (low, high) : null;
    }

    private SurveyTable? ReadSurvey(MapReader model)
    {
        var map = MapReader.Open(model.Node("survey"), "the survey", _bag);
        if (map is null)
        {
            _bag.Add(Problems.MissingKey(model.Span, "survey", "the model"));
            return null;
        }
        Parse.Sources(map, _sources, _bag);
        var ages = ReadRange(map.Required("ages"), t => Parse.Quantity(t, "ages", Dimension.Time, _bag));
        var female = ReadSex(map, "female");
        var male = ReadSex(map, "male");
        map.Finish();
        var year = Unit.Find("years")!.Factor;
        return ages is null || female is null || male is null ? null : new SurveyTable(ages.Value.Low / year, ages.Value.High / year, female, male);
    }

    private SexSurvey? ReadSex(MapReader survey, string sex)
    {
        var map = MapReader.Open(survey.Node(sex), $"the survey of one sex", _bag);
        if (map is null)
        {
            _bag.Add(Problems.MissingKey(survey.Span, sex, "the survey"));
            return null;
        }
        var statures = ReadRange(map.Required("statures"), t => Parse.Quantity(t, "statures", Dimension.Length, _bag));
        var ratios = new Dictionary<SegmentName, SurveyRatio>();
        foreach (var node in map.List("ratios"))
        {
            var line = MapReader.Open(node, "a ratio", _bag);
            if (line?.Required("segment") is not { } segment || Segment(segment) is not { } name)
                continue;
            if (Bare(line, "mean") is { } mean && Bare(line, "sd") is { } deviation)
                ratios[name] = new SurveyRatio(mean, deviation);
            line.Finish();
        }
        var correlations = ReadCorrelations(map);
        map.Finish();
        foreach (var (name, segment) in _segments.Where(s => !ratios.ContainsKey(s.Value)))
            _bag.Add(Problems.MissingKey(map.Span, $"segment: {name}", $"the survey of {sex} people"));
        return statures is { } range && ratios.Count == _segments.Count
            ? new SexSurvey(Length.FromMetres(range.Low), Length.FromMetres(range.High), ratios, correlations)
            : null;
    }

    private Dictionary<SegmentPair, double> ReadCorrelations(MapReader map)
    {
        var correlations = new Dictionary<SegmentPair, double>();
        foreach (var node in map.List("correlations"))
        {
            var line = MapReader.Open(node, "a correlation", _bag);
            if (line is null)
                continue;
            var between = line.Scalars("between").Select(Segment).ToList();
            var r = Bare(line, "r");
            line.Finish();
            if (between is [{ } first, { } second] && r is { } value)
                correlations[new SegmentPair(first, second)] = value;
        }
        return correlations;
    }

    private MassTablePair? ReadMassTable(YamlNode node)
    {
        var map = MapReader.Open(node, "a mass table", _bag);
        if (map is null)
            return null;
        var id = map.Required("table");
        map.Required("label");
        Parse.Sources(map, _sources, _bag);
        var female = ReadMasses(map.Node("female"));
        var male = ReadMasses(map.Node("male"));
        map.Finish();
        return id is null || female is null || male is null ? null : new MassTablePair(id.Value, female, male);
    }

    private MassTable? ReadMasses(YamlNode? node)
    {
        var map = MapReader.Open(node, "the masses of one sex", _bag);
        if (map is null)
            return null;
        var before = _bag.ErrorCount;
        var table = new MassTable
        {
            TrunkAndHead = Share(map, "trunk-and-head"),
            Pelvis = Share(map, "pelvis"),
            Arm = Share(map, "arm"),
            Thigh = Share(map, "thigh"),
            Shank = Share(map, "shank"),
            Foot = Share(map, "foot"),
        };
        map.Finish();
        return _bag.ErrorCount == before ? table : null;
    }

    private MassShare Share(MapReader masses, string part)
    {
        var map = MapReader.Open(masses.Node(part), "a body part", _bag);
        if (map is null)
        {
            _bag.Add(Problems.MissingKey(masses.Span, part, "the masses of one sex"));
            return default;
        }
        var share = new MassShare(Bare(map, "share") ?? 0, Bare(map, "centre") ?? 0);
        map.Finish();
        return share;
    }

    private double? Bare(MapReader map, string key) => Parse.Quantity(map.Required(key), key, Dimension.None, _bag);

    private SegmentName? Segment(YamlScalar text)
    {
        if (_segments.TryGetValue(text.Value, out var name))
            return name;
        _bag.Add(Problems.UnknownValue(text.Span, text.Value, "segment", [.. _segments.Keys]));
        return null;
    }

    private static string Kebab(SegmentName name)
        => string.Concat(name.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
