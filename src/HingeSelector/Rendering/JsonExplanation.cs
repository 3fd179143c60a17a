using System.Text.Json;
using HingeSelector.Explaining;
using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Words;

namespace HingeSelector.Rendering;

/// <summary>Writes one explanation as a JSON document; its shape is rules/schema/explanation.schema.json.</summary>
/// <remarks>Within a schema version properties are only added, never renamed or removed. With an emergency only the head is written.</remarks>
public sealed partial class JsonExplanation : IDisposable
{
    /// <summary>Version of the shape.</summary>
    public const int SchemaVersion = 1;

    private readonly Utf8JsonWriter _json;
    private readonly RuleBook _book;
    private readonly Stream _output;
    private readonly Recommendation _answer;

    /// <summary>Begins a document with who it is about and what holds.</summary>
    /// <param name="output">Where the bytes go; it stays open.</param>
    /// <param name="book">The rules.</param>
    /// <param name="answer">The answer that is explained.</param>
    public JsonExplanation(Stream output, RuleBook book, Recommendation answer)
    {
        (_output, _book, _answer) = (output, book, answer);
        _json = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        _json.WriteStartObject();
        _json.WriteNumber("schemaVersion", SchemaVersion);
        WriteStamp(answer.Stamp);
        WriteAthlete(answer);
    }

    private bool IsSilent => !ExplanationHead.MayFollow(_answer);

    /// <summary>Ends the document.</summary>
    public void Finish()
    {
        _json.WriteEndObject();
        _json.Flush();
        _output.Write("\n"u8);
        _output.Flush();
    }

    /// <inheritdoc/>
    public void Dispose() => _json.Dispose();

    private void WriteStamp(Stamp stamp)
    {
        _json.WriteStartObject("stamp");
        _json.WriteString("toolVersion", stamp.Tool);
        _json.WriteString("rulesHash", stamp.Rules);
        _json.WriteString("philosophy", stamp.Philosophy);
        _json.WriteString("on", StampText.Date(stamp.On));
        _json.WriteString("inputHash", stamp.Input);
        _json.WriteEndObject();
    }

    private void WriteAthlete(Recommendation answer)
    {
        _json.WriteStartObject("athlete");
        _json.WriteString("id", answer.Athlete.Id);
        _json.WriteString("name", answer.Athlete.Name);
        _json.WriteString("outcome", OutcomeText.Word(answer.Outcome));
        _json.WriteString("outcomeText", OutcomeText.Headline(answer));
        WriteStops("stops", answer.Stops);
        _json.WriteStartArray("unanswered");
        foreach (var (word, label) in answer.Unanswered)
        {
            _json.WriteStartObject();
            _json.WriteString("word", word);
            _json.WriteString("label", label);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        WriteVariant("first", answer.Ranked.Count > 0 ? answer.Ranked[0].Candidate.Variant : null);
        _json.WriteEndObject();
    }

    private void WriteStops(string property, IReadOnlyList<StopNotice> stops)
    {
        _json.WriteStartArray(property);
        foreach (var stop in stops)
        {
            _json.WriteStartObject();
            _json.WriteString("level", OutcomeText.Word(stop.Level));
            _json.WriteString("see", stop.See);
            _json.WriteString("say", stop.Say);
            WriteRule(stop.Trace.Rule);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void WriteVariant(string property, Variant? variant)
    {
        if (variant is null)
        {
            _json.WriteNull(property);
            return;
        }
        _json.WriteStartObject(property);
        _json.WriteString("variant", variant.Id);
        _json.WriteString("label", variant.Label);
        _json.WriteEndObject();
    }

    private void WriteRule(Rule? rule)
    {
        if (rule is null)
        {
            _json.WriteNull("rule");
            return;
        }
        _json.WriteStartObject("rule");
        _json.WriteString("id", rule.Id);
        _json.WriteString("file", rule.Span.Source?.Path);
        _json.WriteNumber("line", rule.Span.Line + 1);
        _json.WriteString("because", rule.Because);
        _json.WriteString("grade", GradeText.Word(rule.Grade));
        _json.WriteBoolean("disputed", rule.Disputed);
        WriteStrings("sources", rule.Sources);
        _json.WriteEndObject();
    }

    private void WriteStrings(string property, IEnumerable<string> texts)
    {
        _json.WriteStartArray(property);
        foreach (var text in texts)
            _json.WriteStringValue(text);
        _json.WriteEndArray();
    }

    // A number in the unit in which its word is written, beside the text for people.
    private void WriteNumber(string property, double? value, Word? word)
    {
        if (value is not { } number)
        {
            _json.WriteNull(property);
            return;
        }
        _json.WriteStartObject(property);
        _json.WriteNumber("value", Math.Round(number / (word?.Unit?.Factor ?? 1), 6));
        _json.WriteString("unit", word?.Unit?.Symbol);
        _json.WriteString("text", ShortfallText.Fine(number, word?.Unit));
        _json.WriteEndObject();
    }

    private void WriteNullable(string property, double? value, int decimals)
    {
        if (value is { } number)
            _json.WriteNumber(property, Math.Round(number, decimals));
        else
            _json.WriteNull(property);
    }

    private void WriteNullable(string property, int? value)
    {
        if (value is { } number)
            _json.WriteNumber(property, number);
        else
            _json.WriteNull(property);
    }

    private void WriteLeftOut(IReadOnlyList<LeftOut> leftOut)
    {
        _json.WriteStartArray("notMoved");
        foreach (var (why, words) in leftOut)
        {
            _json.WriteStartObject();
            _json.WriteString("why", why);
            WriteStrings("words", words.Select(w => w.Id));
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    // kebab-case, as every closed list in these documents.
    private static string Word<T>(T value)
        where T : struct, Enum
        => string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
