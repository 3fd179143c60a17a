using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rendering;

/// <summary>Reads conditions aloud.</summary>
public static class ConditionText
{
    private const int MostParts = 6;
    private const string Deeper = "- ";

    /// <summary>A condition as sentences, those inside another one with a hyphen for each step in.</summary>
    public static IEnumerable<string> Of(RuleBook book, Condition condition) => condition switch
    {
        NumberCondition number => [$"{Name(book, number.Reading)} is {Of(number.Reading.Word, number.Interval)}"],
        ValuesCondition values => [$"{Name(book, values.Reading)} {Of(values)}"],
        FindingCondition finding => [$"the finding \"{book.Findings[finding.Finding].Label}\" is {(finding.Present ? "present" : "absent for certain")}"],
        NotCondition { Part: AnyCondition any } => Parts(book, "none of these holds, each for certain:", any.Parts),
        NotCondition not => Parts(book, "this fails for certain:", [not.Part]),
        AllCondition all => Parts(book, "all of these hold:", all.Parts),
        // A whole group of words that are asked the same is told as its author wrote it.
        AnyCondition any when any.Parts.Count > MostParts && any.Parts.All(p => p is NumberCondition) => [$"at least one holds of {any.Parts.Count} conditions: {any.Text}"],
        AnyCondition any => Parts(book, "at least one of these holds:", any.Parts),
        _ => throw new ArgumentOutOfRangeException(nameof(condition), condition, "This kind of condition has no words yet."),
    };

    private static IEnumerable<string> Parts(RuleBook book, string start, IReadOnlyList<Condition> parts)
        => [start, .. parts.SelectMany(p => Of(book, p)).Select(s => Deeper + s)];

    private static string Name(RuleBook book, WordReading reading) => reading.Name switch
    {
        null or "" => reading.Word.Label,
        "gap" => $"{reading.Word.Label}, difference between the sides,",
        ComputedWords.Standard => $"{reading.Word.Label} at the standard set-up",
        ComputedWords.AsSetUp => $"{reading.Word.Label} as set up",
        var side when Sides.Names.Contains(side) => $"{reading.Word.Label} on the {side} side",
        var pull when reading.Word.ByPull => $"{reading.Word.Label} in the pull {book.Variants.FirstOrDefault(v => v.Id == pull)?.Label ?? pull}",
        var name => $"{reading.Word.Label} ({name})",
    };

    private static string Of(Word word, Interval interval)
    {
        var (low, high) = (double.IsFinite(interval.Low), double.IsFinite(interval.High));
        if (low && high && interval.Low.Equals(interval.High))
            return $"exactly {word.Print(interval.Low)}";
        if (low && high)
            return interval.HighIn ? $"from {word.Print(interval.Low)} to {word.Print(interval.High)}" : $"at least {word.Print(interval.Low)} and below {word.Print(interval.High)}";
        return low
            ? $"{(interval.LowIn ? "at least" : "above")} {word.Print(interval.Low)}"
            : $"{(interval.HighIn ? "at most" : "below")} {word.Print(interval.High)}";
    }

    private static string Of(ValuesCondition condition)
    {
        var word = condition.Reading.Word;
        var named = word.RuleValues.Where((_, i) => (condition.Mask & word.MaskOf(i)) != 0).Select(v => v.Replace('-', ' ')).ToList();
        if (word.Kind == WordKind.Set && named.Count == word.RuleValues.Count)
            return condition.Wanted ? "is not empty" : "is empty";
        var verb = (word.Kind == WordKind.Set, condition.Wanted) switch
        {
            (true, true) => "includes",
            (true, false) => "does not include",
            (false, true) => "is",
            _ => "is not",
        };
        return $"{verb} {string.Join(" or ", named)}";
    }
}
