using HingeSelector.Knowledge;

namespace HingeSelector.Explaining;

/// <summary>What to measure next: the chance that it changes the first choice, against the minutes that it takes.</summary>
/// <param name="First">The first choice; null when nothing may be pulled, and then nothing is looked for.</param>
/// <param name="Measures">Everything that could be measured, what changes the choice most for its minutes first; those without a spread after.</param>
/// <param name="Refused">Labels of what the athlete refused; it is not asked for again.</param>
/// <param name="LeftOut">Facts that are not proposed, by why.</param>
public sealed record NextMeasurement(Variant? First, IReadOnlyList<Measure> Measures, IReadOnlyList<string> Refused, IReadOnlyList<LeftOut> LeftOut)
{
    /// <summary>Whether nothing that could be measured would change the first choice.</summary>
    public bool NothingWould => First is not null && !Measures.Any(m => m.MayChange);
}
