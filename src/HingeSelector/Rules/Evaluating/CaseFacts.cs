using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Evaluating;

/// <summary>The fact tables of one athlete on one day: the athlete's own and one per candidate.</summary>
/// <param name="Athlete">Fact table of the athlete.</param>
/// <param name="Candidates">Fact table of each variant, by place in the catalogue.</param>
public sealed record CaseFacts(FactValue[] Athlete, FactValue[][] Candidates)
{
    private static readonly FactValue[] _none = [];

    /// <summary>What a condition may look at.</summary>
    /// <param name="candidate">Place of the variant; <see cref="Firing.OfAthlete"/> for the athlete alone.</param>
    /// <param name="findings">Findings so far.</param>
    public FactView View(int candidate, Truth[] findings) => new(Athlete, candidate < 0 ? _none : Candidates[candidate], findings);
}
