namespace HingeSelector.Posture;

/// <summary>How the legs share the work.</summary>
public enum LegUse
{
    /// <summary>Both alike; the worse side decides.</summary>
    Both,

    /// <summary>One foot behind on its toes; the working side decides.</summary>
    Split,

    /// <summary>One leg only; the planar model does not cover it.</summary>
    OneLeg,
}
