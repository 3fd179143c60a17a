using HingeSelector.Quantities;

namespace HingeSelector.Statics;

/// <summary>A weight that hangs on a lever.</summary>
/// <param name="Weight">Downward force.</param>
/// <param name="Along">Distance from the pivot along the lever.</param>
public readonly record struct LeverLoad(Force Weight, Length Along);
