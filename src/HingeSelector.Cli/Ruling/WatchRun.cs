using HingeSelector.Cli.Choosing;
using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Editing;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Ruling;

/// <summary>Looks at the files again and again, and answers anew when one was saved.</summary>
internal sealed class WatchRun
{
    // Short against the 300 ms that a save may take to be answered, long against the cost of a look.
    private static readonly TimeSpan _betweenLooks = TimeSpan.FromMilliseconds(50);

    private readonly ChooseRequest _request;
    private readonly Func<RuleFiles> _rules;
    private readonly Surroundings _around;
    private readonly WatchedFiles _files;
    private readonly LiveRanking _ranking;
    private readonly LinePrinter _print;

    public WatchRun(ChooseRequest request, Func<RuleFiles> rules, string folder, Surroundings around)
    {
        (_request, _rules, _around) = (request, rules, around);
        var others = new[] { request.Typed.Screen, request.Typed.Roster, request.Typed.Room, request.Typed.Standing }.OfType<string>();
        _files = new WatchedFiles(folder, [.. others.Select(f => Path.GetFullPath(f, around.WorkingFolder))]);
        _ranking = new LiveRanking(EngineOfRecord.For, Ask);
        _print = new LinePrinter(around, false);
    }

    /// <summary>Runs until somebody ends it.</summary>
    /// <returns>The exit code.</returns>
    public int Run()
    {
        var first = _ranking.Update(_rules(), out var faults) ?? throw new FaultyInputException(ExitCode.BadRules, faults);
        _print.Print(LiveText.Of(first));
        _around.Output.Flush();
        while (_around.Pause(_betweenLooks))
        {
            var saved = _files.Changes();
            if (saved.Count == 0)
                continue;
            Answer(saved);
            _around.Output.Flush();
        }
        return ExitCode.Done;
    }

    private void Answer(IReadOnlyList<string> saved)
    {
        _print.Print([Line.Title($"Saved: {string.Join(", ", saved.Select(Short))}")]);
        try
        {
            if (_ranking.Update(_rules(), out var faults) is { } live)
                _print.Print(LiveText.Of(live));
            else
                Keep(faults);
        }
        catch (FaultyInputException fault)
        {
            Keep(fault.Diagnostics);
        }
        catch (UsageException fault)
        {
            // The athlete or the philosophy of the command line is gone from the files.
            _print.Print([Line.Text("Kept", $"{fault.Message} The last good answer stands.")]);
        }
    }

    private void Keep(IReadOnlyList<Diagnostic> faults)
    {
        _print.Print([Line.Text("Kept", $"{faults.Count} {(faults.Count == 1 ? "fault" : "faults")}; the last good rules and their answer stand.")]);
        _around.Output.Write(DiagnosticPrinter.Print(faults));
    }

    private Question Ask(RuleBook book)
    {
        var input = new ChooseInput(_request, book, _around);
        return input.About(input.Athletes[0]);
    }

    // Full paths say nothing to the person who typed a short one.
    private string Short(string path) => Path.IsPathRooted(path) ? Path.GetRelativePath(_around.WorkingFolder, path) : $"rules/{path}";
}
