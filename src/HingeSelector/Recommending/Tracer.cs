using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Recommending;

/// <summary>Notes for a rule which facts it read and what they were.</summary>
internal sealed class Tracer(RuleBook book, CaseFacts facts, Truth[] findings)
{
    private static readonly string[] _answers = ["is absent", "is not decided", "is present"];

    public RuleTrace Trace(Firing firing) => new(book.Rules[firing.Rule], () => Read(firing));

    private List<FactRead> Read(Firing firing)
    {
        var rule = book.Rules[firing.Rule];
        var view = facts.View(firing.Candidate, findings);
        var read = new List<FactRead>();
        foreach (var condition in rule.OpenConditions)
        {
            foreach (var reading in Telling(condition, view))
                read.Add(new FactRead(reading.ToString(), Label(reading), reading.Word.Print(view[reading])));
            foreach (var (finding, _) in condition.Findings)
                read.Add(new FactRead(book.Findings[finding].Id, book.Findings[finding].Label, _answers[(sbyte)findings[finding] + 1]));
        }
        return [.. read.Distinct()];
    }

    /// <summary>Words that keep a rule from being decided.</summary>
    public IReadOnlyList<string> Missing(Firing firing)
    {
        var view = facts.View(firing.Candidate, findings);
        var missing = new List<string>();
        foreach (var condition in book.Rules[firing.Rule].OpenConditions)
        {
            if (condition.Evaluate(view) != Truth.Open)
                continue;
            missing.AddRange(condition.Reads.Where(r => !IsDecided(view[r])).Select(r => r.Word.Id));
            missing.AddRange(condition.Findings.Where(f => findings[f.Finding] == Truth.Open).Select(f => book.Findings[f.Finding].Id));
        }
        return [.. missing.Distinct(StringComparer.Ordinal)];
    }

    private static bool IsDecided(FactValue value) => value.State == FactState.NotApplicable || (value.IsKnown && (value.IsExact || value.Bits != 0));

    // Of a condition over many words only those that make it hold are worth telling.
    private static IEnumerable<WordReading> Telling(Condition condition, FactView view)
    {
        if (condition is not AnyCondition any || any.Evaluate(view) != Truth.True)
            return condition.Reads;
        return any.Parts.Where(p => p.Evaluate(view) == Truth.True).SelectMany(p => p.Reads);
    }

    private static string Label(WordReading reading) => reading.Name is null ? reading.Word.Label : $"{reading.Word.Label}, {reading.Name}";
}
