using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>How much is on file about an athlete's training. A stranger is not a trained lifter.</summary>
internal static class TrainingWords
{
    /// <summary>The value of <c>training-on-file</c>: none, partly or yes.</summary>
    public static FactValue OnFile(FactValue[] facts, Vocabulary vocabulary)
        => FactValue.Choice((facts[vocabulary["training-age"].Slot].IsKnown ? 1 : 0) + (facts[vocabulary["pulled-before"].Slot].IsKnown ? 1 : 0));
}
