namespace HingeSelector.Diagnostics;

/// <summary>A change of a piece of a file that would mend a fault. Lines and columns are zero-based.</summary>
/// <param name="Source">The file as it was read.</param>
/// <param name="Line">First line.</param>
/// <param name="Column">First column that is replaced.</param>
/// <param name="EndLine">Last line.</param>
/// <param name="EndColumn">Column behind the last one that is replaced.</param>
/// <param name="NewText">What stands there afterwards.</param>
/// <param name="Does">What the change does, as a sentence.</param>
/// <param name="Safe">Whether it can be made without asking: what was meant is beyond doubt, or no decision changes.</param>
public sealed record SuggestedEdit(SourceText Source, int Line, int Column, int EndLine, int EndColumn, string NewText, string Does, bool Safe)
{
    /// <summary>Replaces one piece of a line.</summary>
    /// <param name="span">The piece.</param>
    /// <param name="newText">What stands there afterwards.</param>
    /// <param name="does">What the change does.</param>
    /// <param name="safe">Whether it can be made without asking.</param>
    /// <returns>The edit; null when the piece is in no file.</returns>
    public static SuggestedEdit? Of(SourceSpan span, string newText, string does, bool safe)
        => span.Source is null ? null : new SuggestedEdit(span.Source, span.Line, span.Column, span.Line, span.Column + span.Length, newText, does, safe);
}
