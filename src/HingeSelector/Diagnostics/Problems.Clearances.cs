namespace HingeSelector.Diagnostics;

/// <content>Clearances: HS5007 and HS5026 to HS5034.</content>
public static partial class Problems
{
    private const string LocalRules = "Local law and the rules of your club come first; the list stands under clearance-professions in the vocabulary.";

    /// <summary>HS5007: a cell that holds no clearance.</summary>
    public static Diagnostic BadClearance(SourceSpan at, string text) => Error("HS5007", at, $"'{text}' is not a clearance.", "Write 'PROFESSION; WHO; DATE; for elbow-operation right; valid until DATE; covers load-in-hand + spinal-load; cap 40 kg; seen by WHO' (the cap may be left out).");

    /// <summary>HS5026: the letter is signed and seen by the same person.</summary>
    public static Diagnostic SignedAndSeenByOne(SourceSpan at, string who) => Error("HS5026", at, $"'{who}' has signed the clearance and has seen it for the staff; these are two people.", "Name who of the staff has read the letter.");

    /// <summary>HS5027: a letter that holds for more than a year.</summary>
    public static Diagnostic ClearanceTooLong(SourceSpan at, string last, string latest) => Error("HS5027", at, $"The clearance ends on {last}, more than a year after its date; a year later ({latest}) someone looks again.", "Enter the last day that the letter names, at most a year on.");

    /// <summary>HS5028: a letter that does not say what it is for.</summary>
    public static Diagnostic ClearanceForNothing(SourceSpan at, string add) => Error("HS5028", at, "The clearance does not say which injury, operation or condition it is for, so it opens nothing.", $"Add {add}: one or more words of 'history', with the side where there is one.");

    /// <summary>HS5029: a letter about one of two sides that does not say which.</summary>
    public static Diagnostic ClearanceWithoutSide(SourceSpan at, string item) => Error("HS5029", at, $"The clearance is for '{item}' and does not say for which side.", $"Write '{item} left' or '{item} right', as the letter says; for both, name both.");

    /// <summary>HS5030: the word of somebody who is no clinician.</summary>
    public static Diagnostic NoClinician(SourceSpan at, string profession, IReadOnlyCollection<string> clinicians) => Error("HS5030", at, $"The word of a {profession} is no clearance.", $"Enter the letter of a licensed clinician: {OneOf(clinicians)}. {LocalRules}");

    /// <summary>HS5031: a letter outside what a profession may clear.</summary>
    public static Diagnostic ProfessionMayNot(SourceSpan at, string profession, string item, IReadOnlyCollection<string> who) => Error("HS5031", at, $"A letter of a {profession} does not count for '{item}' here.", $"Ask for one of a {OneOf(who)}. {LocalRules}");

    /// <summary>HS5032: a letter about something that is not on file.</summary>
    public static Diagnostic LetterForNothing(SourceSpan at, string item) => Warning("HS5032", at, $"The clearance is for '{item}', which the history does not name; it opens nothing.", "Check both: what the letter is about, and what the history says.");

    /// <summary>HS5033: a history without the side that the letter names.</summary>
    public static Diagnostic HistoryWithoutSide(SourceSpan at, string plain, string item) => Warning("HS5033", at, $"The history names '{plain}' without its side, so it may be either, and the letter for '{item}' opens nothing.", $"Ask, and write '{item}' in the history if that is the one.");

    /// <summary>HS5034: a profession that is not in the list.</summary>
    public static Diagnostic UnknownProfession(SourceSpan at, string text, IReadOnlyCollection<string> professions, IReadOnlyCollection<string> clinicians)
        => Error("HS5034", at, $"'{text}' is not a profession in the list; expected {OneOf(clinicians)}.", NearestName.Find(text, professions) is { } near ? $"Did you mean '{near}'?" : LocalRules);
}
