using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>What an answer rests on before any rule is asked: rules with the same words, variants, model and assumptions may share it.</summary>
/// <param name="Facts">Fact table of the athlete.</param>
/// <param name="Builder">Builds the candidates; remembers set-ups that it has searched.</param>
/// <param name="Standard">Every variant at its standard set-up.</param>
/// <param name="Table">Writes candidates into fact tables.</param>
/// <remarks>Belongs to one athlete and one thread.</remarks>
internal sealed record Groundwork(FactValue[] Facts, CandidateBuilder Builder, IReadOnlyList<Candidate> Standard, CandidateTable Table)
{
    private readonly Dictionary<int, FactValue[]> _shifted = [];

    /// <summary>The facts off by their errors; worked out once for each direction.</summary>
    public FactValue[] Shifted(int sign, Func<FactValue[]> make)
    {
        if (!_shifted.TryGetValue(sign, out var facts))
            _shifted[sign] = facts = make();
        return facts;
    }
}
