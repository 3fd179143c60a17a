using HingeSelector.Recommending;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rendering;

/// <summary>The words for outcomes and stop levels, the same on every surface.</summary>
public static class OutcomeText
{
    /// <summary>The word in JSON and CSV.</summary>
    public static string Word(Outcome outcome) => outcome switch
    {
        Outcome.Emergency => "emergency",
        Outcome.Refer => "refer",
        Outcome.Held => "held",
        Outcome.LimitedToday => "limited-today",
        _ => "ranked",
    };

    /// <summary>The headline for people.</summary>
    public static string Headline(Outcome outcome) => outcome switch
    {
        Outcome.Emergency => "EMERGENCY - call for help",
        Outcome.Refer => "REFER - no loaded pull until a clinician answers",
        Outcome.Held => "HELD - not answered",
        Outcome.LimitedToday => "LIMITED TODAY",
        _ => "RANKED",
    };

    /// <summary>The word of a stop level.</summary>
    public static string Word(StopLevel level) => level switch
    {
        StopLevel.Emergency => "emergency",
        StopLevel.Refer => "refer",
        _ => "today",
    };

    /// <summary>How many athletes got which outcome, as a sentence.</summary>
    public static string Counts(IEnumerable<Outcome> outcomes)
    {
        var all = outcomes.ToList();
        var parts = new[] { Outcome.Emergency, Outcome.Refer, Outcome.Held, Outcome.LimitedToday, Outcome.Ranked }
            .Select(o => (Outcome: o, Number: all.Count(x => x == o)))
            .Where(p => p.Number > 0)
            .Select(p => $"{p.Number} {Word(p.Outcome).Replace('-', ' ')}");
        return $"{all.Count} {(all.Count == 1 ? "athlete" : "athletes")}: {string.Join(", ", parts)}.";
    }
}
