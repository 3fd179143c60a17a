using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Cli;

/// <summary>One decider for each philosophy that changes rules and one for all others, made when first asked for.</summary>
public sealed class Deciders(RuleBook book)
{
    private readonly Dictionary<string, Decider> _made = new(StringComparer.Ordinal);

    /// <summary>The decider for a philosophy.</summary>
    public Decider For(Philosophy philosophy)
    {
        var key = philosophy.ChangesRules ? philosophy.Id : "";
        if (_made.TryGetValue(key, out var decider))
            return decider;
        var under = book.Under(philosophy);
        var engine = EngineOfRecord.For(under);
        return _made[key] = new Decider(under, engine, new Selector(under, engine));
    }
}
