using HingeSelector.Analysis;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary>Makes the safe edits in the files of the rules folder.</summary>
internal static class RulesFix
{
    // An edit can bring to light what an error hid; nobody needs more rounds than this.
    private const int MostRounds = 10;

    /// <summary>Makes them and checks again, until none is left.</summary>
    public static (FolderCheck Result, IReadOnlyList<SuggestedEdit> Done) Make(RuleFiles files, IReadOnlyCollection<string> pages, FolderCheck result, string home)
    {
        var done = new List<SuggestedEdit>();
        for (var round = 0; round < MostRounds; round++)
        {
            var (mended, edits) = Fixer.Apply(files, result.Found);
            if (edits.Count == 0)
                break;
            foreach (var path in edits.Select(e => e.Source.Path[(files.Name.Length + 1)..]).Distinct())
                Write(Path.Combine(home, files.Name, path), mended.Texts[path]);
            done.AddRange(edits);
            files = mended;
            result = FolderCheck.Run(files, pages);
        }
        return (result, done);
    }

    private static void Write(string path, string text)
    {
        try
        {
            File.WriteAllText(path, text);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FaultyInputException(ExitCode.BadRules, [Problems.CannotOpen(Path.GetFileName(path), "it cannot be written")]);
        }
    }
}
