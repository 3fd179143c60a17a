namespace HingeSelector.Diagnostics;

/// <summary>A piece of a file. Lines and columns are zero-based here and one-based only when printed.</summary>
/// <param name="Source">The file; null for a place that no file holds, such as an option of the command line.</param>
/// <param name="Line">Zero-based line.</param>
/// <param name="Column">Zero-based column.</param>
/// <param name="Length">Characters covered on that line.</param>
public sealed record SourceSpan(SourceText? Source, int Line, int Column, int Length)
{
    /// <summary>A place outside any file.</summary>
    public static SourceSpan None { get; } = new(null, 0, 0, 0);

    /// <summary>file:line:column, one-based; empty outside a file.</summary>
    public override string ToString() => Source is null ? "" : $"{Source.Path}:{Line + 1}:{Column + 1}";

    /// <summary>file:line, one-based; empty outside a file.</summary>
    public string FileAndLine => Source is null ? "" : $"{Source.Path}:{Line + 1}";
}
