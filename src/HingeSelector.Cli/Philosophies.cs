using HingeSelector.Cli.Frame;
using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Cli;

/// <summary>Finds the philosophy that the command line names.</summary>
public static class Philosophies
{
    /// <summary>Who has decided nothing goes by the base.</summary>
    public const string Default = "balanced";

    /// <summary>The philosophy with an id.</summary>
    /// <exception cref="UsageException">There is none.</exception>
    public static Philosophy Named(RuleBook book, string id) => book.Philosophies.GetValueOrDefault(id)
        ?? throw new UsageException($"There is no philosophy '{id}'.", Slip.DidYouMeanOneOf(id, [.. book.Philosophies.Keys]));
}
