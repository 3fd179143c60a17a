using System.Globalization;
using System.Text.RegularExpressions;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Tests.Rules.Philosophies.Sealing;

/// <summary>Random entries of a philosophy: weights, changes, rules switched off, rules added. Many would loosen what is sealed; that is their purpose.</summary>
internal sealed partial class RandomEntries
{
    private static readonly string[] _requests = ["bar-height: at least 40 cm", "bar-height: lowest that fits", "grip-width: at most 60 cm", "stance: wider", "load: light", "repetitions: fewer", "speed: controlled", "straps: none"];

    private readonly RuleBook _book;
    private readonly (string Line, bool OfCandidate)[] _conditions;
    private readonly Rule[] _withNumbers;
    private readonly Rule[] _withPoints;

    public RandomEntries(RuleBook book)
    {
        _book = book;
        _conditions = [.. book.Rules.SelectMany(r => r.Conditions).Where(c => c is NumberCondition or ValuesCondition or FindingCondition)
            .Select(c => ($"'{c.Text[..c.Text.IndexOf(": ", StringComparison.Ordinal)]}': '{c.Text[(c.Text.IndexOf(": ", StringComparison.Ordinal) + 2)..]}'", c.Reads.Any(r => r.Word.OfCandidate))).Distinct()];
        _withNumbers = [.. book.Rules.Where(r => r.Conditions.Any(c => c is NumberCondition))];
        _withPoints = [.. book.Rules.Where(r => r.Conclusions.Any(c => c is PointsConclusion))];
    }

    /// <summary>One entry: the key that it stands under, and its text as an item of that list.</summary>
    public (string Key, string Text) Next(Random random, int number) => random.Next(10) switch
    {
        0 => ("weights", $"  {Any(_book.Criteria, random).Id}: {random.Next(11)}\n"),
        1 => ("change", $"  - {{rule: {Any(_withPoints, random).Id}, points: {random.Next(1, 4).ToString("+0;-0", CultureInfo.InvariantCulture)} for {Any(_book.Criteria, random).Id}, reason: drawn}}\n"),
        2 => ("change", Points(Any(_withPoints, random), random)),
        3 => ("change", Number(Any(_withNumbers, random), random)),
        4 or 5 => ("off", $"  - {{rule: {Any(_book.Rules, random).Id}, reason: drawn}}\n"),
        _ => ("add", Added(random, number)),
    };

    private string Points(Rule rule, Random random)
    {
        var points = rule.Conclusions.OfType<PointsConclusion>().First();
        var amount = (random.Next(2) == 0 ? -1 : 1) * random.Next(1, 4);
        return $"  - {{rule: {rule.Id}, points: {amount.ToString("+0;-0", CultureInfo.InvariantCulture)} for {_book.Criteria[points.Criterion].Id}, reason: drawn}}\n";
    }

    private static string Number(Rule rule, Random random)
    {
        var was = Any([.. rule.Conditions.OfType<NumberCondition>()], random);
        var colon = was.Text.IndexOf(": ", StringComparison.Ordinal);
        var text = Numbers().Replace(was.Text[(colon + 2)..], m => (double.Parse(m.Value, CultureInfo.InvariantCulture) * (random.Next(2) == 0 ? 0.75 : 1.25)).ToString("0.##", CultureInfo.InvariantCulture));
        return $"  - rule: {rule.Id}\n    when: {{'{was.Text[..colon]}': '{text}'}}\n    reason: drawn\n    tries: [{{given: {{}}, expect: open}}]\n";
    }

    private string Added(Random random, int number)
    {
        var (then, ofAthlete) = Conclusion(random);
        var pool = ofAthlete ? _conditions.Where(c => !c.OfCandidate).ToArray() : _conditions;
        var lines = Enumerable.Range(0, random.Next(1, 4)).Select(_ => Any(pool, random).Line).DistinctBy(l => l[..l.IndexOf(':', StringComparison.Ordinal)]);
        return $"  - rule: drawn-{number}\n    when:\n{string.Concat(lines.Select(l => $"      {l}\n"))}    then:\n      - {then}\n    because: Drawn.\n    grade: practice\n    disputed: no\n    sources: []\n    tries: [{{given: {{}}, expect: open}}]\n";
    }

    private (string Then, bool OfAthlete) Conclusion(Random random) => random.Next(8) switch
    {
        0 => ($"stop: {{level: {Any(new[] { "today", "refer", "emergency" }, random)}, see: someone, say: Drawn.}}", true),
        1 => ("exclude: Drawn.", false),
        2 => ("caution: Drawn.", false),
        3 or 4 => ($"finding: {Any(_book.Findings, random).Id}", true),
        5 => ($"points: +1 for {Any(_book.Criteria, random).Id}", false),
        6 => ("withhold cues that ask: arch", false),
        _ => ($"request: {{{Any(_requests, random)}}}", false),
    };

    private static T Any<T>(IReadOnlyList<T> items, Random random) => items[random.Next(items.Count)];

    [GeneratedRegex(@"(?<![\w.])\d+(?:\.\d+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();
}
