using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Rules.Firing;

/// <summary>What a rule is asked about; the network's facts are subjects and marks.</summary>
internal abstract class Subject(Recorder recorder, int candidate, in FactView view)
{
    private readonly FactView _view = view;

    /// <summary>Where conclusions about it go.</summary>
    public Recorder Recorder { get; } = recorder;

    /// <summary>Place of the variant, or <see cref="Evaluating.Firing.OfAthlete"/>.</summary>
    public int Candidate { get; } = candidate;

    /// <summary>What conditions may look at.</summary>
    public ref readonly FactView View => ref _view;
}

/// <summary>The athlete on the day, while findings are being found: they are marks here, which rules wait for.</summary>
internal sealed class UndecidedAthlete(Recorder recorder, CaseFacts facts)
    : Subject(recorder, Evaluating.Firing.OfAthlete, facts.View(Evaluating.Firing.OfAthlete, []));

/// <summary>The athlete on the day, once every finding that can be proven has been; enters after the marks have come to rest.</summary>
internal sealed class DecidedAthlete(Recorder recorder, CaseFacts facts)
    : Subject(recorder, Evaluating.Firing.OfAthlete, facts.View(Evaluating.Firing.OfAthlete, recorder.Findings));

/// <summary>A variant for the athlete, before the set-up search.</summary>
internal sealed class FirstCandidate(Recorder recorder, CaseFacts facts, int candidate)
    : Subject(recorder, candidate, facts.View(candidate, recorder.Findings));

/// <summary>A variant for the athlete, at the set-up that the search has chosen.</summary>
internal sealed class SecondCandidate(Recorder recorder, CaseFacts facts, int candidate)
    : Subject(recorder, candidate, facts.View(candidate, recorder.Findings));
