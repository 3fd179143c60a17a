using HingeSelector.Posture;
using HingeSelector.Quantities;

namespace HingeSelector.Rendering;

/// <summary>Lengths for people, in centimetres.</summary>
internal static class Cm
{
    private static readonly Unit _cm = Unit.Find("cm")!;

    public static string Of(double metres) => QuantityText.Print(metres, _cm);

    public static string Of(Length length) => Of(length.Metres);

    /// <summary>Both ends of a run, the unit once; one number for a run of one.</summary>
    public static string Of(LengthRun run) => run.From == run.To ? Of(run.From) : $"{Bare(run.From)} to {Of(run.To)}";

    private static string Bare(Length length) => Of(length)[..^(_cm.Symbol.Length + 1)];
}
