using HingeSelector.Diagnostics;

namespace HingeSelector.Screening;

/// <summary>The invisible mark that some spreadsheets put before the first letter of a file.</summary>
internal static class ByteOrderMark
{
    /// <summary>The same file without the mark, so that columns count what people see.</summary>
    public static SourceText Without(SourceText source)
        => source.Text.StartsWith('\uFEFF') ? new SourceText(source.Path, source.Text[1..]) : source;
}
