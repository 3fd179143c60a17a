using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>How much somebody has grown since the stature on file.</summary>
/// <param name="Metres">Stature now minus stature on file; null when either is not known or they are in the wrong order.</param>
/// <param name="MeasuredOn">Day of the stature on file.</param>
/// <param name="SeenOn">Day on which the growth was seen.</param>
/// <param name="UnderEighteen">Whether the athlete was under 18 when last asked.</param>
internal sealed record Growth(double? Metres, DateOnly MeasuredOn, DateOnly SeenOn, bool UnderEighteen)
{
    private const double HoursInEighteenYears = 18 * 365.25 * 24;

    /// <summary>Conversion between units leaves less than this behind.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>Reads it from the answers. Lifetimes do not matter: nobody shrinks back.</summary>
    public static Growth Of(AthleteRecord record)
    {
        var minor = record.Find("age") is { Value.IsKnown: true } age && age.Value.Low < HoursInEighteenYears;
        if (record.Find("stature") is { Value.IsKnown: true } before && record.Find("stature-now") is { Value.IsKnown: true } now && now.On >= before.On)
            return new Growth(Math.Round(now.Value.Low - before.Value.Low, 9), before.On, now.On, minor);
        return new Growth(null, default, default, minor);
    }

    /// <summary>Whether growth has made an answer worthless before its time.</summary>
    /// <remarks>An answer taken after the old stature, on the day when the growth was seen or later, was taken from the grown body.</remarks>
    public bool Ends(Word word, Answer answer)
        => UnderEighteen
            && word.Lifetime.EndsWhenGrown is { } limit
            && Metres >= limit - Tolerance
            && (answer.On < SeenOn || answer.On <= MeasuredOn);
}
