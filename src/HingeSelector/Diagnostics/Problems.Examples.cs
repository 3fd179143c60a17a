namespace HingeSelector.Diagnostics;

/// <content>Examples inside rules: HS3060 to HS3069.</content>
public static partial class Problems
{
    /// <summary>HS3060: a change against an example that does not fire.</summary>
    public static Diagnostic ChangeOfWhatDoesNotFire(SourceSpan at)
        => Error("HS3060", at, "Changes stand below an example that fires, so that what changed is the reason.", "Move them below an example with 'expect: fires', or write them as examples in full.");

    /// <summary>HS3061: a reason for firing.</summary>
    public static Diagnostic ReasonForFiring(SourceSpan at)
        => Error("HS3061", at, "'because' names what keeps a rule from firing; a rule that fires meets every condition.", "Remove it, or write 'expect: does not fire' or 'expect: open'.");

    /// <summary>HS3062: an example that comes out as expected, for another reason.</summary>
    public static Diagnostic WrongReason(SourceSpan at, string rule, string named, string found)
        => Error("HS3062", at, $"The example of '{rule}' names '{named}' as the reason, but the reason is {found}.", "Name the true reason, or give the facts that leave only the named one.");
}
