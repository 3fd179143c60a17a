using HingeSelector.Rules.Conditions;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>The facts that an example gives: measured ones as in a screen; readings, computed words and findings directly.</summary>
/// <param name="Answers">Answers to measured words.</param>
/// <param name="Clearances">Letters of clinicians.</param>
/// <param name="HeldHeights">Held heights pull by pull.</param>
/// <param name="Words">Measured words that are spoken about, also those said to be not measured.</param>
/// <param name="Readings">Readings that are given directly.</param>
/// <param name="Findings">Findings that are given directly.</param>
internal sealed record GivenFacts(
    IReadOnlyDictionary<AnswerKey, Answer> Answers,
    IReadOnlyList<Clearance> Clearances,
    IReadOnlyList<HeldEntry> HeldHeights,
    IReadOnlySet<string> Words,
    IReadOnlyList<(WordReading Reading, FactValue Value)> Readings,
    IReadOnlyList<(int Finding, Truth Truth)> Findings)
{
    /// <summary>The key of letters, which are given as in a screen.</summary>
    public const string ClearancesKey = "clearances";

    private const string HeldHeightWords = "held-height";

    /// <summary>These facts with some of them changed; a change to a word replaces all that was said of it.</summary>
    public GivenFacts With(GivenFacts changes)
    {
        var readings = changes.Readings.Select(r => r.Reading).ToHashSet();
        var findings = changes.Findings.Select(f => f.Finding).ToHashSet();
        return new GivenFacts(
            changes.Words.Count == 0 ? Answers : Merged(changes),
            changes.Words.Contains(ClearancesKey) ? changes.Clearances : Clearances,
            changes.Words.Any(w => w.StartsWith(HeldHeightWords, StringComparison.Ordinal)) ? changes.HeldHeights : HeldHeights,
            Words,
            [.. Readings.Where(r => !readings.Contains(r.Reading) && !changes.Words.Contains(r.Reading.Word.Id)), .. changes.Readings],
            [.. Findings.Where(f => !findings.Contains(f.Finding)), .. changes.Findings]);
    }

    /// <summary>Writes the readings of the athlete over what was worked out.</summary>
    public void WriteAthlete(FactValue[] table) => Write(table, false);

    /// <summary>Writes the readings of the candidate over what was worked out.</summary>
    public void WriteCandidate(FactValue[] table) => Write(table, true);

    /// <summary>Writes the findings over what was worked out.</summary>
    public void WriteFindings(Truth[] findings)
    {
        foreach (var (finding, truth) in Findings)
            findings[finding] = truth;
    }

    private Dictionary<AnswerKey, Answer> Merged(GivenFacts changes)
    {
        var merged = new Dictionary<AnswerKey, Answer>();
        foreach (var (key, answer) in Answers)
        {
            if (!changes.Words.Contains(key.Word))
                merged.Add(key, answer);
        }
        foreach (var (key, answer) in changes.Answers)
            merged[key] = answer;
        return merged;
    }

    private void Write(FactValue[] table, bool ofCandidate)
    {
        foreach (var (reading, value) in Readings)
        {
            if (reading.Word.OfCandidate == ofCandidate)
                table[reading.Slot] = value;
        }
    }
}
