using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Comparing;

/// <summary>A stop that holds, as far as two answers are compared.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Level">How far it reaches.</param>
/// <param name="Say">What the coach reads.</param>
/// <param name="Allowed">Ids of the variants that it still allows.</param>
public sealed record PicturedStop(string Rule, StopLevel Level, string Say, IReadOnlySet<string> Allowed)
{
    /// <summary>Whether another stop of the same rule reaches less far.</summary>
    public bool IsStricterThan(PicturedStop other) => other.Level < Level || (other.Level == Level && !other.Allowed.IsSubsetOf(Allowed));
}
