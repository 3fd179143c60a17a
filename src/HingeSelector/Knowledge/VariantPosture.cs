namespace HingeSelector.Knowledge;

/// <summary>How a variant is described to the posture model, as its file says it.</summary>
/// <param name="Hands">bar-ahead-of-shins, handles-beside, load-between-feet or not-modelled.</param>
/// <param name="SoftKnees">Knee flexion in degrees that stays so while the bar travels; null when the knees follow from the bar.</param>
/// <param name="Split">Whether one leg works ahead of the other.</param>
/// <param name="Stance">Distance between the heels' midlines, m.</param>
/// <param name="TurnOut">Turn-out of the feet, deg.</param>
/// <param name="ArmsInside">Whether the arms hang between the knees.</param>
/// <param name="Grip">Standard grip.</param>
/// <param name="NarrowestGrip">Narrowest permitted grip.</param>
/// <param name="WidestGrip">Widest permitted grip.</param>
/// <param name="Height">Where the hands start.</param>
public sealed record VariantPosture(
    string Hands,
    double? SoftKnees,
    bool Split,
    double Stance,
    double TurnOut,
    bool ArmsInside,
    GripRule Grip,
    GripRule NarrowestGrip,
    GripRule WidestGrip,
    HeightRule Height);
