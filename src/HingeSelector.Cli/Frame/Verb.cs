using System.CommandLine;

namespace HingeSelector.Cli.Frame;

/// <summary>One thing that the program can do. A verb is one file and one line in <see cref="Verbs"/>.</summary>
public abstract class Verb
{
    /// <summary>Names the verb and says in one line what it is for.</summary>
    protected Verb(string name, string purpose) => Command = new Command(name, purpose);

    /// <summary>Name, purpose and options as the parser sees them.</summary>
    public Command Command { get; }

    /// <summary>The command that it stands under, such as <c>rules</c>; null at the top.</summary>
    public virtual string? Group => null;

    /// <summary>Command lines that can be run as they stand in a copy of the project.</summary>
    public abstract IReadOnlyList<string> Examples { get; }

    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    public abstract int Run(ParseResult line, Surroundings around);

    /// <summary>Adds an option with a value.</summary>
    protected Option<string?> Value(string name, string placeholder, string help)
    {
        var option = new Option<string?>(name) { Description = help, HelpName = placeholder };
        Command.Options.Add(option);
        return option;
    }

    /// <summary>Adds a name that stands behind the verb.</summary>
    protected Argument<string> Name(string placeholder, string help)
    {
        var argument = new Argument<string>(placeholder) { Description = help };
        Command.Arguments.Add(argument);
        return argument;
    }

    /// <summary>Adds an option without a value.</summary>
    protected Option<bool> Flag(string name, string help)
    {
        // Without a fixed arity 'true' behind a flag would be taken as its value.
        var option = new Option<bool>(name) { Description = help, Arity = ArgumentArity.Zero };
        Command.Options.Add(option);
        return option;
    }
}
