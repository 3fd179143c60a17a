using System.CommandLine;
using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

namespace HingeSelector.Cli.Frame;

/// <summary>Finds and reads the folder that holds rules and content.</summary>
public static class Home
{
    private const string Rules = "rules";

    private static readonly string _mark = Path.Combine(Rules, "vocabulary.yaml");

    /// <summary>The texts of the rules folder.</summary>
    public static RuleFiles Files(ParseResult line, Surroundings around)
    {
        var folder = Folder(line.GetValue(GlobalOptions.Home), around);
        if (line.GetValue(GlobalOptions.Verbose))
            around.Error.WriteLine($"Rules from {Path.Combine(folder, Rules)}");
        try
        {
            return RuleFiles.FromFolder(Path.Combine(folder, Rules));
        }
        catch (FaultyFilesException fault)
        {
            throw new FaultyInputException(ExitCode.BadRules, fault.Diagnostics);
        }
    }

    /// <summary>Names of the pages on how to measure, without their ending; none where the folder is missing.</summary>
    public static IReadOnlyCollection<string> ProtocolPages(ParseResult line, Surroundings around)
    {
        var folder = Path.Combine(Folder(line.GetValue(GlobalOptions.Home), around), "content", "protocols");
        return Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder, "*.md").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)] : [];
    }

    /// <summary>The rules, read and compiled; warnings go to standard error only when asked for.</summary>
    /// <exception cref="FaultyInputException">A file is faulty.</exception>
    public static RuleBook Book(ParseResult line, Surroundings around)
    {
        var bag = new DiagnosticBag();
        var book = RuleBookReader.Read(Files(line, around), bag);
        return book is null || bag.HasErrors ? throw new FaultyInputException(ExitCode.BadRules, bag.Sorted) : book;
    }

    /// <summary>The folder: as said, else the nearest one upwards, else beside the program.</summary>
    public static string Folder(string? said, Surroundings around)
    {
        if (said is not null)
        {
            var folder = Path.GetFullPath(said, around.WorkingFolder);
            return File.Exists(Path.Combine(folder, _mark)) ? folder : throw new UsageException($"'{said}' holds no {_mark}.", "Give the folder in which the folder 'rules' lies.");
        }
        for (var folder = around.WorkingFolder; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, _mark)))
                return folder;
        }
        return File.Exists(Path.Combine(around.ProgramFolder, _mark))
            ? around.ProgramFolder
            : throw new UsageException("No folder upwards of this one holds rules/vocabulary.yaml.", "Say where the rules are with --home DIR.");
    }
}
