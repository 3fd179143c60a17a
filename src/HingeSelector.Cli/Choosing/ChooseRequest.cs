using System.Globalization;
using HingeSelector.Cli.Frame;

namespace HingeSelector.Cli.Choosing;

/// <summary>What <c>choose</c> is asked to do, after the command line alone has been checked.</summary>
/// <param name="Typed">The options as typed.</param>
/// <param name="On">Day of the answer.</param>
/// <param name="Philosophy">Id of the philosophy.</param>
/// <param name="Format">One of <see cref="Formats"/>.</param>
/// <param name="Top">Number of candidates; null for the default of the format.</param>
public sealed record ChooseRequest(ChooseOptions Typed, DateOnly On, string Philosophy, string Format, int? Top)
{
    /// <summary>Plain text.</summary>
    public const string Table = "table";

    /// <summary>One JSON document.</summary>
    public const string Json = "json";

    /// <summary>One row a candidate.</summary>
    public const string Csv = "csv";

    /// <summary>A document.</summary>
    public const string Markdown = "markdown";

    private const string StandardInput = "-";
    private const int MostCandidates = 99;

    /// <summary>The formats in the order of the help.</summary>
    public static IReadOnlyList<string> Formats { get; } = [Table, Json, Csv, Markdown];

    /// <summary>Whether the answer is about one athlete, told in full.</summary>
    public bool IsSingle => Typed.Screen is not null || Typed.Athlete is not null;

    /// <summary>Checks everything that can be checked without a file.</summary>
    /// <exception cref="UsageException">Something cannot be.</exception>
    public static ChooseRequest Read(ChooseOptions typed, TimeProvider clock)
    {
        if (typed.Screen is null == typed.Roster is null)
            throw new UsageException(typed.Screen is null ? "'choose' needs a screen or a roster." : "'--screen' and '--roster' exclude each other.", "Give either '--screen FILE' or '--roster FILE'.");
        if (typed is { Screen: not null, Athlete: not null })
            throw new UsageException("'--athlete' picks one of a roster; a screen holds one athlete.", "Leave out '--athlete', or give '--roster FILE'.");
        if (new[] { typed.Screen, typed.Roster, typed.Room, typed.Standing }.Count(f => f == StandardInput) > 1)
            throw new UsageException("Standard input can be read for one option only.", "Give '-' once.");
        var format = typed.Format ?? Table;
        if (!Formats.Contains(format))
            throw new UsageException($"'{format}' is not a format.", Slip.DidYouMeanOneOf(format, Formats));
        var request = new ChooseRequest(typed, Day.Read(typed.On, clock), typed.Philosophy ?? Philosophies.Default, format, ReadTop(typed.Top));
        if (typed.ExitLevel && !request.IsSingle)
            throw new UsageException("'--exit-level' speaks about one athlete.", "Add '--athlete ID', or leave it out.");
        if (typed.Why is not null && (!request.IsSingle || format is Json or Csv))
            throw new UsageException(request.IsSingle ? $"'--why' is told as {Table} or {Markdown}." : "'--why' speaks about one athlete.", request.IsSingle ? "The json format holds the rule behind every line anyway." : "Add '--athlete ID'.");
        return request;
    }

    private static int? ReadTop(string? text)
    {
        if (text is null)
            return null;
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var top) && top is >= 1 and <= MostCandidates
            ? top
            : throw new UsageException($"'{text}' is not a number of candidates.", $"Write a whole number from 1 to {MostCandidates}, for example '--top 5'.");
    }
}
