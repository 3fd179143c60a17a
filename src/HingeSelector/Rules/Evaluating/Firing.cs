namespace HingeSelector.Rules.Evaluating;

/// <summary>A rule that holds for a subject.</summary>
/// <param name="Rule">Index of the rule.</param>
/// <param name="Candidate">Place of the variant, or <see cref="OfAthlete"/>.</param>
public sealed record Firing(int Rule, int Candidate) : IComparable<Firing>
{
    /// <summary>The rule is about the athlete, not about one candidate.</summary>
    public const int OfAthlete = -1;

    /// <inheritdoc/>
    public int CompareTo(Firing? other) => other is null ? 1 : Rule != other.Rule ? Rule.CompareTo(other.Rule) : Candidate.CompareTo(other.Candidate);

    /// <summary>Whether one comes before another.</summary>
    public static bool operator <(Firing left, Firing right) => left.CompareTo(right) < 0;

    /// <summary>Whether one comes after another.</summary>
    public static bool operator >(Firing left, Firing right) => left.CompareTo(right) > 0;

    /// <summary>Whether one does not come after another.</summary>
    public static bool operator <=(Firing left, Firing right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one does not come before another.</summary>
    public static bool operator >=(Firing left, Firing right) => left.CompareTo(right) >= 0;
}
