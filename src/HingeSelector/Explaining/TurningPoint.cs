using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>The nearest value of one fact, on one side of what was measured, at which the first choice is another.</summary>
/// <param name="Word">The fact.</param>
/// <param name="Side">left or right; null for a word without sides.</param>
/// <param name="Now">What was measured, in base units.</param>
/// <param name="At">The first value, in steps that people write, with another first choice.</param>
/// <param name="InErrors">Distance in standard errors of one reading; null where no error is stated.</param>
/// <param name="Becomes">The first choice there; null when nothing may be pulled.</param>
/// <param name="Outcome">What kind of answer it is there.</param>
public sealed record TurningPoint(Word Word, string? Side, double Now, double At, double? InErrors, Variant? Becomes, Outcome Outcome)
{
    /// <summary>Name for people, with the side.</summary>
    public string Label => Side is null ? Word.Label : $"{Word.Label}, {Side}";

    /// <summary>Distance in base units.</summary>
    public double Distance => Math.Abs(At - Now);

    /// <summary>Whether it lies above what was measured.</summary>
    public bool IsAbove => At > Now;
}
