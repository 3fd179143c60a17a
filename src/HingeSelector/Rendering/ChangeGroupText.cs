using HingeSelector.Comparing;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Tells groups of athletes whose answers differ in the same way, with a few of them as examples.</summary>
internal static class ChangeGroupText
{
    private const int MostGroups = 12;

    /// <summary>The lines, the gravest and commonest first.</summary>
    public static IEnumerable<Line> Of(IReadOnlyList<ChangeGroup> groups, RuleBook book)
    {
        foreach (var group in groups.Take(MostGroups))
        {
            yield return Line.Heading($"{Athletes(group.Athletes.Count)}: {string.Join(", ", DifferenceText.Words(group.Kinds))}{First(group)}{Because(group.Cause)}");
            foreach (var example in group.Examples)
                yield return Line.Text(example.Athlete, $"{(example.Name is { } name && name != example.Athlete ? $"{name}: " : "")}{string.Join("; ", DifferenceText.Phrases(example, book))}");
            if (group.Athletes.Count > group.Examples.Count)
                yield return Line.Faint($"and {string.Join(", ", group.Athletes.Skip(group.Examples.Count).Take(MostGroups).Select(a => a.Athlete))}{(group.Athletes.Count - group.Examples.Count > MostGroups ? " ..." : "")}");
        }
        if (groups.Count > MostGroups)
            yield return Line.Faint($"{groups.Count - MostGroups} rarer ways to change, {groups.Skip(MostGroups).Sum(g => g.Athletes.Count)} athletes: see --format json.");
    }

    /// <summary>So many athletes.</summary>
    public static string Athletes(int count) => count == 1 ? "1 athlete" : $"{count} athletes";

    private static string First(ChangeGroup group)
        => (group.Kinds & ChangeKinds.FirstChoice) == 0 || group.FirstBefore == group.FirstAfter ? "" : $"; {group.FirstBefore ?? "nothing"} -> {group.FirstAfter ?? "nothing"}";

    private static string Because(Cause? cause) => cause is null ? "" : cause.How switch
    {
        CauseKind.Together => $"; because of edits {Numbers(cause)} together",
        CauseKind.NotToldApart => $"; because of one or more of edits {Numbers(cause)}, not told apart",
        _ => $"; because of {(cause.Edits.Count == 1 ? "edit" : "edits")} {Numbers(cause)}",
    };

    private static string Numbers(Cause cause) => string.Join(", ", cause.Edits.Select(e => e + 1));
}
