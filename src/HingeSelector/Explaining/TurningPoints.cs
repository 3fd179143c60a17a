using HingeSelector.Knowledge;

namespace HingeSelector.Explaining;

/// <summary>For each single fact the nearest values at which the first choice changes.</summary>
/// <param name="First">The first choice; null when nothing may be pulled, and then nothing is looked for.</param>
/// <param name="Numbers">Turning points of measured numbers, the nearest in measuring errors first.</param>
/// <param name="Answers">Answers of closed lists that would change it.</param>
/// <param name="Asked">How many facts (sides apart) were moved.</param>
/// <param name="LeftOut">Facts that are not moved, by why.</param>
public sealed record TurningPoints(Variant? First, IReadOnlyList<TurningPoint> Numbers, IReadOnlyList<OtherAnswer> Answers, int Asked, IReadOnlyList<LeftOut> LeftOut);
