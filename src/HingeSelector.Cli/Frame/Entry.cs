using System.CommandLine;
using HingeSelector.Diagnostics;

namespace HingeSelector.Cli.Frame;

/// <summary>Reads the command line, calls the verb, and turns every way to fail into its exit code.</summary>
public static class Entry
{
    /// <summary>Runs one command line.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Surroundings around)
    {
        var debug = args.Contains(GlobalOptions.Debug.Name);
        using (around)
        {
            try
            {
                var code = Call(args, around);
                around.Output.Flush();
                return code;
            }
            catch (UsageException fault)
            {
                around.Error.WriteLine($"hinge-selector: {fault.Message}");
                if (fault.Hint is not null)
                    around.Error.WriteLine($"  {fault.Hint}");
                return ExitCode.Usage;
            }
            catch (FaultyInputException fault)
            {
                around.Error.Write(DiagnosticPrinter.Print(fault.Diagnostics));
                return fault.Code;
            }
            catch (FaultyFilesException fault)
            {
                around.Error.Write(DiagnosticPrinter.Print(fault.Diagnostics));
                return ExitCode.BadRules;
            }
            catch (Exception fault)
            {
                around.Error.WriteLine($"hinge-selector: a fault of the program, not of your files: {fault.Message.ReplaceLineEndings(" ")}");
                around.Error.WriteLine(debug ? fault.ToString() : "  Run it again with --debug and report what it prints.");
                return ExitCode.OurFault;
            }
        }
    }

    /// <summary>The whole command tree.</summary>
    public static RootCommand Tree(Surroundings around)
    {
        var verbs = Verbs.All();
        var root = new Root();
        GlobalOptions.AddTo(root, around, verbs);
        foreach (var verb in verbs)
        {
            verb.Command.SetAction(line => verb.Run(line, around));
            GroupOf(root, verb).Subcommands.Add(verb.Command);
        }
        return root;
    }

    private static int Call(IReadOnlyList<string> args, Surroundings around)
    {
        var line = Tree(around).Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        if (UsageReport.OfSwallowedOption(line) is { } swallowed)
            throw swallowed;
        if (line.Errors.Count > 0)
            throw UsageReport.Of(line);
        return line.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = around.Output, Error = around.Error });
    }

    private static Command GroupOf(RootCommand root, Verb verb)
    {
        if (verb.Group is not { } name)
            return root;
        if (root.Subcommands.FirstOrDefault(c => c.Name == name) is { } group)
            return group;
        group = new Command(name, Verbs.Groups[name]);
        root.Subcommands.Add(group);
        return group;
    }

    // The base class would take the name of the test host when a test calls it.
    private sealed class Root() : RootCommand("Chooses deadlift variants and set-ups for throwing athletes, with reasons.");
}
