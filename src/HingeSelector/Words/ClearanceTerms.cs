namespace HingeSelector.Words;

/// <summary>The closed lists that a clearance is written in.</summary>
/// <param name="Covers">What it may cover.</param>
/// <param name="Professions">Who may write one, and who may not.</param>
public sealed record ClearanceTerms(IReadOnlyList<string> Covers, IReadOnlyList<ClearanceProfession> Professions)
{
    /// <summary>The word whose values a clearance is for.</summary>
    public const string About = "history";

    /// <summary>The states of the letters for one value of the history, in the order of their readings.</summary>
    public static IReadOnlyList<string> States { get; } = ["none", "valid", "expired", "not-yet-valid"];

    /// <summary>The professions whose letters count for something.</summary>
    public IReadOnlyList<string> Clinicians => [.. Professions.Where(p => p.MayClear.Count > 0).Select(p => p.Id)];
}
