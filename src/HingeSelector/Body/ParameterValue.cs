namespace HingeSelector.Body;

/// <summary>A parameter of the model in the base unit of its dimension, with the span in which the truth may lie.</summary>
/// <param name="Value">The value used.</param>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
public sealed record ParameterValue(double Value, double Low, double High);
