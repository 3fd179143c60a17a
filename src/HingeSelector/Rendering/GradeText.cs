using HingeSelector.Knowledge;

namespace HingeSelector.Rendering;

/// <summary>The word of a grade.</summary>
public static class GradeText
{
    /// <summary>As in rule files.</summary>
    public static string Word(Grade grade) => grade.ToString().ToLowerInvariant();
}
