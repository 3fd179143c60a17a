using HingeSelector.Examples.Squads;

namespace HingeSelector.Rendering;

/// <summary>What replaying a golden squad shows.</summary>
public static class SquadText
{
    /// <summary>Differences by athlete, stops that are gone first of all, and the count.</summary>
    public static IEnumerable<string> Rows(SquadRecord before, SquadRecord after, IReadOnlyList<SquadChange> changes)
    {
        foreach (var athlete in changes.GroupBy(c => c.Athlete).OrderByDescending(a => a.Any(c => c.Kind == ChangeKind.StopGone)))
        {
            yield return athlete.Key;
            foreach (var change in athlete)
                yield return $"    {Word(change.Kind)}{(change.Variant is null ? "" : $" of {change.Variant}")}: {Say(change)}";
            yield return "";
        }
        var count = changes.Select(c => c.Athlete).Distinct().Count();
        yield return before.RulesHash == after.RulesHash ? $"The rules are those of the record ({after.RulesHash})." : $"The record was made with rules {before.RulesHash}; these are {after.RulesHash}.";
        yield return count == 0 ? $"{before.Athletes.Count} athletes: decided as recorded." : $"{count} of {before.Athletes.Count} athletes are decided otherwise.";
    }

    /// <summary>Writes the differences as JSON.</summary>
    public static void WriteJson(Stream output, SquadRecord before, SquadRecord after, IReadOnlyList<SquadChange> changes) => JsonPages.Write(output, json =>
    {
        json.WriteString("rulesHashBefore", before.RulesHash);
        json.WriteString("rulesHashAfter", after.RulesHash);
        json.WriteNumber("athletes", before.Athletes.Count);
        JsonPages.List(json, "changes", changes, c =>
        {
            json.WriteString("athlete", c.Athlete);
            json.WriteString("kind", Word(c.Kind).Replace(' ', '-'));
            json.WriteString("variant", c.Variant);
            json.WriteString("before", c.Before);
            json.WriteString("after", c.After);
        });
    });

    private static string Say(SquadChange change) => (change.Before, change.After) switch
    {
        ("", var now) => $"new: {now}",
        (var was, "") => $"gone: {was}",
        var (was, now) => $"{was} -> {now}",
    };

    private static string Word(ChangeKind kind) => kind switch
    {
        ChangeKind.StopGone or ChangeKind.StopNew => "stop",
        ChangeKind.FirstChoice => "first choice",
        ChangeKind.Excluded => "out",
        ChangeKind.SetUp => "set-up",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
