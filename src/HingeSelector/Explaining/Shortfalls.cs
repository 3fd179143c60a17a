using HingeSelector.Posture;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Measures how far conditions are from turning out the other way, for one athlete.</summary>
internal sealed class Shortfalls(RuleBook book, DecidedCase decided)
{
    private static readonly string[] _answers = ["is absent", "is not decided", "is present"];

    /// <summary>What would keep a rule that holds from holding, with the least effort.</summary>
    public Shortfall? ToEnd(Rule rule, int candidate) => rule.OpenConditions.Select(c => Turn(c, candidate)).OfType<Shortfall>().MinBy(s => s.Nearness);

    /// <summary>The one condition that keeps a rule from holding; null when it holds, is open, or misses by more than one.</summary>
    public Shortfall? ToHold(Rule rule, int candidate)
    {
        var view = decided.Cases.View(candidate, decided.Explained.Findings);
        Condition? failing = null;
        foreach (var condition in rule.OpenConditions)
        {
            var truth = condition.Evaluate(view);
            if (truth == Truth.Open || (truth == Truth.False && failing is not null))
                return null;
            failing = truth == Truth.False ? condition : failing;
        }
        return failing is null ? null : Turn(failing, candidate);
    }

    // What it takes to turn a condition: of several parts that must all turn the farthest, of several of which one is enough the nearest.
    private Shortfall? Turn(Condition condition, int candidate)
    {
        var view = decided.Cases.View(candidate, decided.Explained.Findings);
        var holds = condition.Evaluate(view) == Truth.True;
        IEnumerable<Shortfall> Parts(IReadOnlyList<Condition> parts) => parts.Where(p => p.Evaluate(view) == Truth.True == holds).Select(p => Turn(p, candidate)).OfType<Shortfall>();
        return condition switch
        {
            NumberCondition number => Number(number, candidate, view),
            AllCondition all => holds ? Parts(all.Parts).MinBy(s => s.Nearness) : Parts(all.Parts).MaxBy(s => s.Nearness),
            AnyCondition any => holds ? Parts(any.Parts).MaxBy(s => s.Nearness) : Parts(any.Parts).MinBy(s => s.Nearness),
            NotCondition not => Turn(not.Part, candidate),
            FindingCondition finding => Finding(finding),
            _ => condition.Reads.FirstOrDefault() is { } read ? new Shortfall(condition, LabelOf(read), read.Word, read.Word.Print(view[read]), null, null, null) : null,
        };
    }

    private Shortfall Finding(FindingCondition condition)
    {
        var finding = book.Findings[condition.Finding];
        return new Shortfall(condition, finding.Label, null, _answers[(sbyte)decided.Explained.Findings[condition.Finding] + 1], null, null, null);
    }

    private Shortfall Number(NumberCondition condition, int candidate, in FactView view)
    {
        var (word, value) = (condition.Reading.Word, view[condition.Reading]);
        var now = word.Print(value);
        // Pain, age and the like are told as they are; no distance is given as if they could be moved.
        if (!value.IsExact || (word.IsMeasured && Changeable.WhyNot(book.Vocabulary, word) is not null))
            return new Shortfall(condition, LabelOf(condition.Reading), word, now, null, null, null);
        var needed = Edge(condition.Interval, value.Low);
        if (!double.IsFinite(needed))
            return new Shortfall(condition, LabelOf(condition.Reading), word, now, null, null, null);
        var distance = Math.Abs(needed - value.Low);
        var error = ErrorOf(word, value.Low, candidate);
        return new Shortfall(condition, LabelOf(condition.Reading), word, now, needed, distance, error > 0 ? distance / error : null) { Value = value.Low };
    }

    // The end of the interval that must be crossed: from outside the near one, from inside the nearer one.
    private static double Edge(Interval interval, double value)
    {
        if (interval.Contains(value))
            return value - interval.Low <= interval.High - value ? interval.Low : interval.High;
        return value <= interval.Low ? interval.Low : interval.High;
    }

    private double? ErrorOf(Word word, double value, int candidate)
    {
        if (word.IsMeasured)
            return word.ErrorOf(value);
        var margins = candidate < 0 ? null : decided.Chosen[candidate].Candidate.Choice?.Margins;
        Spare? spare = word.Id switch
        {
            "hip-spare" => margins?.HipFlexion,
            "groin-spare" => margins?.HipAbduction,
            "turn-out-spare" => margins?.TurnOut,
            "ankle-spare" => margins?.Dorsiflexion,
            _ => null,
        };
        return spare?.Error.Degrees;
    }

    private static string LabelOf(WordReading reading) => reading.Name is null ? reading.Word.Label : $"{reading.Word.Label}, {reading.Name}";
}
