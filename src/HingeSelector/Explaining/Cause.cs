using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Explaining;

/// <summary>One cause why an option is not the first choice.</summary>
/// <param name="Kind">What kind of cause.</param>
/// <param name="Say">The cause in words.</param>
/// <param name="Rule">The rule behind it; null when there is none.</param>
public sealed record Cause(CauseKind Kind, string Say, Rule? Rule)
{
    /// <summary>The condition that decides, with its distance; null where no single number decides.</summary>
    public Shortfall? Shortfall { get; init; }

    /// <summary>Weighted points that hang on it; null where no points do.</summary>
    public int? Points { get; init; }

    /// <summary>The criterion of those points; null where no points do.</summary>
    public Criterion? Criterion { get; init; }

    /// <summary>Ids of the facts that are not known.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];
}
