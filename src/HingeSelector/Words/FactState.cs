namespace HingeSelector.Words;

/// <summary>Whether a fact is known, and if not, why not.</summary>
public enum FactState : byte
{
    /// <summary>Nobody has measured or asked.</summary>
    NotMeasured,

    /// <summary>The athlete refused.</summary>
    Refused,

    /// <summary>It was known once; its lifetime is over.</summary>
    Expired,

    /// <summary>It cannot be decided from what is known (a computed fact whose inputs are missing).</summary>
    Undecided,

    /// <summary>The question does not apply; every condition on it fails.</summary>
    NotApplicable,

    /// <summary>Known.</summary>
    Known,
}
