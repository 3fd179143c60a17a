namespace HingeSelector.Words;

/// <summary>How long an answer counts.</summary>
/// <param name="Days">Days after the answer on which it still counts; 0 means that day only; null means always.</param>
/// <param name="EndsWhenGrown">Metres of growth of an under-18 that end it earlier; null when growth does not matter.</param>
public sealed record Lifetime(int? Days, double? EndsWhenGrown)
{
    /// <summary>Whether an answer of one day still counts on another.</summary>
    /// <param name="answered">Day of the answer.</param>
    /// <param name="on">Day of the decision.</param>
    /// <param name="until">A last day given with the answer; null without one.</param>
    public bool Covers(DateOnly answered, DateOnly on, DateOnly? until)
    {
        if (answered > on)
            return false;
        if (until is { } last)
            return on <= last;
        return Days is not { } days || answered.AddDays(days) >= on;
    }
}
