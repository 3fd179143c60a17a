using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>One line that answers every word of a group.</summary>
/// <param name="Group">The group.</param>
/// <param name="Date">Day on which somebody asked; null when the day of the section counts (a refusal).</param>
/// <param name="By">Who asked.</param>
/// <param name="Refused">Whether the athlete refused to answer any of it.</param>
/// <param name="Typed">As typed.</param>
internal sealed record BlanketAnswer(WordGroup Group, DateOnly? Date, string? By, bool Refused, Typed Typed);
