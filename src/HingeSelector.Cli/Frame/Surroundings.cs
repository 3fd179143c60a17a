using System.Text;

namespace HingeSelector.Cli.Frame;

/// <summary>Everything outside the program that it may look at or write to, so that a test can stand in for it.</summary>
public sealed class Surroundings : IDisposable
{
    /// <summary>Takes the streams; both are written as UTF-8 without a mark and with plain line feeds, so that bytes are the same on every machine.</summary>
    public Surroundings(Stream output, Stream error, Stream input)
    {
        OutputStream = output;
        Output = new StreamWriter(output, new UTF8Encoding(false)) { NewLine = "\n" };
        Error = new StreamWriter(error, new UTF8Encoding(false)) { NewLine = "\n", AutoFlush = true };
        Input = input;
    }

    /// <summary>The answer, for writers of bytes.</summary>
    public Stream OutputStream { get; }

    /// <summary>The answer, for writers of text.</summary>
    public TextWriter Output { get; }

    /// <summary>Messages.</summary>
    public TextWriter Error { get; }

    /// <summary>What <c>-</c> reads.</summary>
    public Stream Input { get; }

    /// <summary>Tells the day where the command line does not.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>Folder in which the program was called.</summary>
    public required string WorkingFolder { get; init; }

    /// <summary>Folder of the executable.</summary>
    public required string ProgramFolder { get; init; }

    /// <summary>Whether a person looks at the answer as it is written.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>Whether a person looks at the messages.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Reads a variable of the environment.</summary>
    public Func<string, string?> Variable { get; init; } = _ => null;

    /// <summary>Whether headings may be set off with escape sequences.</summary>
    public bool MayStyle => OutputIsTerminal && string.IsNullOrEmpty(Variable("NO_COLOR")) && Variable("TERM") != "dumb";

    /// <summary>The surroundings of this process.</summary>
    public static Surroundings OfProcess() => new(Console.OpenStandardOutput(), Console.OpenStandardError(), Console.OpenStandardInput())
    {
        Clock = TimeProvider.System,
        WorkingFolder = Directory.GetCurrentDirectory(),
        ProgramFolder = AppContext.BaseDirectory,
        OutputIsTerminal = !Console.IsOutputRedirected,
        ErrorIsTerminal = !Console.IsErrorRedirected,
        Variable = Environment.GetEnvironmentVariable,
    };

    /// <summary>Writes rows of the answer.</summary>
    public void PrintRows(IEnumerable<string> rows)
    {
        foreach (var row in rows)
            Output.WriteLine(row);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Output.Dispose();
        Error.Dispose();
    }
}
