namespace HingeSelector.Rules.Firing;

/// <summary>Whom a rule is asked about.</summary>
internal enum SubjectKind
{
    /// <summary>The athlete, once.</summary>
    Athlete,

    /// <summary>Every candidate before the set-up search.</summary>
    First,

    /// <summary>Every candidate at its chosen set-up.</summary>
    Second,
}
