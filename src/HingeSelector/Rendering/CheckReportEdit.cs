using HingeSelector.Diagnostics;

namespace HingeSelector.Rendering;

/// <summary>An edit of a <see cref="CheckReport"/>. Lines and columns are one-based; the end is the first place that stays.</summary>
/// <param name="File">The file.</param>
/// <param name="Line">First line.</param>
/// <param name="Column">First column.</param>
/// <param name="EndLine">Line of the end.</param>
/// <param name="EndColumn">Column of the end.</param>
/// <param name="NewText">What stands there afterwards.</param>
/// <param name="Does">What the edit does.</param>
/// <param name="Safe">Whether <c>--fix</c> makes it.</param>
public sealed record CheckReportEdit(string File, int Line, int Column, int EndLine, int EndColumn, string NewText, string Does, bool Safe)
{
    /// <summary>Writes down an edit.</summary>
    public static CheckReportEdit Of(SuggestedEdit edit)
        => new(edit.Source.Path, edit.Line + 1, edit.Column + 1, edit.EndLine + 1, edit.EndColumn + 1, edit.NewText, edit.Does, edit.Safe);
}
