using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>What a clinician allows in writing. Weeks since an operation are not a clearance.</summary>
/// <param name="Profession">Profession of who cleared, from the vocabulary's list.</param>
/// <param name="Who">Who cleared.</param>
/// <param name="Date">Date of the letter.</param>
/// <param name="ValidUntil">Last day on which it holds.</param>
/// <param name="For">The history that it is about, as typed there, with the side where there is one; it counts for nothing else.</param>
/// <param name="Covers">What it covers, from the vocabulary's list.</param>
/// <param name="Cap">Highest load in kg; null without one.</param>
/// <param name="SeenBy">Who of the staff has seen the letter.</param>
/// <param name="Span">Where.</param>
public sealed record Clearance(string Profession, string Who, DateOnly Date, DateOnly ValidUntil, IReadOnlyList<string> For, IReadOnlyList<string> Covers, double? Cap, string SeenBy, SourceSpan Span)
{
    /// <summary>Whether it holds on a day.</summary>
    public bool IsValid(DateOnly on) => Date <= on && on <= ValidUntil;
}
