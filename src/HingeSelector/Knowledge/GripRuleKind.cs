namespace HingeSelector.Knowledge;

/// <summary>What a grip width is relative to.</summary>
public enum GripRuleKind
{
    /// <summary>Just outside the legs of this athlete in this stance.</summary>
    OutsideTheLegs,

    /// <summary>Just inside the knees; as wide as the shoulders at most.</summary>
    InsideTheLegs,

    /// <summary>A fixed width.</summary>
    Absolute,

    /// <summary>A share of the distance between the elbows, upper arms out to the sides.</summary>
    ElbowToElbow,
}
