using System.Text.Json;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Writes one candidate: place, points, set-up, reasons, cues.</summary>
internal sealed class JsonCandidate(Utf8JsonWriter json, RuleBook book)
{
    private readonly JsonSetUp _setUp = new(json, book);

    public void Write(Recommendation answer, RankedCandidate ranked)
    {
        json.WriteStartObject();
        json.WriteNumber("place", ranked.Place);
        json.WriteBoolean("tiedWithFirst", ranked.TiedWithFirst);
        json.WriteString("variant", ranked.Candidate.Variant.Id);
        json.WriteString("label", ranked.Candidate.Variant.Label);
        json.WriteBoolean("isBlockVariant", ranked.IsStanding);
        json.WriteNumber("score", ranked.Score);
        WritePoints(ranked, book.Philosophies[answer.Stamp.Philosophy].Weights);
        _setUp.Write(answer, ranked);
        WriteChanges(ranked);
        WriteReasons(ranked);
        json.WriteStartArray("cues");
        foreach (var (say, trace) in ranked.Cues)
            JsonTrace.WriteText(json, "say", say, trace);
        json.WriteEndArray();
        json.WriteStartArray("cautions");
        foreach (var (text, trace) in ranked.Cautions)
            JsonTrace.WriteText(json, "text", text, trace);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WritePoints(RankedCandidate ranked, IReadOnlyList<int> weights)
    {
        json.WriteStartArray("points");
        foreach (var criterion in book.Criteria)
        {
            var (points, weight) = (ranked.Points[criterion.Index], weights[criterion.Index]);
            json.WriteStartObject();
            json.WriteString("criterion", criterion.Id);
            json.WriteString("label", criterion.Label);
            json.WriteNumber("points", points);
            json.WriteNumber("weight", weight);
            json.WriteNumber("baseWeight", criterion.Weight);
            json.WriteNumber("weighted", points * weight);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void WriteChanges(RankedCandidate ranked)
    {
        json.WriteStartArray("changes");
        foreach (var (change, trace) in ranked.Changes)
            JsonTrace.WriteText(json, "change", change, trace);
        json.WriteEndArray();
    }

    private void WriteReasons(RankedCandidate ranked)
    {
        json.WriteStartArray("reasons");
        foreach (var reason in ranked.Reasons)
        {
            json.WriteStartObject();
            json.WriteNumber("points", reason.Points);
            json.WriteString("criterion", book.Criteria[reason.Criterion].Id);
            JsonTrace.Write(json, "rule", reason.Trace);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
