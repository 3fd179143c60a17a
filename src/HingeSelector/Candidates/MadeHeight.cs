namespace HingeSelector.Candidates;

/// <summary>A hand height that a room can make.</summary>
/// <param name="Height">Above the floor, m.</param>
/// <param name="Made">What makes it, for people.</param>
public sealed record MadeHeight(double Height, string Made);
