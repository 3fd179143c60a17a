using System.Globalization;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rendering;

/// <summary>Tells a derivation: the sum of points first, then every rule that holds, then those that wait for facts.</summary>
public sealed class DerivationText(RuleBook book)
{
    private static readonly (string Title, Type Conclusion)[] _parts =
    [
        ("Stops", typeof(StopConclusion)),
        ("Exclusions", typeof(ExclusionConclusion)),
        ("Points", typeof(PointsConclusion)),
        ("Set-up", typeof(RequestConclusion)),
        ("Findings", typeof(FindingConclusion)),
    ];

    /// <summary>The lines.</summary>
    /// <param name="answer">The answer that is explained.</param>
    /// <param name="derivation">How it came about.</param>
    public IEnumerable<Line> Of(Recommendation answer, Derivation derivation)
    {
        yield return AthleteText.Title(answer);
        foreach (var line in answer.Stops.SelectMany(AthleteText.Stop))
            yield return line;
        if (answer.Outcome == Outcome.Emergency)
            yield break;
        var mayPull = answer.Outcome is Outcome.Ranked or Outcome.LimitedToday;
        foreach (var line in mayPull ? Head(answer, derivation) : Held(answer))
            yield return line;
        foreach (var line in Rules(derivation, mayPull))
            yield return line;
        foreach (var line in mayPull ? SwitchedOff(derivation) : [])
            yield return line;
        if (derivation.Open.Count > 0)
            yield return Line.Heading("Rules that wait for facts");
        foreach (var open in derivation.Open)
            yield return Line.Text("Open", $"{TraceText.Rule(open.Trace.Rule)} waits for {string.Join(", ", open.Missing)}");
        yield return Line.Faint(StampText.Of(answer.Stamp));
    }

    private static IEnumerable<Line> Held(Recommendation answer)
    {
        foreach (var (word, label) in answer.Unanswered)
            yield return Line.Text("Ask", $"{label} ({word})");
        yield return Line.Text("Remark", "Nothing is ranked while this holds, so points and set-up are not told.");
    }

    private static IEnumerable<Line> Head(Recommendation answer, Derivation derivation)
    {
        var label = derivation.Variant.Label;
        var ranked = answer.Ranked.FirstOrDefault(r => r.Candidate.Variant.Index == derivation.Variant.Index);
        yield return Line.Heading(ranked is null ? $"{label}: out" : $"{label}: place {AthleteText.Place(ranked)} of {answer.Ranked.Count}, {ranked.Score} points");
        foreach (var (why, trace) in answer.Excluded.FirstOrDefault(e => e.Variant.Index == derivation.Variant.Index)?.Reasons ?? [])
            yield return Line.Text("Out", $"{why} (rule {trace.Rule.Id})");
        yield return Line.Heading("Sum of points");
        foreach (var sum in derivation.Sums)
            yield return Line.Text("", Sum(sum));
        yield return Line.Text("", $"Total: {derivation.Total.ToString(CultureInfo.InvariantCulture)}");
    }

    private static string Sum(CriterionSum sum)
    {
        var raw = sum.Amounts.Sum();
        var kept = raw == sum.Clamped ? "" : $", kept at {AthleteText.WithSign(sum.Clamped)}";
        var added = sum.Amounts.Count == 0 ? "0" : string.Join(" ", sum.Amounts.Select(AthleteText.WithSign)) + (sum.Amounts.Count > 1 ? $" = {AthleteText.WithSign(raw)}" : "");
        return $"{sum.Criterion.Label}: {added}{kept}; times weight {sum.Weight} = {AthleteText.WithSign(sum.Weighted)}{PhilosophyText.Weight(sum.Criterion, sum.Weight)}";
    }

    private IEnumerable<Line> Rules(Derivation derivation, bool mayPull)
    {
        var left = derivation.Rules.ToList();
        foreach (var (title, conclusion) in mayPull ? _parts : _parts.Where(p => p.Conclusion == typeof(StopConclusion) || p.Conclusion == typeof(FindingConclusion)))
        {
            var part = left.Where(r => r.Rule.Conclusions.Any(c => c.GetType() == conclusion)).ToList();
            left.RemoveAll(part.Contains);
            foreach (var line in Part(title, part))
                yield return line;
        }
        foreach (var line in mayPull ? Part("Cues and cautions", left) : [])
            yield return line;
    }

    private IEnumerable<Line> SwitchedOff(Derivation derivation)
    {
        foreach (var (rule, change) in derivation.SwitchedOff)
        {
            yield return Line.Heading($"Switched off: {TraceText.Rule(rule)} {TraceText.Trust(rule)}");
            foreach (var conclusion in rule.Conclusions)
                yield return Line.Text("Would", ConclusionText.Of(book, conclusion));
            yield return Line.Text("Changed", PhilosophyText.Changed(change));
        }
    }

    private IEnumerable<Line> Part(string title, List<DerivedRule> rules)
    {
        foreach (var rule in rules)
        {
            yield return Line.Heading($"{title}: {TraceText.Rule(rule.Rule)} {TraceText.Trust(rule.Rule)}");
            foreach (var (condition, facts) in rule.Conditions)
                yield return Line.Text("When", facts.Count == 0 ? condition : $"{condition} <- {string.Join("; ", facts.Select(TraceText.Fact))}");
            foreach (var conclusion in rule.Rule.Conclusions)
                yield return Line.Text("Then", ConclusionText.Of(book, conclusion));
            yield return Line.Text("Because", rule.Rule.Because);
            if (rule.Rule.Change is { } change)
                yield return Line.Text("Changed", PhilosophyText.Changed(change));
        }
    }
}
