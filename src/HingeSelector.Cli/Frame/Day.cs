using System.Globalization;

namespace HingeSelector.Cli.Frame;

/// <summary>Reads the day of an answer from the command line.</summary>
internal static class Day
{
    /// <summary>The day as typed, else today.</summary>
    /// <exception cref="UsageException">It is no day.</exception>
    public static DateOnly Read(string? text, TimeProvider clock)
    {
        if (text is null)
            return DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new UsageException($"'{text}' is not a day.", "Write year-month-day, for example '--on 2026-11-24'.");
    }
}
