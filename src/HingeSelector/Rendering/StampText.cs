using System.Globalization;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <summary>What an answer rests on, as one line.</summary>
public static class StampText
{
    /// <summary>For one athlete.</summary>
    public static string Of(Stamp stamp) => $"{OfAll(stamp)}, input {stamp.Input}";

    /// <summary>For a whole roster.</summary>
    public static string OfAll(Stamp stamp) => $"Stamp: tool {stamp.Tool}, rules {stamp.Rules}, philosophy {PhilosophyText.InForce(stamp.Philosophy, stamp.Decision)}, on {Date(stamp.On)}";

    /// <summary>A date as in every file.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
