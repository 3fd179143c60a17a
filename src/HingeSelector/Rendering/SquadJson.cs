using System.Globalization;
using System.Text.Json;
using HingeSelector.Examples.Squads;

namespace HingeSelector.Rendering;

/// <summary>Golden squads as JSON; the shape is rules/schema/squad.schema.json.</summary>
public static class SquadJson
{
    /// <summary>Version of the shape.</summary>
    public const int SchemaVersion = 1;

    private const string Day = "yyyy-MM-dd";

    /// <summary>Writes a record: the same decisions always give the same bytes.</summary>
    public static void Write(Stream output, SquadRecord record) => JsonPages.Write(output, json =>
    {
        json.WriteNumber("schemaVersion", SchemaVersion);
        json.WriteStartObject("stamp");
        json.WriteString("toolVersion", record.Tool);
        json.WriteString("rulesHash", record.RulesHash);
        json.WriteString("philosophy", record.Input.Philosophy);
        json.WriteString("on", record.Input.On.ToString(Day, CultureInfo.InvariantCulture));
        json.WriteEndObject();
        json.WriteStartObject("input");
        WriteFile(json, "roster", record.Input.Roster);
        WriteFile(json, "room", record.Input.Room);
        WriteFile(json, "standing", record.Input.Standing);
        json.WriteEndObject();
        JsonPages.List(json, "athletes", record.Athletes, a => WriteAthlete(json, a));
    });

    /// <summary>Reads a record.</summary>
    /// <exception cref="FormatException">The text is not a record of this shape; the message says what is missing.</exception>
    public static SquadRecord Read(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            if (root.GetProperty("schemaVersion").GetInt32() != SchemaVersion)
                throw new FormatException($"the record has another schemaVersion than {SchemaVersion}");
            var (stamp, input) = (root.GetProperty("stamp"), root.GetProperty("input"));
            return new SquadRecord(
                Text(stamp, "toolVersion"), Text(stamp, "rulesHash"),
                new SquadInput(DateOnly.ParseExact(Text(stamp, "on"), Day, CultureInfo.InvariantCulture), Text(stamp, "philosophy"), File(input, "roster")!, File(input, "room"), File(input, "standing")),
                [.. root.GetProperty("athletes").EnumerateArray().Select(Athlete)]);
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new FormatException($"it is not a recorded squad ({fault.Message})", fault);
        }
    }

    private static void WriteFile(Utf8JsonWriter json, string name, SquadFile? file)
    {
        if (file is null)
        {
            json.WriteNull(name);
            return;
        }
        json.WriteStartObject(name);
        json.WriteString("name", file.Name);
        // A row a line: a changed row is one changed line in a comparison of two records.
        Strings(json, "lines", file.Text.Split('\n'));
        json.WriteEndObject();
    }

    private static void WriteAthlete(Utf8JsonWriter json, AthleteDecision athlete)
    {
        json.WriteString("id", athlete.Id);
        json.WriteString("outcome", athlete.Outcome);
        Strings(json, "stops", athlete.Stops);
        Strings(json, "unanswered", athlete.Unanswered);
        JsonPages.List(json, "ranked", athlete.Ranked, c => WriteCandidate(json, c));
        Strings(json, "excluded", athlete.Excluded);
        Strings(json, "cautions", athlete.Cautions);
    }

    private static void WriteCandidate(Utf8JsonWriter json, CandidateDecision candidate)
    {
        json.WriteString("variant", candidate.Variant);
        json.WriteNumber("place", candidate.Place);
        json.WriteNumber("score", candidate.Score);
        json.WriteStartObject("points");
        foreach (var (criterion, points) in candidate.Points)
            json.WriteNumber(criterion, points);
        json.WriteEndObject();
        json.WriteString("height", candidate.FirstTry);
        json.WriteString("grip", candidate.Grip);
        Strings(json, "setUp", candidate.SetUp);
        Strings(json, "cues", candidate.Cues);
        Strings(json, "cautions", candidate.Cautions);
    }

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
            json.WriteStringValue(item);
        json.WriteEndArray();
    }

    private static AthleteDecision Athlete(JsonElement json) => new(
        Text(json, "id"), Text(json, "outcome"), Strings(json, "stops"), Strings(json, "unanswered"),
        [.. json.GetProperty("ranked").EnumerateArray().Select(Candidate)], Strings(json, "excluded"), Strings(json, "cautions"));

    private static CandidateDecision Candidate(JsonElement json) => new(
        Text(json, "variant"), json.GetProperty("place").GetInt32(), json.GetProperty("score").GetInt32(),
        json.GetProperty("points").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetInt32(), StringComparer.Ordinal),
        json.GetProperty("height").GetString(), json.GetProperty("grip").GetString(), Strings(json, "setUp"), Strings(json, "cues"), Strings(json, "cautions"));

    private static SquadFile? File(JsonElement json, string name) => json.GetProperty(name) is { ValueKind: JsonValueKind.Object } file ? new SquadFile(Text(file, "name"), string.Join('\n', Strings(file, "lines"))) : null;

    private static string Text(JsonElement json, string name) => json.GetProperty(name).GetString() ?? throw new FormatException($"'{name}' is empty");

    private static IReadOnlyList<string> Strings(JsonElement json, string name) => [.. json.GetProperty(name).EnumerateArray().Select(e => e.GetString() ?? "")];
}
