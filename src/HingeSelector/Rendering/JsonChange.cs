using System.Text.Json;
using HingeSelector.Comparing;

namespace HingeSelector.Rendering;

/// <summary>Writes what differs between two answers, and the groups of athletes in which it does.</summary>
internal sealed class JsonChange(Utf8JsonWriter json)
{
    /// <summary>All groups.</summary>
    public void Groups(IReadOnlyList<ChangeGroup> groups, IReadOnlyList<string> criteriaBefore, IReadOnlyList<string> criteriaAfter)
    {
        json.WriteStartArray("groups");
        foreach (var group in groups)
        {
            json.WriteStartObject();
            Strings("changes", DifferenceText.Words(group.Kinds));
            json.WriteString("firstBefore", group.FirstBefore);
            json.WriteString("firstAfter", group.FirstAfter);
            if (group.Cause is { } cause)
                WriteCause(cause);
            Strings("athletes", group.Athletes.Select(a => a.Athlete));
            json.WriteStartArray("examples");
            foreach (var example in group.Examples)
                Example(example, criteriaBefore, criteriaAfter);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A list of texts.</summary>
    public void Strings(string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private void WriteCause(Cause cause)
    {
        json.WriteStartObject("cause");
        json.WriteString("how", cause.How switch
        {
            CauseKind.Alone => "each-alone",
            CauseKind.Together => "only-together",
            _ => "not-told-apart",
        });
        json.WriteStartArray("edits");
        foreach (var edit in cause.Edits)
            json.WriteNumberValue(edit + 1);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Example(AthleteChange change, IReadOnlyList<string> criteriaBefore, IReadOnlyList<string> criteriaAfter)
    {
        json.WriteStartObject();
        json.WriteString("id", change.Athlete);
        json.WriteString("name", change.Name);
        json.WritePropertyName("before");
        WritePicture(change.Before, criteriaBefore);
        json.WritePropertyName("after");
        WritePicture(change.After, criteriaAfter);
        json.WriteEndObject();
    }

    private void WritePicture(Picture picture, IReadOnlyList<string> criteria)
    {
        json.WriteStartObject();
        json.WriteString("philosophy", picture.Philosophy);
        json.WriteString("outcome", OutcomeText.Word(picture.Outcome));
        json.WriteStartArray("stops");
        foreach (var stop in picture.Stops)
        {
            json.WriteStartObject();
            json.WriteString("rule", stop.Rule);
            json.WriteString("level", OutcomeText.Word(stop.Level));
            Strings("allows", stop.Allowed.Order(StringComparer.Ordinal));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        Strings("holds", picture.Holds);
        Strings("out", picture.Out);
        Strings("cautions", picture.Cautions);
        json.WriteStartArray("order");
        foreach (var variant in picture.Ranked)
            WriteVariant(variant, criteria);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteVariant(PicturedVariant variant, IReadOnlyList<string> criteria)
    {
        json.WriteStartObject();
        json.WriteString("variant", variant.Id);
        json.WriteString("label", variant.Label);
        json.WriteBoolean("tiedWithFirst", variant.Tied);
        json.WriteNumber("score", variant.Score);
        json.WriteStartObject("points");
        for (var i = 0; i < criteria.Count; i++)
            json.WriteNumber(criteria[i], variant.Points[i]);
        json.WriteEndObject();
        json.WriteString("start", DifferenceText.Band(variant.Band));
        json.WriteStartObject("setUp");
        foreach (var (key, word) in variant.Wishes.Words.OrderBy(w => w.Key, StringComparer.Ordinal))
            json.WriteString(key, word);
        json.WriteEndObject();
        Strings("cues", variant.Cues);
        Strings("cautions", variant.Cautions);
        json.WriteEndObject();
    }
}
