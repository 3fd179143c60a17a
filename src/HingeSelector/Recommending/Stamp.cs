namespace HingeSelector.Recommending;

/// <summary>What an answer rests on: same input and same stamp give the same bytes.</summary>
/// <param name="Tool">Version of the tool.</param>
/// <param name="Rules">Hash of all rule, variant, vocabulary and model files.</param>
/// <param name="Philosophy">Id of the philosophy.</param>
/// <param name="On">Day of the answer.</param>
/// <param name="Input">Hash of the athlete's answers, room and standing choice.</param>
/// <param name="Decision">Who decided the philosophy, since when and for whom; null when it was asked for or is the default.</param>
public sealed record Stamp(string Tool, string Rules, string Philosophy, DateOnly On, string Input, Screening.PhilosophyDecision? Decision = null);
