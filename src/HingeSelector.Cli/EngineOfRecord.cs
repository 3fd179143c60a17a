using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;

namespace HingeSelector.Cli;

/// <summary>The engine that decides; the only place where it is picked.</summary>
public static class EngineOfRecord
{
    /// <summary>Gets the engine's code ready on another thread; to be called before the rules are read.</summary>
    public static void Prepare() => Task.Run(WarmUp.Run);

    /// <summary>The engine for a rule book, built on another thread while the caller reads on.</summary>
    public static IRuleEngine For(RuleBook book) => new EngineUnderway(Task.Run(() => new Network(book)));

    // Whoever asks for the first decision waits for what is left of the building, and gets its fault if it failed.
    private sealed class EngineUnderway(Task<Network> network) : IRuleEngine
    {
        public IRuleSession Start(CaseFacts facts) => network.GetAwaiter().GetResult().Start(facts);
    }
}
