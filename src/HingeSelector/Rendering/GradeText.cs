using HingeSelector.Knowledge;

namespace HingeSelector.Rendering;

/// <summary>The word of a grade.</summary>
public static class GradeText
{
    /// <summary>As in rule files.</summary>
    public static string Word(Grade grade) => grade.ToString().ToLowerInvariant();

    /// <summary>What it says about the reason.</summary>
    public static string Meaning(Grade grade) => grade switch
    {
        Grade.Trial => "measured in trained people.",
        Grade.Laboratory => "measured, but indirectly.",
        Grade.Mechanics => "computed by the posture and statics model.",
        Grade.Consensus => "position statement or guideline.",
        _ => "common practice, no source.",
    };
}
