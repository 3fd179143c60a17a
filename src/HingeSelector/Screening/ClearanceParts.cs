using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>The parts of a clearance as they stand in a file, before names and dates are looked at.</summary>
/// <param name="Profession">Profession.</param>
/// <param name="Who">Who signed.</param>
/// <param name="Date">Date of the letter.</param>
/// <param name="Until">Last day.</param>
/// <param name="For">History that it is about.</param>
/// <param name="Covers">Kinds of loading.</param>
/// <param name="Cap">Highest load; null without one.</param>
/// <param name="SeenBy">Who of the staff has seen it.</param>
/// <param name="Span">Where.</param>
internal sealed record ClearanceParts(Typed Profession, Typed Who, Typed Date, Typed Until, IReadOnlyList<Typed> For, IReadOnlyList<Typed> Covers, Typed? Cap, Typed SeenBy, SourceSpan Span);
