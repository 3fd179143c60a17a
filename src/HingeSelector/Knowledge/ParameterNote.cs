namespace HingeSelector.Knowledge;

/// <summary>What a parameter of the model is and rests on.</summary>
/// <param name="Id">Name in rules/model.yaml.</param>
/// <param name="Label">Name for people.</param>
/// <param name="Default">Value as written.</param>
/// <param name="Range">Range as written.</param>
/// <param name="Grade">How far to trust it.</param>
/// <param name="Sources">Ids of sources.</param>
/// <param name="Because">One sentence.</param>
public sealed record ParameterNote(string Id, string Label, string Default, string Range, Grade Grade, IReadOnlyList<string> Sources, string Because);
