using System.Text.Json;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Writes answers as one JSON document; its shape is rules/schema/recommendation.schema.json.</summary>
/// <remarks>Within a schema version properties are only added, never renamed or removed.</remarks>
public sealed class JsonAnswer : IDisposable
{
    /// <summary>Version of the shape.</summary>
    public const int SchemaVersion = 1;

    private readonly Utf8JsonWriter _json;
    private readonly RuleBook _book;
    private readonly JsonCandidate _candidate;
    private readonly Stream _output;

    /// <summary>Begins a document.</summary>
    /// <param name="output">Where the bytes go; it stays open.</param>
    /// <param name="book">The rules.</param>
    /// <param name="philosophy">Id of the philosophy.</param>
    /// <param name="on">Day of the answers.</param>
    public JsonAnswer(Stream output, RuleBook book, string philosophy, DateOnly on)
    {
        _output = output;
        _book = book;
        _json = new Utf8JsonWriter(output, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        _candidate = new JsonCandidate(_json, book, book.Philosophies[philosophy]);
        _json.WriteStartObject();
        _json.WriteNumber("schemaVersion", SchemaVersion);
        _json.WriteStartObject("stamp");
        _json.WriteString("toolVersion", Stamps.Tool);
        _json.WriteString("rulesHash", book.Hash);
        _json.WriteString("philosophy", philosophy);
        _json.WriteString("on", StampText.Date(on));
        _json.WriteEndObject();
        _json.WriteStartArray("athletes");
    }

    /// <summary>Adds the answer for one athlete.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="top">How many candidates at most.</param>
    public void Add(Recommendation answer, int top)
    {
        _json.WriteStartObject();
        WriteWho(answer);
        WriteStops(answer);
        WriteQuestions(answer);
        _json.WriteStartArray("candidates");
        foreach (var ranked in answer.Ranked.Take(top))
            _candidate.Write(answer, ranked);
        _json.WriteEndArray();
        WriteExcluded(answer);
        WriteFindings(answer);
        _json.WriteStartArray("cautions");
        foreach (var (text, trace) in answer.Cautions)
            JsonTrace.WriteText(_json, "text", text, trace);
        _json.WriteEndArray();
        WriteOpen(answer);
        _json.WriteStartArray("remarks");
        foreach (var remark in answer.Remarks)
            _json.WriteStringValue(remark);
        _json.WriteEndArray();
        _json.WriteEndObject();
        _json.Flush();
    }

    /// <summary>Ends the document.</summary>
    public void Finish()
    {
        _json.WriteEndArray();
        _json.WriteEndObject();
        _json.Flush();
        _output.Write("\n"u8);
        _output.Flush();
    }

    /// <inheritdoc/>
    public void Dispose() => _json.Dispose();

    private void WriteWho(Recommendation answer)
    {
        _json.WriteString("id", answer.Athlete.Id);
        _json.WriteString("name", answer.Athlete.Name);
        if (answer.Athlete.ScreenDate is { } date)
            _json.WriteString("screenDate", StampText.Date(date));
        else
            _json.WriteNull("screenDate");
        _json.WriteString("inputHash", answer.Stamp.Input);
        _json.WriteString("outcome", OutcomeText.Word(answer.Outcome));
        _json.WriteString("outcomeText", OutcomeText.Headline(answer));
    }

    private void WriteStops(Recommendation answer)
    {
        _json.WriteStartArray("stops");
        foreach (var stop in answer.Stops)
        {
            _json.WriteStartObject();
            _json.WriteString("level", OutcomeText.Word(stop.Level));
            if (OutcomeText.Word(stop.Answers) is { } who)
                _json.WriteString("answers", who);
            _json.WriteString("see", stop.See);
            _json.WriteString("say", stop.Say);
            JsonTrace.Write(_json, "rule", stop.Trace);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void WriteQuestions(Recommendation answer)
    {
        _json.WriteStartArray("unanswered");
        foreach (var (word, label) in answer.Unanswered)
        {
            _json.WriteStartObject();
            _json.WriteString("word", word);
            _json.WriteString("label", label);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void WriteExcluded(Recommendation answer)
    {
        _json.WriteStartArray("excluded");
        foreach (var exclusion in answer.Excluded)
        {
            _json.WriteStartObject();
            _json.WriteString("variant", exclusion.Variant.Id);
            _json.WriteString("label", exclusion.Variant.Label);
            _json.WriteStartArray("reasons");
            foreach (var (why, trace) in exclusion.Reasons)
                JsonTrace.WriteText(_json, "why", why, trace);
            _json.WriteEndArray();
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void WriteFindings(Recommendation answer)
    {
        _json.WriteStartArray("findings");
        foreach (var finding in _book.Findings.Where(f => answer.Findings.Contains(f.Id)))
        {
            _json.WriteStartObject();
            _json.WriteString("id", finding.Id);
            _json.WriteString("label", finding.Label);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void WriteOpen(Recommendation answer)
    {
        _json.WriteStartArray("open");
        foreach (var open in answer.Open)
        {
            _json.WriteStartObject();
            _json.WriteString("rule", open.Trace.Rule.Id);
            _json.WriteString("variant", open.Candidate);
            _json.WriteStartArray("missing");
            foreach (var word in open.Missing)
                _json.WriteStringValue(word);
            _json.WriteEndArray();
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }
}
