using System.CommandLine;
using System.CommandLine.Help;

namespace HingeSelector.Cli.Frame;

/// <summary>Options that every verb takes.</summary>
public static class GlobalOptions
{
    /// <summary>Folder that holds rules and content.</summary>
    public static Option<string?> Home { get; } = new("--home") { Description = "Folder that holds rules/ and content/ (default: nearest folder upwards, else beside the program).", HelpName = "DIR", Recursive = true };

    /// <summary>Says on standard error which folder is used.</summary>
    public static Option<bool> Verbose { get; } = new("--verbose") { Description = "Say on standard error which folder is used.", Recursive = true, Arity = ArgumentArity.Zero };

    /// <summary>Prints where a fault of the program arose.</summary>
    public static Option<bool> Debug { get; } = new("--debug") { Description = "With a fault of the program itself: print where it arose.", Recursive = true, Arity = ArgumentArity.Zero };

    /// <summary>Adds them, with help and version.</summary>
    public static void AddTo(Command root, Surroundings around, IReadOnlyList<Verb> verbs)
    {
        root.Options.Clear();
        root.Options.Add(Home);
        root.Options.Add(Verbose);
        root.Options.Add(Debug);
        root.Options.Add(new HelpOption("--help", "-h") { Description = "Print this help.", Action = new HelpPage(around, verbs) });
        root.Options.Add(new VersionOption("--version") { Description = "Print the version.", Action = new PrintVersion(around) });
    }
}
