using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Reading;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads an entry under <c>change</c>: other points, another number in a condition, another reason.</summary>
internal sealed class RuleChanger(RuleBook book, RuleReader reader, Philosophy philosophy, DiagnosticBag bag)
{
    private readonly ConditionReader _conditions = new(book.Vocabulary, book.Findings.ToDictionary(f => f.Id, StringComparer.Ordinal), bag);
    private readonly ConclusionReader _conclusions = new(book.Findings.ToDictionary(f => f.Id, StringComparer.Ordinal), book.Criteria, _ => null, bag);
    private readonly VariantSorter _sorter = new(book.Vocabulary, book.Variants);

    /// <summary>The keys of an entry, beside the rule.</summary>
    public static IReadOnlyList<string> Keys { get; } = ["points", "when", "because", "tries", "reason"];

    /// <summary>Reads one entry.</summary>
    /// <returns>The rule as it holds under the philosophy, or null when the entry is faulty.</returns>
    public Rule? Read(Rule rule, MapReader entry, SourceSpan at)
    {
        var before = bag.ErrorCount;
        var what = new List<string>();
        var conclusions = rule.Conclusions.ToList();
        foreach (var text in entry.Scalars("points"))
            ReadPoints(rule, text, conclusions, what);
        var conditions = rule.Conditions.ToList();
        foreach (var (key, value) in MapReader.Open(entry.Node("when"), "'when'", bag)?.Entries ?? [])
            ReadNumber(rule, key, value, conditions, what);
        var because = ReadBecause(rule, entry.Scalar("because"), what);
        var tries = entry.List("tries").SelectMany(reader.ReadExamples).ToList();
        var reason = entry.Required("reason");
        if (bag.ErrorCount == before && what.Count == 0)
            bag.Add(Problems.EmptyChange(at, rule.Id));
        // Examples of the base speak of the number of the base.
        var numbersDiffer = entry.Node("when") is not null;
        if (bag.ErrorCount == before && numbersDiffer && tries.Count == 0)
            bag.Add(Problems.MissingKey(at, "tries", "a change of 'when'"));
        if (bag.ErrorCount != before)
            return null;
        return rule with
        {
            Conditions = conditions,
            OpenConditions = _sorter.Settle(conditions).Open,
            Conclusions = conclusions,
            Because = because,
            Tries = numbersDiffer ? tries : [.. rule.Tries, .. tries],
            Change = new RuleChange(philosophy.Id, rule.Id, RuleChangeKind.Changed, string.Join("; ", what), reason!.Value, at),
        };
    }

    private void ReadPoints(Rule rule, YamlScalar text, List<Conclusion> conclusions, List<string> what)
    {
        if (_conclusions.ReadPoints(text) is not { } points)
            return;
        var place = conclusions.FindIndex(c => c is PointsConclusion p && p.Criterion == points.Criterion);
        if (place < 0)
        {
            bag.Add(Problems.NoSuchLine(text.Span, rule.Id, $"points for '{book.Criteria[points.Criterion].Id}'", [.. rule.Conclusions.OfType<PointsConclusion>().Select(Print)]));
            return;
        }
        var was = (PointsConclusion)conclusions[place];
        if (was == points)
            bag.Add(Problems.NoDifference(text.Span, $"The points line of '{rule.Id}'", text.Value));
        conclusions[place] = points;
        what.Add($"{Print(points)}, in the base {Print(was)}");
    }

    private string Print(PointsConclusion points)
        => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{points.Amount:+0;-0} for {book.Criteria[points.Criterion].Id}");

    private void ReadNumber(Rule rule, YamlScalar key, YamlNode value, List<Condition> conditions, List<string> what)
    {
        if (value is not YamlScalar text)
        {
            bag.Add(Problems.WrongShape(value.Span, $"The condition for '{key.Value}'", "a single value", value.KindName));
            return;
        }
        if (_conditions.FindReading(key.Value, key.Span) is not { } reading)
            return;
        var place = conditions.FindIndex(c => c is NumberCondition n && n.Reading == reading);
        if (place < 0)
        {
            bag.Add(Problems.NoSuchLine(key.Span, rule.Id, $"number to change for '{key.Value}'", [.. rule.Conditions.OfType<NumberCondition>().Select(c => c.Text)]));
            return;
        }
        var was = (NumberCondition)conditions[place];
        if (new ConditionTextReader(bag).Read(reading, text, key) is not NumberCondition now)
            return;
        if (Form(now.Interval) != Form(was.Interval))
            bag.Add(Problems.OtherForm(text.Span, was.Text, text.Value));
        else if (now.Interval == was.Interval)
            bag.Add(Problems.NoDifference(text.Span, $"The condition on '{key.Value}'", text.Value));
        conditions[place] = now;
        what.Add($"{now.Text}, in the base {was.Text[(was.Text.IndexOf(": ", StringComparison.Ordinal) + 2)..]}");
    }

    private string ReadBecause(Rule rule, YamlScalar? text, List<string> what)
    {
        if (text is null)
            return rule.Because;
        if (text.Value == rule.Because)
            bag.Add(Problems.NoDifference(text.Span, $"The reason of '{rule.Id}'", text.Value));
        what.Add("another reason");
        return text.Value;
    }

    // Which ends an interval has, whether they belong to it, and whether it is a single number.
    private static (bool, bool, bool, bool, bool) Form(Interval i) => (double.IsFinite(i.Low), i.LowIn, double.IsFinite(i.High), i.HighIn, i.Low.Equals(i.High));
}
