namespace HingeSelector.Examples.Squads;

/// <summary>The decision for one athlete, as far as staff act on it.</summary>
/// <param name="Id">Id on the roster.</param>
/// <param name="Outcome">Kind of answer: ranked, limited-today, held, refer, emergency.</param>
/// <param name="Stops">Stops that hold, each in one line.</param>
/// <param name="Unanswered">Questions that must be answered first.</param>
/// <param name="Ranked">Candidates in order.</param>
/// <param name="Excluded">Variants that are out, each with the rules that say so.</param>
/// <param name="Cautions">Cautions about the athlete.</param>
public sealed record AthleteDecision(
    string Id,
    string Outcome,
    IReadOnlyList<string> Stops,
    IReadOnlyList<string> Unanswered,
    IReadOnlyList<CandidateDecision> Ranked,
    IReadOnlyList<string> Excluded,
    IReadOnlyList<string> Cautions);
