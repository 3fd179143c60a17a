using System.Text;
using HingeSelector.Diagnostics;

namespace HingeSelector.Cli.Frame;

/// <summary>Reads the files that the command line names; <c>-</c> is standard input.</summary>
internal static class TextFiles
{
    private const string StandardInput = "-";

    /// <summary>A file as its author sees it.</summary>
    /// <exception cref="FaultyInputException">It cannot be read.</exception>
    public static SourceText Read(string path, Surroundings around)
    {
        try
        {
            return path == StandardInput
                ? new SourceText("standard-input", Decode(ReadAll(around.Input)))
                : new SourceText(path, Decode(File.ReadAllBytes(Path.GetFullPath(path, around.WorkingFolder))));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or DecoderFallbackException or ArgumentException or NotSupportedException)
        {
            // The system's own words would show the full path of the machine.
            throw new FaultyInputException(ExitCode.BadInput, [Problems.CannotOpen(path, Why(fault, Path.GetFullPath(path, around.WorkingFolder)))]);
        }
    }

    private static string Why(Exception fault, string full) => fault switch
    {
        _ when Directory.Exists(full) => "it is a folder",
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        UnauthorizedAccessException => "reading it is not permitted",
        DecoderFallbackException => "it is not UTF-8 text; save it as UTF-8",
        _ => "the system could not read it",
    };

    private static string Decode(byte[] bytes) => new UTF8Encoding(false, true).GetString(bytes);

    private static byte[] ReadAll(Stream stream)
    {
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
