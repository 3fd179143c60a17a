namespace HingeSelector.Examples.Squads;

/// <summary>An input file as it was when a squad was recorded.</summary>
/// <param name="Name">Its path as typed.</param>
/// <param name="Text">The whole text.</param>
public sealed record SquadFile(string Name, string Text);
