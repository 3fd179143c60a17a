using HingeSelector.Comparing;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Tells what a change of the rules does to a squad: what disappears first, then the edits, then who changes.</summary>
public static class ImpactText
{
    private const int MostAthletes = 10;

    /// <summary>The lines.</summary>
    /// <param name="impact">The impact.</param>
    /// <param name="book">The second rules.</param>
    public static IEnumerable<Line> Of(Impact impact, RuleBook book)
    {
        var counted = impact.Edits.Count(e => !e.IsWording);
        var wording = impact.Edits.Count - counted;
        yield return Line.Title($"{impact.Comparison.Changes.Count} of {ChangeGroupText.Athletes(impact.Comparison.Asked)} change; {counted} {(counted == 1 ? "edit" : "edits")}{(wording > 0 ? $", {wording} more in wording, sources or examples only" : "")}.");
        foreach (var line in Gone(impact))
            yield return line;
        if (counted > 0)
            yield return Line.Heading("Edited");
        for (var i = 0; i < impact.Edits.Count; i++)
        {
            foreach (var line in impact.Edits[i].IsWording ? [] : Edit(impact, i))
                yield return line;
        }
        foreach (var line in ChangeGroupText.Of(impact.Groups, book))
            yield return line;
        if (impact.Comparison.OnlyOneSide.Count > 0)
            yield return Line.Faint($"Readable with one of the two vocabularies only, not compared: {string.Join(", ", impact.Comparison.OnlyOneSide)}.");
        yield return Line.Faint("First, points, band and cues are compared by the plain evaluator; the examples shown are confirmed by the engine of record.");
    }

    private static IEnumerable<Line> Gone(Impact impact)
    {
        if (impact.Gone.Count == 0)
            yield break;
        yield return Line.Heading(impact.Fails ? "STOPS OR HOLDS DISAPPEAR" : "Stops or holds disappear, acknowledged");
        foreach (var gone in impact.Gone)
        {
            var who = gone.Athletes.Count == 0 ? "nobody on this roster has it now" : $"{ChangeGroupText.Athletes(gone.Athletes.Count)} of this roster: {string.Join(", ", gone.Athletes.Take(MostAthletes))}{(gone.Athletes.Count > MostAthletes ? " ..." : "")}";
            var place = gone.Was.Source is null ? "" : $" It was at {gone.Was.FileAndLine}.";
            yield return Line.Text("Gone", $"{gone.Id}: {gone.What}; {who}.{place}{(gone.Acknowledged ? " Acknowledged." : $" Meant so? Say --acknowledge {gone.Id}")}");
        }
    }

    private static IEnumerable<Line> Edit(Impact impact, int place)
    {
        var edit = impact.Edits[place];
        var label = $"{place + 1}";
        var count = impact.Affected[place] == 0 ? "changes nobody here" : $"changes {ChangeGroupText.Athletes(impact.Affected[place])}";
        foreach (var line in edit.Lines)
        {
            yield return Line.Text(label, $"{edit.Name} at {line.Span.FileAndLine}: {Said(line)}{(label.Length > 0 ? $"; {count}" : "")}");
            label = "";
        }
    }

    private static string Said(EditedLine line)
    {
        var what = line.What.Length == 0 ? "" : $"{line.What}: ";
        return line.Before is null ? $"new: {what}{line.After}" : line.After is null ? $"gone: {what}{line.Before}" : $"{what}{line.Before} -> {line.After}";
    }
}
