using System.Globalization;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Analysis;

/// <summary>What a rule brings about, in a form that can be compared.</summary>
internal static class Effects
{
    /// <summary>One text for each thing that the rule brings about; equal texts mean the same thing.</summary>
    /// <remarks>Points add up, so the points of two rules are never the same thing.</remarks>
    public static IReadOnlyList<string> Of(Rule rule) => [.. rule.Conclusions.SelectMany(c => Of(c, rule))];

    /// <summary>A request as written.</summary>
    public static string Text(RequestedChange request) => request.Word is { } word
        ? $"{request.Key}: {word}"
        : string.Create(CultureInfo.InvariantCulture, $"{request.Key}: {(request.Key == "grip-width" ? "at most" : "at least")} {Math.Round(request.Number!.Value * 100, 6):0.######} cm");

    /// <summary>Whether one request wins over another for the same thing because it is more cautious.</summary>
    public static bool Overrules(RequestedChange strong, RequestedChange weak)
    {
        if (strong.Key != weak.Key || strong.Word is null != weak.Word is null)
            return false;
        if (strong.Word is not null)
            return Place(strong) < Place(weak);
        return strong.Key == "grip-width" ? strong.Number < weak.Number : strong.Number > weak.Number;
    }

    /// <summary>Whether a request asks for more than stands without it.</summary>
    public static bool Raises(RequestedChange request) => (request.Key, request.Word) is ("straps", "use" or "offer") or ("speed", "faster");

    /// <summary>Whether a request asks for less load.</summary>
    public static bool Lightens(RequestedChange request) => (request.Key, request.Word) is ("load", "none" or "light" or "lower");

    private static int Place(RequestedChange request) => RequestedChange.Words[request.Key].ToList().IndexOf(request.Word!);

    private static IEnumerable<string> Of(Conclusion conclusion, Rule rule) => conclusion switch
    {
        FindingConclusion finding => [$"finding {finding.Finding}"],
        StopConclusion stop => [$"stop {stop.Level} {stop.Answers} {stop.Allowed} {stop.See} {stop.Say}"],
        ExclusionConclusion exclusion => [$"exclude {exclusion.Why}"],
        RequestConclusion request => [$"request {Text(request.Request)}"],
        CueConclusion cue => [$"cue {cue.Say}"],
        WithholdConclusion withhold => withhold.Asks.Select(a => $"withhold {a}"),
        CautionConclusion caution => [$"caution {caution.Text}"],
        _ => [$"points of {rule.Id}"],
    };
}
