using System.CommandLine;
using System.CommandLine.Parsing;

namespace HingeSelector.Cli.Frame;

/// <summary>Says what is wrong with a command line and what was probably meant.</summary>
internal static class UsageReport
{
    /// <summary>The first fault of a command line that was not understood.</summary>
    public static UsageException Of(ParseResult line)
    {
        var command = line.CommandResult.Command;
        var unknown = line.UnmatchedTokens.FirstOrDefault(t => t.StartsWith('-') && t.Length > 1);
        if (unknown is not null)
            return UnknownOption(unknown, command);
        foreach (var error in line.Errors)
        {
            if (error.SymbolResult is OptionResult option)
                return OfOption(option, error.Message);
        }
        if (line.UnmatchedTokens.Count > 0)
            return UnknownWord(line.UnmatchedTokens[0], command);
        if (command.Subcommands.Count > 0)
            return new UsageException($"'{PathOf(command)}' needs a command.", $"Known: {string.Join(", ", command.Subcommands.Select(c => c.Name))}.");
        return new UsageException(line.Errors[0].Message);
    }

    /// <summary>An option that is not known and was taken for the name that the command wants, or null.</summary>
    public static UsageException? OfSwallowedOption(ParseResult line)
    {
        var swallowed = line.CommandResult.Children.OfType<ArgumentResult>().SelectMany(a => a.Tokens).FirstOrDefault(t => t.Value.StartsWith('-') && t.Value.Length > 1);
        return swallowed is null ? null : UnknownOption(swallowed.Value, line.CommandResult.Command);
    }

    /// <summary>Every option that a command takes.</summary>
    public static IReadOnlyList<string> OptionsOf(Command command)
        => [.. command.Options.Concat(command.Parents.OfType<Command>().SelectMany(p => p.Options).Where(o => o.Recursive)).Select(o => o.Name).Order(StringComparer.Ordinal)];

    /// <summary>An option that the command does not take.</summary>
    public static UsageException UnknownOption(string typed, Command command)
    {
        var equals = typed.IndexOf('=', StringComparison.Ordinal);
        var name = equals < 0 ? typed : typed[..equals];
        return new UsageException($"'{name}' is not an option of '{PathOf(command)}'.", Slip.DidYouMeanOneOf(name, OptionsOf(command)));
    }

    private static UsageException UnknownWord(string typed, Command command)
        => command.Subcommands.Count > 0
            ? new UsageException($"'{typed}' is not a command of '{PathOf(command)}'.", Slip.DidYouMeanOneOf(typed, [.. command.Subcommands.Select(c => c.Name)]))
            : new UsageException($"'{typed}' has no option before it.", $"Options of '{PathOf(command)}': {string.Join(", ", OptionsOf(command))}.");

    private static UsageException OfOption(OptionResult option, string message)
    {
        var name = option.Option.Name;
        if (option.Tokens.Count == 0 && option.Option.Arity.MinimumNumberOfValues > 0)
            return new UsageException($"'{name}' needs a value.", $"For example '{name} {option.Option.HelpName}'.");
        return option.IdentifierTokenCount > 1 || option.Tokens.Count > 1
            ? new UsageException($"'{name}' is given more than once.", "Give it once.")
            : new UsageException(message);
    }

    private static string PathOf(Command command)
        => string.Join(' ', command.Parents.OfType<Command>().Reverse().Select(c => c.Name).Append(command.Name));
}
