using HingeSelector.Diagnostics;
using HingeSelector.Reading;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads the lines under <c>when</c>.</summary>
public sealed class ConditionReader(Vocabulary vocabulary, IReadOnlyDictionary<string, Finding> findings, DiagnosticBag bag)
{
    private const string AnyGroup = "any ";

    /// <summary>Reads a map of conditions, all of which must hold.</summary>
    public IReadOnlyList<Condition> ReadAll(YamlNode? node)
    {
        var map = MapReader.Open(node, "'when'", bag);
        return map is null ? [] : [.. map.Entries.Select(e => ReadLine(e.Key, e.Value)).OfType<Condition>()];
    }

    private Condition? ReadLine(YamlScalar key, YamlNode value) => key.Value switch
    {
        "any of" => ReadBranches(key, value) is { } parts ? new AnyCondition(parts, "any of " + Describe(parts), key.Span) : null,
        "none of" => ReadBranches(key, value) is { } parts
            ? new NotCondition(new AnyCondition(parts, Describe(parts), key.Span), "none of " + Describe(parts), key.Span)
            : null,
        _ => ReadWords(key, value),
    };

    private static string Describe(IReadOnlyList<Condition> parts) => string.Join("; ", parts.Select(p => p.Text));

    private List<Condition>? ReadBranches(YamlScalar key, YamlNode value)
    {
        if (value is not YamlList list || list.Items.Count == 0)
        {
            bag.Add(Problems.WrongShape(value.Span, $"'{key.Value}'", "a list of maps", value.KindName));
            return null;
        }
        var before = bag.ErrorCount;
        var branches = new List<Condition>();
        foreach (var item in list.Items)
        {
            var parts = ReadAll(item);
            if (parts.Count > 0)
                branches.Add(All(parts, item.Span));
        }
        return bag.ErrorCount == before && branches.Count > 0 ? branches : null;
    }

    private static Condition All(IReadOnlyList<Condition> parts, SourceSpan span)
        => parts.Count == 1 ? parts[0] : new AllCondition(parts, string.Join(" and ", parts.Select(p => p.Text)), span);

    private Condition? ReadWords(YamlScalar key, YamlNode value)
    {
        if (value is not YamlScalar text)
        {
            bag.Add(Problems.WrongShape(value.Span, $"The condition for '{key.Value}'", "a single value", value.KindName));
            return null;
        }
        var names = key.Value.Split(" or ", StringSplitOptions.TrimEntries);
        var parts = new List<Condition>();
        var before = bag.ErrorCount;
        foreach (var name in names)
            parts.AddRange(ReadName(name, key, text));
        if (bag.ErrorCount != before || parts.Count == 0)
            return null;
        return parts.Count == 1 ? parts[0] : new AnyCondition(parts, $"{key.Value}: {text.Value}", key.Span);
    }

    private List<Condition> ReadName(string name, YamlScalar key, YamlScalar text)
    {
        if (name.StartsWith(AnyGroup, StringComparison.Ordinal))
            return ReadGroup(name[AnyGroup.Length..], key, text);
        if (findings.TryGetValue(name, out var finding))
            return ReadFinding(finding, key, text) is { } condition ? [condition] : [];
        return FindReading(name, key.Span) is { } reading && new ConditionTextReader(bag).Read(reading, text, key) is { } read ? [read] : [];
    }

    private List<Condition> ReadGroup(string group, YamlScalar key, YamlScalar text)
    {
        var words = vocabulary.InGroup(group);
        if (words.Count == 0)
            bag.Add(Problems.UnknownValue(key.Span, group, "any", vocabulary.GroupIds));
        var parts = new List<Condition>();
        foreach (var word in words)
        {
            var reading = Vocabulary.Reading(word, word.Sided ? Sides.Names[Sides.Worse] : null)!;
            if (new ConditionTextReader(bag).Read(reading, text, key) is { } part)
                parts.Add(part);
        }
        return parts;
    }

    private FindingCondition? ReadFinding(Finding finding, YamlScalar key, YamlScalar text)
    {
        if (text.Value is "is present" or "is absent")
            return new FindingCondition(finding.Index, text.Value == "is present", $"{finding.Id}: {text.Value}", key.Span);
        bag.Add(Problems.BadCondition(text.Span, finding.Id, text.Value, "'is present' or 'is absent'"));
        return null;
    }

    /// <summary>Finds a word with its reading; reports what is wrong.</summary>
    public WordReading? FindReading(string name, SourceSpan span)
    {
        var comma = name.IndexOf(',', StringComparison.Ordinal);
        var id = comma < 0 ? name : name[..comma].Trim();
        var reading = comma < 0 ? null : name[(comma + 1)..].Trim();
        var word = vocabulary.Find(id);
        if (word is null)
        {
            bag.Add(Problems.UnknownWord(span, id, [.. vocabulary.Ids, .. findings.Keys]));
            return null;
        }
        if (Vocabulary.Reading(word, reading) is { } found)
            return found;
        bag.Add(Problems.BadReading(span, id, reading, word.Sided && reading is null ? [.. word.Readings.Skip(2)] : [.. word.Readings.Where(r => r.Length > 0)]));
        return null;
    }
}
