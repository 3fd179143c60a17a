namespace HingeSelector.Comparing;

/// <summary>An athlete whose answer differs.</summary>
/// <param name="Athlete">Id of the athlete.</param>
/// <param name="Name">Name or code; null when not given.</param>
/// <param name="Before">The answer by the first rules.</param>
/// <param name="After">The answer by the second rules.</param>
/// <param name="Kinds">What differs.</param>
public sealed record AthleteChange(string Athlete, string? Name, Picture Before, Picture After, ChangeKinds Kinds)
{
    /// <summary>Stops of the first answer that are missing or weaker in the second.</summary>
    public IReadOnlyList<PicturedStop> StopsGone => [.. Difference.StopsBeyond(Before, After)];

    /// <summary>Holds of the first answer that are missing in the second although it is no emergency.</summary>
    public IReadOnlyList<string> HoldsGone => Difference.HoldsBeyond(Before, After);
}
