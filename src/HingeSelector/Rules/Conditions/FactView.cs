using HingeSelector.Words;

namespace HingeSelector.Rules.Conditions;

/// <summary>What a condition may look at: the athlete's facts, one candidate's facts, the findings so far.</summary>
/// <param name="Athlete">Fact table of the athlete.</param>
/// <param name="Candidate">Fact table of the candidate; empty for questions about the athlete alone.</param>
/// <param name="Findings">Findings by index.</param>
public readonly record struct FactView(FactValue[] Athlete, FactValue[] Candidate, Truth[] Findings)
{
    /// <summary>The value of a reading.</summary>
    public FactValue this[WordReading reading] => reading.Word.OfCandidate ? Candidate[reading.Slot] : Athlete[reading.Slot];
}
