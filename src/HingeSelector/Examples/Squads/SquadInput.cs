namespace HingeSelector.Examples.Squads;

/// <summary>What a squad's decisions rest on beside the rules; enough to decide again on any later day.</summary>
/// <param name="On">Day of the decisions.</param>
/// <param name="Philosophy">Id of the philosophy.</param>
/// <param name="Roster">Athletes.</param>
/// <param name="Room">The room; null when none was given.</param>
/// <param name="Standing">Standing choices; null when none were given.</param>
public sealed record SquadInput(DateOnly On, string Philosophy, SquadFile Roster, SquadFile? Room, SquadFile? Standing);
