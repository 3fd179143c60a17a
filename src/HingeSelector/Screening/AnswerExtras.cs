namespace HingeSelector.Screening;

/// <summary>What an answer may say beside its value.</summary>
/// <param name="On">Day of the answer; null when the section's day counts.</param>
/// <param name="Until">Last day on which it counts; null when the word's lifetime decides.</param>
/// <param name="By">Who measured or asked; null when the section's name counts.</param>
internal sealed record AnswerExtras(DateOnly? On, DateOnly? Until, string? By)
{
    /// <summary>Nothing said.</summary>
    public static AnswerExtras None { get; } = new(null, null, null);

    /// <summary>These, and where they are silent those of the map around.</summary>
    public AnswerExtras Or(AnswerExtras outer) => new(On ?? outer.On, Until ?? outer.Until, By ?? outer.By);
}
