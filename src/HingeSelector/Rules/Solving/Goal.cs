namespace HingeSelector.Rules.Solving;

/// <summary>Something that must come out in a given way.</summary>
/// <param name="Form">What.</param>
/// <param name="Need">How.</param>
internal readonly record struct Goal(Form Form, Need Need);
