using System.Text;
using HingeSelector.Cli.Frame;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Cli;

/// <summary>One run of the program inside the test process.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record CliRun(int Code, string Output, string Error)
{
    public const string Roster = "content/demo/club.csv";
    public const string Day = "2026-11-24";

    /// <summary>The demo club on its day, in its room, with its standing choices.</summary>
    public static readonly string[] Club = ["choose", "--roster", Roster, "--room", "content/demo/room.yaml", "--standing", "content/demo/standing.yaml", "--on", Day];

    public static CliRun Of(params string[] args) => Of(args, "");

    public static CliRun Of(IReadOnlyList<string> args, string input, bool terminal = false, Func<string, string?>? variable = null, string? folder = null, Func<TimeSpan, bool>? pause = null)
    {
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        using var around = new Surroundings(output, error, new MemoryStream(Encoding.UTF8.GetBytes(input)))
        {
            Clock = new NoonOf(DateOnly.ParseExact(Day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)),
            WorkingFolder = folder ?? RepositoryFiles.Root,
            ProgramFolder = Path.GetTempPath(),
            OutputIsTerminal = terminal,
            ErrorIsTerminal = terminal,
            Variable = variable ?? (_ => null),
            Pause = pause ?? (_ => false),
        };
        var code = Entry.Run(args, around);
        return new CliRun(code, Encoding.UTF8.GetString(output.ToArray()), Encoding.UTF8.GetString(error.ToArray()));
    }

    private sealed class NoonOf(DateOnly day) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(day, new TimeOnly(12, 0), TimeSpan.Zero);
    }
}
