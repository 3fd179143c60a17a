using HingeSelector.Recommending;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rendering;

/// <summary>The words for outcomes and stop levels, the same on every surface.</summary>
public static class OutcomeText
{
    private const int MostNamed = 10;

    /// <summary>The word in JSON and CSV.</summary>
    public static string Word(Outcome outcome) => outcome switch
    {
        Outcome.Emergency => "emergency",
        Outcome.Refer => "refer",
        Outcome.Held => "held",
        Outcome.LimitedToday => "limited-today",
        _ => "ranked",
    };

    /// <summary>The headline for people; a refer says for whose answer it waits.</summary>
    public static string Headline(Recommendation answer) => answer.Outcome switch
    {
        Outcome.Emergency => "EMERGENCY - call for help",
        Outcome.Refer => $"REFER - no loaded pull until {Awaited(answer.Stops)}",
        Outcome.Held => "HELD - not answered",
        Outcome.LimitedToday => "LIMITED TODAY",
        _ => "RANKED",
    };

    /// <summary>The word for who has to answer; null where nobody has to.</summary>
    public static string? Word(WhoAnswers who) => who switch
    {
        WhoAnswers.Clinician => "clinician",
        WhoAnswers.Guardian => "guardian",
        WhoAnswers.Athlete => "athlete",
        WhoAnswers.Staff => "staff",
        _ => null,
    };

    /// <summary>The word of a stop level.</summary>
    public static string Word(StopLevel level) => level switch
    {
        StopLevel.Emergency => "emergency",
        StopLevel.Refer => "refer",
        _ => "today",
    };

    /// <summary>How many athletes got which outcome, as a sentence; those who may not pull are named.</summary>
    public static string Counts(IReadOnlyList<(string Id, Outcome Outcome)> answers)
    {
        var parts = new[] { Outcome.Emergency, Outcome.Refer, Outcome.Held, Outcome.LimitedToday, Outcome.Ranked }
            .Select(o => (Outcome: o, Ids: answers.Where(a => a.Outcome == o).Select(a => a.Id).ToList()))
            .Where(p => p.Ids.Count > 0)
            .Select(p => $"{p.Ids.Count} {Word(p.Outcome).Replace('-', ' ')}{(p.Outcome >= Outcome.Held ? Named(p.Ids) : "")}");
        return $"{answers.Count} {(answers.Count == 1 ? "athlete" : "athletes")}{(answers.Count > 0 ? ": " : "")}{string.Join(", ", parts)}.";
    }

    private static string Awaited(IReadOnlyList<StopNotice> stops)
    {
        var who = stops.Where(s => s.Level == StopLevel.Refer).Select(s => s.Answers).Distinct().Order().Select(Person).ToList();
        return who.Count == 1 ? $"{who[0]} {(who[0] == Person(WhoAnswers.Staff) ? "answer" : "answers")}" : $"{string.Join(", ", who.SkipLast(1))} and {who[^1]} answer";
    }

    private static string Person(WhoAnswers who) => who switch
    {
        WhoAnswers.Guardian => "a parent or guardian",
        WhoAnswers.Athlete => "the athlete",
        WhoAnswers.Staff => "the staff",
        _ => "a clinician",
    };

    private static string Named(List<string> ids)
        => $" ({string.Join(", ", ids.Take(MostNamed))}{(ids.Count > MostNamed ? $" and {ids.Count - MostNamed} more" : "")})";
}
