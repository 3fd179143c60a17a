namespace HingeSelector.Diagnostics;

/// <content>Philosophies, which change the base and may not loosen it: HS36xx; those of record in a file of standing choices: HS56xx.</content>
public static partial class Problems
{
    private const string Sealed = "A philosophy may be stricter (add a stop, an exclusion or a caution), never looser. What should change for everyone is changed in the rule itself.";

    /// <summary>HS3601: a change of a rule that the base does not hold.</summary>
    public static Diagnostic UnknownRule(SourceSpan at, string id, IReadOnlyCollection<string> known)
        => Error("HS3601", at, $"The base has no rule '{id}'.", NearestName.Find(id, known) is { } near ? $"Did you mean '{near}'?" : "Remove the entry if the rule has been given up, or write its new name.");

    /// <summary>HS3602: a change to what the base says already.</summary>
    public static Diagnostic NoDifference(SourceSpan at, string what, string value) => Error("HS3602", at, $"{what} is '{value}' in the base already, so this changes nothing.", "Remove the line, or write what should differ.");

    /// <summary>HS3603: a rule that may not be changed or switched off.</summary>
    public static Diagnostic SealedRule(SourceSpan at, string id, string why) => Error("HS3603", at, $"'{id}' is sealed: {why}.", Sealed);

    /// <summary>HS3604: a change of something that the rule does not have.</summary>
    public static Diagnostic NoSuchLine(SourceSpan at, string rule, string what, IReadOnlyCollection<string> has)
        => Error("HS3604", at, $"'{rule}' has no {what}.", has.Count == 0 ? "To say something else, switch the rule off and add one." : $"It has {string.Join("; ", has.Select(h => $"'{h}'"))}.");

    /// <summary>HS3605: a change of more than the number of a condition.</summary>
    public static Diagnostic OtherForm(SourceSpan at, string was, string text) => Error("HS3605", at, $"'{text}' is another kind of condition than '{was}'; a philosophy changes the numbers in it.", "Write it in the same form, or switch the rule off and add one.");

    /// <summary>HS3606: a rule that would let a sealed rule go missing.</summary>
    public static Diagnostic ClearsSealed(SourceSpan at, string rule, string finding, string reader)
        => Error("HS3606", at, $"'{rule}' concludes '{finding}', and the sealed rule '{reader}' holds only while it is absent.", $"Conclude something else. {Sealed}");

    /// <summary>HS3607: a rule that would move the set-up under a sealed rule.</summary>
    public static Diagnostic MovesSealedSetUp(SourceSpan at, string rule, string key, string reader)
        => Error("HS3607", at, $"'{rule}' requests '{key}', and the sealed rule '{reader}' reads the set-up that follows from it.", $"Leave {key} to the base. {Sealed}");

    /// <summary>HS3608: a finding that nothing concludes any more.</summary>
    public static Diagnostic FindingLosesItsRules(SourceSpan at, string rule, string finding, string reader)
        => Error("HS3608", at, $"Without '{rule}' nothing concludes '{finding}', which '{reader}' still reads.", "Switch the reader off too, or add a rule that concludes it.");

    /// <summary>HS3609: two entries about one rule.</summary>
    public static Diagnostic ChangedTwice(SourceSpan at, string rule, SourceSpan first) => Error("HS3609", at, $"'{rule}' has an entry in line {first.Line + 1} already.", "Keep one of the two.");

    /// <summary>HS3610: a change that names nothing.</summary>
    public static Diagnostic EmptyChange(SourceSpan at, string rule) => Error("HS3610", at, $"The change of '{rule}' names nothing that changes.", "Add 'points', 'when' or 'because', or remove the entry.");

    /// <summary>HS5601: a philosophy decided twice for one day.</summary>
    public static Diagnostic DecidedTwice(SourceSpan at, string who, string since, SourceSpan first) => Error("HS5601", at, $"Two philosophies are decided for '{who}' since {since} (the other in line {first.Line + 1}).", "Keep one of the two, or correct a date.");

    /// <summary>HS5602: two keys of which exactly one is expected.</summary>
    public static Diagnostic OneOfTwoKeys(SourceSpan at, string what, string first, string second) => Error("HS5602", at, $"{what} names either '{first}' or '{second}'.", $"Write '{first}: ...' for one athlete, '{second}: ...' for all of a group.");

    /// <summary>HS5603: a decision about nobody on the roster.</summary>
    public static Diagnostic DecidedForNobody(SourceSpan at, string kind, string name, IReadOnlyCollection<string> known)
        => Warning("HS5603", at, $"No {kind} '{name}' is on the roster, so this philosophy of record is not used.", NearestName.Find(name, known) is { } near ? $"Did you mean '{near}'?" : null);

    /// <summary>HS3611: the proof over the rule graph fails.</summary>
    public static Diagnostic SealBroken(SourceSpan at, string philosophy, string what) => Error("HS3611", at, $"Under '{philosophy}' {what}.", Sealed);
}
