namespace HingeSelector.Rules.Evaluating;

/// <summary>An engine that decides the compiled rules: the network of record or the plain loop.</summary>
public interface IRuleEngine
{
    /// <summary>Begins a decision.</summary>
    /// <param name="facts">The fact tables; the caller fills in the chosen set-ups between the two stages.</param>
    IRuleSession Start(CaseFacts facts);
}
