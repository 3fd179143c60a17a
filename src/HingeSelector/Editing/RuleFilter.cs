using HingeSelector.Knowledge;

namespace HingeSelector.Editing;

/// <summary>Which rules are wanted; what is null does not matter.</summary>
/// <param name="Topic">Folder.</param>
/// <param name="About">Id of a word or a finding that the rule reads or gives.</param>
/// <param name="Variant">Index of a variant for which a rule about candidates can hold.</param>
/// <param name="Grade">Grade.</param>
public sealed record RuleFilter(string? Topic, string? About, int? Variant, Grade? Grade);
