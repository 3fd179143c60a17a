namespace HingeSelector.Rules.Firing;

/// <summary>What the network is built from: one branch of a rule or of a refutation, free of the engine.</summary>
/// <param name="Name">Unique: the rule's id, with a number from the second branch on.</param>
/// <param name="Priority">Larger comes first; only saves work, never decides.</param>
/// <param name="Asks">Whom it is asked about.</param>
/// <param name="Variants">Variants that it can hold for, one bit each; 0 when it concludes about the athlete.</param>
/// <param name="Branch">What must hold.</param>
/// <param name="Rule">Index of the rule; null for a refutation.</param>
/// <param name="Sets">Codes of the marks that it sets.</param>
internal sealed record Definition(string Name, int Priority, SubjectKind Asks, ulong Variants, Branch Branch, int? Rule, IReadOnlyList<int> Sets);
