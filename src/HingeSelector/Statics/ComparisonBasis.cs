namespace HingeSelector.Statics;

/// <summary>Which loads two variants are compared at.</summary>
public enum ComparisonBasis
{
    /// <summary>The same load in both.</summary>
    EqualLoad,

    /// <summary>Each variant's own working load, by a published relation between them.</summary>
    OwnWorkingLoad,
}
