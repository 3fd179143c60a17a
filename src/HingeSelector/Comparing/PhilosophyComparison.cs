using HingeSelector.Knowledge;
using HingeSelector.Rules;

namespace HingeSelector.Comparing;

/// <summary>A squad asked by two philosophies over the same rules.</summary>
/// <param name="Book">The base.</param>
/// <param name="From">The first philosophy.</param>
/// <param name="To">The second.</param>
/// <param name="Comparison">Who changes.</param>
/// <param name="Groups">The changes by kind, the commonest first.</param>
public sealed record PhilosophyComparison(RuleBook Book, Philosophy From, Philosophy To, Comparison Comparison, IReadOnlyList<ChangeGroup> Groups)
{
    private const int MostConfirmed = 12;

    /// <summary>Compares.</summary>
    /// <param name="book">The base.</param>
    /// <param name="from">The first philosophy with its side.</param>
    /// <param name="to">The second philosophy with its side.</param>
    public static PhilosophyComparison Of(RuleBook book, (Philosophy Philosophy, Side Side) from, (Philosophy Philosophy, Side Side) to)
    {
        var comparison = Comparison.Of(from.Side, to.Side, true);
        var groups = ChangeGroup.Of(comparison.Changes.Select(c => (c, (Cause?)null)));
        foreach (var example in groups.Take(MostConfirmed).SelectMany(g => g.Examples))
            Comparison.Confirm(from.Side, to.Side, example);
        return new PhilosophyComparison(book, from.Philosophy, to.Philosophy, comparison, groups);
    }
}
