using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Screening;

namespace HingeSelector.Candidates;

/// <summary>The set-up follows the screen with a dead band as wide as its error: a standing height inside the band stays.</summary>
internal static class DeadBand
{
    private const double SameHeight = 0.001;

    public static ChosenSetUp Apply(CandidateBuilder builder, Candidate candidate, SetUpWishes wishes, StandingChoice? standing)
    {
        if (standing?.StartHeight is not { } metres || standing.Variant != candidate.Variant.Index || candidate.Choice is not { } choice)
            return new ChosenSetUp(candidate, wishes, null);
        var computed = choice.FirstTry.HandHeight.Metres;
        var inBand = choice.Heights.Widened is { } band && metres >= band.From.Metres - SameHeight && metres <= band.To.Metres + SameHeight;
        // What the coach saw at the bar and a height that a rule asks for are not moved by the error of a computation.
        if (Math.Abs(computed - metres) < SameHeight || !inBand || choice.Reasons.Contains(ChoiceReason.HeldHeightDecides) || wishes.AtLeast > metres)
            return new ChosenSetUp(candidate, wishes, null);
        return new ChosenSetUp(builder.At(candidate, Length.FromMetres(metres), withErrors: true), wishes, computed);
    }
}
