namespace HingeSelector.Rules.Firing;

/// <summary>What the network is built from, free of the engine: a branch of a rule that finds, a refutation, or what all rules of the same conditions share.</summary>
/// <param name="Name">Unique: the id of the first rule, with a number from the second branch on.</param>
/// <param name="Priority">Larger comes first; only saves work, never decides.</param>
/// <param name="Asks">Whom it is asked about.</param>
/// <param name="Branch">What must hold.</param>
/// <param name="Rules">Rules that then hold; none for a refutation.</param>
/// <param name="Sets">Codes of the marks that it sets.</param>
internal sealed record Definition(string Name, int Priority, SubjectKind Asks, Branch Branch, IReadOnlyList<Concluded> Rules, IReadOnlyList<int> Sets)
{
    /// <summary>Variants that any of its rules can hold for, one bit each.</summary>
    public ulong Variants => Rules.Aggregate(0UL, (all, r) => all | r.Variants);
}
