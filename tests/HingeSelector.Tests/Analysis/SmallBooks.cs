using System.Globalization;
using HingeSelector.Rules;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Analysis;

/// <summary>Small rule bases made at random over a few facts, so that every screen can be tried one by one.</summary>
internal sealed class SmallBooks(int seed)
{
    private static readonly string[] _hips = ["worse", "better", "throwing", "other", "gap"];
    private static readonly string[] _items = ["hernia", "hip-operation"];

    private readonly Random _random = new(seed);

    /// <summary>Which facts the base reads: sides and their readings, sets and choices, or pains that cannot lie below one another.</summary>
    public int Kind { get; } = seed % 3;

    /// <summary>The base.</summary>
    public RuleBook Make()
    {
        var rules = new List<string>
        {
            Rule("find-one", Lines(false, []), "finding: one"),
            Rule("find-two", Lines(false, ["one"]), "finding: two"),
            Rule("find-two-again", Lines(false, []), "finding: two"),
        };
        for (var i = 0; i < 7; i++)
        {
            // A stop is about the athlete and may not read a word of the variant.
            var then = Then();
            rules.Add(Rule($"rule-{i}", Lines(!then.StartsWith("stop", StringComparison.Ordinal), ["one", "two"]), then));
        }
        return RulesFolder.Book(RulesFolder.WithTopics(("made/made.yaml",
            "findings:\n  - {finding: one, label: One, means: One.}\n  - {finding: two, label: Two, means: Two.}\nrules:\n" + string.Concat(rules))));
    }

    private static string Rule(string id, string when, string then)
        => $"  - rule: {id}\n    when:\n{when}    then:\n      - {then}\n    because: Made at random.\n    grade: practice\n    sources: []\n";

    private string Then() => _random.Next(5) switch
    {
        0 => "caution: Look.",
        1 => "request: {straps: " + Pick("none", "use", "offer") + "}",
        2 => "stop: {level: refer, answers: clinician, see: A physician, say: Wait.}",
        _ => "exclude: Out.",
    };

    private string Lines(bool variants, string[] findings)
    {
        var lines = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var count = 1 + _random.Next(3); count > 0; count--)
            Add(lines, findings);
        if (variants && _random.Next(3) == 0)
            lines["load-in-hands"] = Pick("is none", "is full or light", "is not none", "is light");
        if (_random.Next(4) == 0)
            lines[Pick("any of", "none of")] = "\n" + Branch(findings) + Branch(findings);
        return string.Concat(lines.Select(l => $"      {l.Key}: {l.Value.TrimEnd('\n')}\n"));
    }

    private string Branch(string[] findings)
    {
        var lines = new Dictionary<string, string>(StringComparer.Ordinal);
        Add(lines, findings);
        if (_random.Next(2) == 0)
            Add(lines, findings);
        return $"        - {{{string.Join(", ", lines.Select(l => $"'{l.Key}': {l.Value}"))}}}\n";
    }

    private void Add(Dictionary<string, string> lines, string[] findings)
    {
        if (findings.Length > 0 && _random.Next(4) == 0)
            lines[Pick(findings)] = Pick("is present", "is absent");
        else if (_random.Next(3) == 0)
            lines["sex"] = Pick("is female", "is male", "is not male");
        else if (Kind == 0)
            AddHip(lines);
        else if (Kind == 1)
            AddPlain(lines);
        else
            AddPain(lines);
    }

    private void AddHip(Dictionary<string, string> lines)
    {
        if (_random.Next(5) == 0)
        {
            lines["throwing-side"] = Pick("is left", "is right", "is not left");
            return;
        }
        var reading = Pick(_hips);
        lines[$"hip-flexion, {reading}"] = reading == "gap" ? Number("deg", 10) : Number("deg", 90, 100);
    }

    private void AddPlain(Dictionary<string, string> lines)
    {
        switch (_random.Next(3))
        {
            case 0:
                lines["history, " + Pick("left", "right", "throwing", "other")] = Pick("includes hip-operation", "does not include hip-operation");
                break;
            case 1:
                lines["history"] = Pick("is empty", "is not empty", $"includes {Pick(_items)}", $"includes {Pick(_items)} or {Pick(_items)}", $"does not include {Pick(_items)}");
                break;
            default:
                lines["age"] = Number("years", 16, 18);
                break;
        }
    }

    private void AddPain(Dictionary<string, string> lines)
        => lines[Pick("low-back-pain-at-rest", "low-back-pain-worst", "shoulder-pain-worst, worse", "shoulder-pain-worst, better")] = Number("points", 2, 4);

    private string Number(string unit, params int[] ends)
    {
        string End(int place) => ends[Math.Min(place, ends.Length - 1)].ToString(CultureInfo.InvariantCulture) + " " + unit;
        var one = End(_random.Next(ends.Length));
        return Pick($"below {one}", $"at most {one}", $"above {one}", $"at least {one}", $"exactly {one}", $"from {End(0)} to {End(1)}", ends.Length > 1 ? $"between {End(0)} and {End(1)}" : $"above {one}");
    }

    private string Pick(params string[] texts) => texts[_random.Next(texts.Length)];
}
