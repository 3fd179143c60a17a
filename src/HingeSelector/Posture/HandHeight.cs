using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>How high the bar lies, from what stands on the floor.</summary>
public static class HandHeight
{
    /// <summary>
    /// Centre of the bar above the floor: half the diameter of the largest loaded disc and what the disc stands on. The sole
    /// of the shoe and a platform under the feet are not taken off here; they belong to <see cref="SetUp.Sole"/>.
    /// </summary>
    /// <param name="largestDisc">Diameter of the largest disc on the bar.</param>
    /// <param name="underDiscs">Blocks or plates under the discs; zero on the floor.</param>
    public static Length OfBar(Length largestDisc, Length underDiscs) => (largestDisc * 0.5) + underDiscs;
}
