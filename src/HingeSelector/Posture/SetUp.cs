using HingeSelector.Quantities;

namespace HingeSelector.Posture;

/// <summary>Where the hands and the feet are.</summary>
/// <param name="HandHeight">Centre of the gripped rod above the floor.</param>
/// <param name="Sole">Thickness under the foot: the sole of the shoe, and a platform stood on.</param>
/// <param name="Grip">Between the two middle fingers.</param>
/// <param name="Stance">Between the two ankles.</param>
/// <param name="TurnOut">Each foot from straight ahead.</param>
public sealed record SetUp(Length HandHeight, Length Sole, Length Grip, Length Stance, Angle TurnOut);
