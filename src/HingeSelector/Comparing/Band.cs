using HingeSelector.Posture;

namespace HingeSelector.Comparing;

/// <summary>Where the hands start: first try and what fits around it, m; null where the model says nothing.</summary>
/// <param name="Height">Height of the hands.</param>
/// <param name="From">Lowest that fits.</param>
/// <param name="To">Highest that fits.</param>
/// <param name="Grip">Width of the grip.</param>
/// <param name="GripFrom">Narrowest that fits.</param>
/// <param name="GripTo">Widest that fits.</param>
public readonly record struct Band(double? Height, double? From, double? To, double? Grip, double? GripFrom, double? GripTo)
{
    /// <summary>The band of a chosen set-up.</summary>
    public static Band Of(SetUpChoice? choice) => choice is null
        ? default
        : new Band(choice.Heights.FirstTry.Metres, choice.Heights.Fitting?.From.Metres, choice.Heights.Fitting?.To.Metres, choice.Grips.FirstTry.Metres, choice.Grips.Fitting?.From.Metres, choice.Grips.Fitting?.To.Metres);
}
