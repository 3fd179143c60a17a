using System.Text.Json;
using HingeSelector.Rules;
using HingeSelector.Screening;

namespace HingeSelector.Rendering;

/// <summary>Writes philosophies: what one changes of the base, and the decision that put it in force.</summary>
internal static class JsonPhilosophy
{
    /// <summary>What a philosophy does to one rule.</summary>
    public static void Write(Utf8JsonWriter json, RuleChange change)
    {
        json.WriteStartObject();
        json.WriteString("philosophy", change.Philosophy);
        json.WriteString("rule", change.Rule);
        json.WriteString("kind", PhilosophyText.Word(change.Kind));
        json.WriteString("what", change.What);
        json.WriteString("reason", change.Reason);
        json.WriteString("file", change.Span.Source?.Path);
        json.WriteNumber("line", change.Span.Line + 1);
        json.WriteEndObject();
    }

    /// <summary>The philosophy of one answer.</summary>
    public static void Write(Utf8JsonWriter json, string philosophy, PhilosophyDecision? decision)
    {
        json.WriteStartObject();
        json.WriteString("id", philosophy);
        json.WriteBoolean("ofRecord", decision is not null);
        if (decision is not null)
        {
            json.WriteString("since", StampText.Date(decision.Since));
            json.WriteString("decidedBy", decision.DecidedBy);
            if (decision.TrainingGroup is { } group)
                json.WriteString("trainingGroup", group);
        }
        json.WriteEndObject();
    }

    /// <summary>A philosophy with everything that it changes.</summary>
    public static void Write(Utf8JsonWriter json, RuleBook book, string id)
    {
        var philosophy = book.Philosophies[id];
        json.WriteStartObject();
        json.WriteString("id", id);
        json.WriteString("label", philosophy.Label);
        json.WriteStartArray("weights");
        foreach (var change in philosophy.Changes)
        {
            json.WriteStartObject();
            json.WriteString("criterion", book.Criteria[change.Criterion].Id);
            json.WriteNumber("weight", change.After);
            json.WriteNumber("baseWeight", change.Before);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("rules");
        foreach (var change in book.Overlays.GetValueOrDefault(id)?.Changes ?? [])
            Write(json, change);
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
