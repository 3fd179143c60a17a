using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>The heights or grips that would do.</summary>
/// <param name="FirstTry">The one to start with.</param>
/// <param name="Fitting">
/// The unbroken run of fitting ones around the first try; null when the first try itself does not fit by computation.
/// </param>
/// <param name="Further">Fitting runs apart from that one: spare degrees are not monotone in bar height.</param>
/// <param name="Widened">The unbroken run around the first try that may fit when errors fall its way; null when the hip was not measured.</param>
public sealed record LengthBand(Length FirstTry, LengthRun? Fitting, IReadOnlyList<LengthRun> Further, LengthRun? Widened);
