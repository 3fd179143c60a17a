using HingeSelector.Quantities;

namespace HingeSelector.Body;

/// <summary>A parameter by the name that <c>rules/model.yaml</c> uses.</summary>
/// <param name="Id">The name.</param>
/// <param name="Dimension">What it measures; the model takes it in the base unit of that dimension.</param>
public sealed record ParameterId(string Id, Dimension Dimension);
