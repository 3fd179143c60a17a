namespace HingeSelector.Diagnostics;

/// <content>Rule logic: HS3xxx.</content>
public static partial class Problems
{
    /// <summary>HS3001: a finding that is not declared.</summary>
    public static Diagnostic UnknownFinding(SourceSpan at, string id, IReadOnlyCollection<string> known) => Error("HS3001", at, $"The finding '{id}' is not declared.", DidYouMean(id, known)) with { Edit = Respelt(at, id, known) };

    /// <summary>HS3002: findings depend on each other in a circle.</summary>
    public static Diagnostic FindingCycle(SourceSpan at, IReadOnlyList<string> path, bool throughAbsence)
        => Error("HS3002", at, $"These findings depend on each other in a circle{(throughAbsence ? " through an absence" : "")}: {string.Join(" -> ", path)}.", "Remove one of the conditions that close the circle.");

    /// <summary>HS3003: a conclusion that this scope cannot draw.</summary>
    public static Diagnostic WrongScope(SourceSpan at, string conclusion, string word) => Error("HS3003", at, $"A {conclusion} is about the athlete, but '{word}' is a word of the candidate.", "Read words of the athlete only, or draw another conclusion.");

    /// <summary>HS3004: a request reads what it would change.</summary>
    public static Diagnostic RequestReadsResult(SourceSpan at, string word) => Error("HS3004", at, $"A request decides the set-up, so it may not read '{word}, as set up'.", $"Read '{word}, standard'.");

    /// <summary>HS3005: a points line in the wrong form.</summary>
    public static Diagnostic BadPoints(SourceSpan at, string text, IReadOnlyCollection<string> criteria)
    {
        var form = $"Write for example '+2 for {criteria.First()}': whole points from -3 to +3 except 0, then 'for', then a criterion: {string.Join(", ", criteria)}.";
        var named = text[(text.LastIndexOf(' ') + 1)..];
        var near = text.Contains(" for ", StringComparison.Ordinal) && !criteria.Contains(named) ? NearestName.Find(named, criteria) : null;
        return Error("HS3005", at, $"'{text}' is not a points line.", near is null ? form : $"Did you mean '{near}'? {form}") with { Edit = near is null ? null : Respelt(at, named, criteria) };
    }

    /// <summary>HS3006: two rules pay for the same fact.</summary>
    public static Diagnostic PaysTwice(SourceSpan at, string rule, string other, string word, string criterion, string variant)
        => Error("HS3006", at, $"'{rule}' and '{other}' can both give points for '{criterion}' to '{variant}' from the same fact '{word}'.", "Make their ranges disjoint, tell the variants apart, or merge the rules.");

    /// <summary>HS3007: a grade that the sources do not carry.</summary>
    public static Diagnostic GradeWithoutSource(SourceSpan at, string grade) => Error("HS3007", at, $"The grade '{grade}' needs at least one source.", "Name the source, or grade it 'practice'.");

    /// <summary>HS3008: an example that gives another result.</summary>
    public static Diagnostic ExampleFails(SourceSpan at, string rule, string expected, string found, string why) => Error("HS3008", at, $"The example expects that '{rule}' {expected}, but it {found}.", why);

    /// <summary>HS3009: conditions that no candidate can meet.</summary>
    public static Diagnostic NeverHolds(SourceSpan at, string rule) => Error("HS3009", at, $"No variant meets the conditions of '{rule}' on words of the variant, so it can never fire.", "Check the values against rules/variants/.");

    /// <summary>HS3010: an allow-only line without a today stop.</summary>
    public static Diagnostic AllowOnlyWithoutStop(SourceSpan at) => Error("HS3010", at, "'allow only' belongs beside a stop of level today.", "Add 'stop: {level: today, ...}' or use 'exclude'.");

    /// <summary>HS3011: a rule without any conclusion.</summary>
    public static Diagnostic NoConclusion(SourceSpan at, string rule) => Error("HS3011", at, $"'{rule}' concludes nothing.", "Add a conclusion under 'then'.");

    /// <summary>HS3012: more than the compiled form can hold.</summary>
    public static Diagnostic TooMany(SourceSpan at, string what, int limit) => Error("HS3012", at, $"There are more than {limit} {what}; the compiled form holds {limit}.");

    /// <summary>HS3013: a finding that nothing concludes.</summary>
    public static Diagnostic FindingNeverConcluded(SourceSpan at, string id) => Error("HS3013", at, $"No rule concludes the finding '{id}'.", "Write the rule, or remove the declaration.");
}
