namespace HingeSelector.Posture;

/// <summary>What a grip width is a measure of. Grip widths run between the two middle fingers.</summary>
public enum GripBasis
{
    /// <summary>Metres.</summary>
    Metres,

    /// <summary>Metres wider than the narrowest grip whose arms still pass outside the knees.</summary>
    OutsideLegs,

    /// <summary>Metres narrower than the widest grip whose arms still pass inside the knees.</summary>
    InsideLegs,

    /// <summary>Parts of the distance elbow to elbow, upper arms straight out.</summary>
    ElbowToElbow,
}
