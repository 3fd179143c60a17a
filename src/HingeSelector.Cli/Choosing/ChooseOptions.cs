namespace HingeSelector.Cli.Choosing;

/// <summary>The options of <c>choose</c> as typed; null where not given.</summary>
/// <param name="Screen">Screen file.</param>
/// <param name="Roster">Roster file.</param>
/// <param name="Athlete">Id of one athlete.</param>
/// <param name="Room">Room file.</param>
/// <param name="Standing">File of standing choices.</param>
/// <param name="On">Day.</param>
/// <param name="Philosophy">Philosophy.</param>
/// <param name="Format">Format.</param>
/// <param name="Top">Number of candidates.</param>
/// <param name="Why">Variant.</param>
/// <param name="ExitLevel">Whether the outcome goes into the exit code.</param>
public sealed record ChooseOptions(
    string? Screen, string? Roster, string? Athlete, string? Room, string? Standing, string? On, string? Philosophy, string? Format, string? Top, string? Why, bool ExitLevel);
