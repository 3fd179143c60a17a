using System.Globalization;
using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads the items under <c>then</c>.</summary>
/// <param name="findings">Declared findings.</param>
/// <param name="criteria">Criteria.</param>
/// <param name="variantsThatMeet">Turns a map of conditions on words of the variant into the variants that meet it.</param>
/// <param name="bag">Collects faults.</param>
public sealed partial class ConclusionReader(
    IReadOnlyDictionary<string, Finding> findings,
    IReadOnlyList<Criterion> criteria,
    Func<YamlNode, ulong?> variantsThatMeet,
    DiagnosticBag bag)
{
    private const string AllowOnly = "allow only";
    private const string Refer = "refer";

    private static readonly string[] _kinds = ["finding", "stop", AllowOnly, "exclude", "request", "points", "cue", "withhold cues that ask", "caution"];

    private static readonly IReadOnlyDictionary<string, StopLevel> _levels = new Dictionary<string, StopLevel>(StringComparer.Ordinal)
    {
        ["emergency"] = StopLevel.Emergency,
        [Refer] = StopLevel.Refer,
        ["today"] = StopLevel.Today,
    };

    private static readonly IReadOnlyDictionary<string, WhoAnswers> _answers = new Dictionary<string, WhoAnswers>(StringComparer.Ordinal)
    {
        ["clinician"] = WhoAnswers.Clinician,
        ["guardian"] = WhoAnswers.Guardian,
        ["athlete"] = WhoAnswers.Athlete,
        ["staff"] = WhoAnswers.Staff,
    };

    /// <summary>Reads all conclusions of a rule.</summary>
    public IReadOnlyList<Conclusion> ReadAll(IReadOnlyList<YamlNode> items)
    {
        var conclusions = new List<Conclusion>();
        (ulong Mask, SourceSpan At)? allowed = null;
        foreach (var item in items)
        {
            if (item is not YamlMap map)
            {
                bag.Add(Problems.WrongShape(item.Span, "A conclusion", "a map such as 'points: +1 for fit'", item.KindName));
                continue;
            }
            foreach (var (key, value) in map.Entries)
            {
                if (key.Value == AllowOnly)
                    allowed = variantsThatMeet(value) is { } mask ? (mask, key.Span) : allowed;
                else
                    conclusions.AddRange(ReadOne(key, value));
            }
        }
        return WithAllowed(conclusions, allowed);
    }

    private List<Conclusion> WithAllowed(List<Conclusion> conclusions, (ulong Mask, SourceSpan At)? allowed)
    {
        if (allowed is null)
            return conclusions;
        var stop = conclusions.FindIndex(c => c is StopConclusion { Level: StopLevel.Today });
        if (stop < 0)
            bag.Add(Problems.AllowOnlyWithoutStop(allowed.Value.At));
        else
            conclusions[stop] = (StopConclusion)conclusions[stop] with { Allowed = allowed.Value.Mask };
        return conclusions;
    }

    private IEnumerable<Conclusion> ReadOne(YamlScalar key, YamlNode value)
    {
        switch (key.Value)
        {
            case "finding":
                return One(ReadFinding(Text(key, value)));
            case "stop":
                return One(ReadStop(value));
            case "exclude":
                return One(Text(key, value) is { } why ? new ExclusionConclusion(why.Value) : null);
            case "request":
                return ReadRequests(value);
            case "points":
                return One(ReadPoints(Text(key, value)));
            case "cue":
                return One(ReadCue(value));
            case "withhold cues that ask":
                return One(ReadAsks(AsList(value)) is { Count: > 0 } asks ? new WithholdConclusion(asks) : null);
            case "caution":
                return One(Text(key, value) is { } text ? new CautionConclusion(text.Value) : null);
            default:
                bag.Add(Problems.UnknownKey(key.Span, key.Value, "a conclusion", _kinds));
                return [];
        }
    }

    private static IEnumerable<Conclusion> One(Conclusion? conclusion) => conclusion is null ? [] : [conclusion];

    private YamlScalar? Text(YamlScalar key, YamlNode value)
    {
        if (value is YamlScalar { Value.Length: > 0 } text)
            return text;
        bag.Add(Problems.WrongShape(value.Span, $"'{key.Value}'", "a single value", value.KindName));
        return null;
    }

    private FindingConclusion? ReadFinding(YamlScalar? id)
    {
        if (id is null)
            return null;
        if (findings.TryGetValue(id.Value, out var finding))
            return new FindingConclusion(finding.Index);
        bag.Add(Problems.UnknownFinding(id.Span, id.Value, [.. findings.Keys]));
        return null;
    }

    private StopConclusion? ReadStop(YamlNode node)
    {
        var map = MapReader.Open(node, "a stop", bag);
        if (map is null)
            return null;
        var level = map.Required("level");
        var see = map.Required("see");
        var say = map.Required("say");
        // Only a stop of level refer waits for an answer; on another level the key is a mistake.
        var answers = level?.Value == Refer ? map.Required("answers") : null;
        map.Finish();
        if (level is not null && !_levels.ContainsKey(level.Value))
            bag.Add(Problems.UnknownValue(level.Span, level.Value, "level", [.. _levels.Keys]));
        else if (answers is not null && !_answers.ContainsKey(answers.Value))
            bag.Add(Problems.UnknownValue(answers.Span, answers.Value, "answers", [.. _answers.Keys]));
        else if (level is not null && see is not null && say is not null)
            return new StopConclusion(_levels[level.Value], answers is null ? WhoAnswers.Nobody : _answers[answers.Value], see.Value, say.Value, 0);
        return null;
    }

    private IEnumerable<Conclusion> ReadRequests(YamlNode node)
    {
        var map = MapReader.Open(node, "a request", bag);
        foreach (var (key, value) in map?.Entries ?? [])
        {
            if (!RequestedChange.Words.TryGetValue(key.Value, out var words))
                bag.Add(Problems.UnknownKey(key.Span, key.Value, "a request", [.. RequestedChange.Words.Keys]));
            else if (Text(key, value) is { } text && ReadRequest(key.Value, text, words) is { } request)
                yield return new RequestConclusion(request);
        }
    }

    private RequestedChange? ReadRequest(string key, YamlScalar text, IReadOnlyList<string> words)
    {
        if (words.Contains(text.Value))
            return new RequestedChange(key, text.Value, null);
        var start = key switch
        {
            "bar-height" => "at least ",
            "grip-width" => "at most ",
            _ => null,
        };
        if (start is not null && text.Value.StartsWith(start, StringComparison.Ordinal))
            return Parse.Quantity(text with { Value = text.Value[start.Length..] }, key, Dimension.Length, bag) is { } metres ? new RequestedChange(key, null, metres) : null;
        IReadOnlyCollection<string> expected = start is null ? [.. words] : [.. words, start + "30 cm"];
        bag.Add(Problems.UnknownValue(text.Span, text.Value, key, expected));
        return null;
    }

    private PointsConclusion? ReadPoints(YamlScalar? text)
    {
        if (text is null)
            return null;
        var match = PointsLine().Match(text.Value);
        var criterion = match.Success ? criteria.FirstOrDefault(c => c.Id == match.Groups["criterion"].Value) : null;
        if (criterion is not null && int.TryParse(match.Groups["amount"].Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var amount) && amount is >= -3 and <= 3 and not 0)
            return new PointsConclusion(amount, criterion.Index);
        bag.Add(Problems.BadPoints(text.Span, text.Value, [.. criteria.Select(c => c.Id)]));
        return null;
    }

    private CueConclusion? ReadCue(YamlNode node)
    {
        var map = MapReader.Open(node, "a cue", bag);
        if (map is null)
            return null;
        var say = map.Required("say");
        var asks = ReadAsks(map.Scalars("asks"));
        if (map.Node("asks") is null)
            bag.Add(Problems.MissingKey(map.Span, "asks", "a cue"));
        map.Finish();
        return say is null ? null : new CueConclusion(say.Value, asks);
    }

    private IReadOnlyList<YamlScalar> AsList(YamlNode node)
    {
        if (node is YamlScalar one)
            return [one];
        if (node is YamlList list)
            return [.. list.Items.OfType<YamlScalar>()];
        bag.Add(Problems.WrongShape(node.Span, "'withhold cues that ask'", "a name or a list of names", node.KindName));
        return [];
    }

    private List<string> ReadAsks(IReadOnlyList<YamlScalar> names)
    {
        foreach (var name in names.Where(n => !CueAsks.All.Contains(n.Value)))
            bag.Add(Problems.UnknownValue(name.Span, name.Value, "asks", [.. CueAsks.All]));
        return [.. names.Select(n => n.Value)];
    }

    [GeneratedRegex(@"^(?<amount>[+-]\d) for (?<criterion>[a-z-]+)$", RegexOptions.CultureInvariant)]
    private static partial Regex PointsLine();
}
