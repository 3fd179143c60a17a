using HingeSelector.Examples.Proposing;

namespace HingeSelector.Rendering;

/// <summary>Examples that are missing, as YAML to paste.</summary>
public static class ProposalText
{
    private const int Indent = 8;

    /// <summary>The lines by example, with the place below which they belong.</summary>
    public static IEnumerable<string> Rows(IEnumerable<Proposal> proposals)
    {
        foreach (var group in proposals.GroupBy(p => (p.Rule.Id, p.Fired.At.Span)))
        {
            yield return $"{group.Key.Span.FileAndLine}: {group.Key.Id}, below this example:";
            foreach (var line in TriesEdit.Lines(group, Indent))
                yield return line;
            yield return "";
        }
    }

    /// <summary>Writes the proposals as JSON.</summary>
    public static void WriteJson(Stream output, IReadOnlyList<Proposal> proposals) => JsonPages.Write(output, json => JsonPages.List(json, "proposals", proposals, p =>
    {
        json.WriteString("rule", p.Rule.Id);
        json.WriteString("below", p.Fired.At.Span.ToString());
        json.WriteString("key", p.Key);
        json.WriteString("item", p.Item);
        json.WriteStartArray("shows");
        foreach (var item in p.Shows)
            json.WriteStringValue($"{item.Line.Condition.Text}: {item.Says}");
        json.WriteEndArray();
        json.WriteStartArray("kills");
        foreach (var mutant in p.Kills)
            json.WriteStringValue($"{mutant.Mutation.At.Text} -> {mutant.Mutation.Says}");
        json.WriteEndArray();
    }));
}
