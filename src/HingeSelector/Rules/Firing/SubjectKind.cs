namespace HingeSelector.Rules.Firing;

/// <summary>Whom a rule is asked about, in the order in which they enter the network.</summary>
internal enum SubjectKind
{
    /// <summary>The athlete while findings are being found.</summary>
    Undecided,

    /// <summary>The athlete with every finding decided.</summary>
    Athlete,

    /// <summary>Every candidate before the set-up search.</summary>
    First,

    /// <summary>Every candidate at its chosen set-up.</summary>
    Second,
}
