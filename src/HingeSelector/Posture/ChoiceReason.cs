namespace HingeSelector.Posture;

/// <summary>Why a set-up came out as it did; several may hold.</summary>
public enum ChoiceReason
{
    /// <summary>No hip flexion was measured: whether it fits is not known and the height stays the standard one.</summary>
    HipFlexionNotMeasured,

    /// <summary>Only one of straight-leg raise and knee-bent hip flexion was measured; that one alone decides.</summary>
    HipFlexionHalfMeasured,

    /// <summary>The stance opens the thighs farther than is taken for granted, and abduction was not measured.</summary>
    AbductionNotMeasured,

    /// <summary>None of the heights and grips that may be tried fits; the one with the most to spare is shown.</summary>
    NothingFits,

    /// <summary>The room can't make the standard height; the nearest stands for it.</summary>
    RoomLacksStandardHeight,

    /// <summary>The room can't make a height as high as asked; its highest is used.</summary>
    RoomTooLow,

    /// <summary>The bar was raised above the standard height.</summary>
    RaisedAboveStandard,

    /// <summary>What the coach saw at the bar set the height.</summary>
    HeldHeightDecides,

    /// <summary>A held height is known, but for another grip or stance.</summary>
    HeldHeightForAnotherSetUp,

    /// <summary>The feet were brought closer so that the arms pass outside the knees.</summary>
    StanceNarrowedForGrip,

    /// <summary>Arms and knees meet in this set-up.</summary>
    ArmsMeetLegs,

    /// <summary>Segments are not known: a raised, light first step; measure segments or find the held height.</summary>
    BodyNotKnown,
}
