using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples.Proposing;

/// <summary>Facts that keep all but one condition from deciding.</summary>
/// <param name="now">The facts as they are.</param>
/// <param name="tried">Name of the fact whose values are tried: it is left alone.</param>
internal sealed class Quiet(FactView now, string tried)
{
    private readonly List<(Condition Leaf, Truth Truth)> _ofVariant = [];

    /// <summary>The facts that must change for it.</summary>
    public List<FactChange> Facts { get; } = [];

    /// <summary>Whether a variant leaves the conditions on its words as they must be.</summary>
    public bool Suits(FactView view) => _ofVariant.TrueForAll(v => v.Leaf.Evaluate(view) == v.Truth);

    /// <summary>Brings a condition to hold or to fail; does nothing where it does so already.</summary>
    /// <returns>Whether a value for it was found that does not clash with the others.</returns>
    public bool Force(Condition condition, Truth truth)
    {
        if (condition is NotCondition not)
            return Force(not.Part, (Truth)(-(sbyte)truth));
        if (ConditionLine.Parts(condition) is not { } parts)
            return ForceLeaf(condition, truth);
        if (condition.Evaluate(now) == truth && !parts.SelectMany(ConditionLine.LeavesOf).Any(ChangeFinder.IsOfVariant))
            return true;
        if (truth == Truth.False && ConditionLine.GroupOf(condition) is { } group)
            return Take(FactChange.That(parts[0], truth, now).Select(c => c with { Name = FactChange.AllOf(group) }));
        // All parts of an "any" must fail for it to fail; one part will do for it to hold. The other way round for "all".
        var needsEvery = condition is AnyCondition == (truth == Truth.False);
        if (needsEvery)
            return parts.All(p => Force(p, truth));
        return parts.Any(p => p.Evaluate(now) == truth && !ChangeFinder.IsOfVariant(p) && !IsTried(p)) || parts.OrderBy(IsTried).ThenBy(ChangeFinder.IsOfVariant).Any(p => Force(p, truth));
    }

    private bool ForceLeaf(Condition leaf, Truth truth)
    {
        if (ChangeFinder.IsOfVariant(leaf))
        {
            _ofVariant.Add((leaf, truth));
            return true;
        }
        if (leaf.Evaluate(now) == truth || IsTried(leaf))
            return true;
        return Take(FactChange.That(leaf, truth, now));
    }

    private bool IsTried(Condition condition) => ConditionLine.LeavesOf(condition).Any(l => FactChange.NameOf(l) == tried);

    private bool Take(IEnumerable<FactChange> values)
    {
        var options = values.ToList();
        if (options.Exists(Facts.Contains))
            return true;
        if (options.FirstOrDefault(o => !Facts.Exists(f => f.Name == o.Name)) is not { } change)
            return false;
        Facts.Add(change);
        return true;
    }
}
