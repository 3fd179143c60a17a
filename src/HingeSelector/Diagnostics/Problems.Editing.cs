namespace HingeSelector.Diagnostics;

/// <content>Editing of rules by the program: HS35xx.</content>
public static partial class Problems
{
    /// <summary>HS3501: a place of a new rule that its author has still to fill.</summary>
    public static Diagnostic StillToFill(SourceSpan at, string what) => Error("HS3501", at, $"This is still to be filled: {what}.", "Write it in place of the capital letters; content/rule-language.md shows the forms.");
}
