namespace HingeSelector.Diagnostics;

/// <content>What can be known of the rules without an athlete: HS31xx.</content>
public static partial class Problems
{
    /// <summary>HS3101: conditions that exclude each other.</summary>
    public static Diagnostic NeverFires(SourceSpan at, string rule, IReadOnlyList<string> lines, IReadOnlyList<string> dependents)
        => Error("HS3101", at, $"'{rule}' can never fire: no screen can meet {Quoted(lines)}.",
            dependents.Count == 0 ? "Change one of these lines, or remove the rule." : $"Change one of these lines, or remove the rule. What it would find is never found, so these can never fire either: {string.Join(", ", dependents)}.") with
        { Subject = rule };

    /// <summary>HS3102: a line that every answer meets.</summary>
    public static Diagnostic ExcludesNobody(SourceSpan at, string rule, string line)
        => Warning("HS3102", at, $"The line '{line}' of '{rule}' leaves nobody out: every answer that can be given meets it.", "Remove the line, or write the value that was meant.") with { Subject = rule };

    /// <summary>HS3103: a rule that another one covers.</summary>
    public static Diagnostic AddsNothing(SourceSpan at, string rule, string other, SourceSpan otherAt, bool same)
        => Warning("HS3103", at, same
            ? $"'{rule}' fires exactly when '{other}' ({otherAt.FileAndLine}) does, and concludes nothing else."
            : $"Whenever '{rule}' fires, '{other}' ({otherAt.FileAndLine}) fires too and concludes all that it does.", "Remove it, or narrow the other one.") with
        { Subject = rule };

    /// <summary>HS3104: a request that is always overruled.</summary>
    public static Diagnostic AlwaysOverruled(SourceSpan at, string rule, string request, string other, string stronger, SourceSpan otherAt)
        => Warning("HS3104", at, $"The request '{request}' of '{rule}' never stands: whenever it is made, '{other}' ({otherAt.FileAndLine}) asks for '{stronger}', which is more cautious and wins.", "Narrow one of the two, or remove the request.") with { Subject = rule };

    /// <summary>HS3105: a rule that speaks only of variants that are out.</summary>
    public static Diagnostic CountsForNobody(SourceSpan at, string rule, string what, string other, SourceSpan otherAt)
        => Warning("HS3105", at, $"The {what} of '{rule}' never count: whenever it fires, '{other}' ({otherAt.FileAndLine}) takes the variant out.", "Decide which of the two is meant, and narrow or remove the other.") with { Subject = rule };

    /// <summary>HS3106: a cue that is always withheld.</summary>
    public static Diagnostic AlwaysWithheld(SourceSpan at, string rule, string ask, string other, SourceSpan otherAt)
        => Warning("HS3106", at, $"The cue of '{rule}' is never said: whenever it fires, '{other}' ({otherAt.FileAndLine}) withholds cues that ask '{ask}'.", "Narrow one of the two, or remove the cue.") with { Subject = rule };

    /// <summary>HS3107: a screen that leaves nothing.</summary>
    public static Diagnostic NothingLeft(SourceSpan at, string how)
        => Warning("HS3107", at, $"There are screens on which nothing stops the athlete and yet every variant is out ({how}).", "Leave something that may be done, or stop the athlete and say who to see.");

    /// <summary>HS3108: a screen that leaves only what carries no load.</summary>
    public static Diagnostic OnlyDrillsLeft(SourceSpan at, string drills, string how)
        => Warning("HS3108", at, $"There are screens on which nothing stops the athlete and yet only {drills} is left, which carries no load ({how}).", "Leave a variant with load, or stop the athlete and say who to see.");

    /// <summary>HS3109: a cell of the matrix in which nobody speaks.</summary>
    public static Diagnostic MatrixHole(SourceSpan at, string variant, string criterion, string hole)
        => Warning("HS3109", at, $"For '{variant}' and '{criterion}': {hole}.", "Write the rule that is missing; 'hinge-selector rules matrix --rules' shows the neighbours.") with { Subject = $"{criterion} {variant}" };

    /// <summary>HS3110: a grade that none of the sources carries.</summary>
    public static Diagnostic GradeNotCarried(SourceSpan at, string where, string grade, IReadOnlyList<string> found, IReadOnlyList<string> needed)
        => Error("HS3110", at, $"{where} is graded '{grade}', but its sources are of kind {string.Join(", ", found)}; that grade needs {OneOf(needed)}.", "Name a source that carries the grade, or lower the grade to what the sources carry.") with { Subject = where };

    /// <summary>HS3111: a source that nothing cites.</summary>
    public static Diagnostic NeverCited(SourceSpan at, string source)
        => Warning("HS3111", at, $"Nothing cites the source '{source}'.", "Cite it where it belongs, remove it, or say in rules/accepted.yaml why it stays.") with { Subject = source };

    /// <summary>HS3112: a fact that nothing reads.</summary>
    public static Diagnostic NeverRead(SourceSpan at, string word)
        => Warning("HS3112", at, $"No rule reads the fact '{word}', and the program does not use it, so asking for it changes nothing.", "Write the rule that needs it, remove the fact, or say in rules/accepted.yaml why it is asked.") with { Subject = word };

    /// <summary>HS3113: a finding that nothing reads.</summary>
    public static Diagnostic FindingNeverRead(SourceSpan at, string finding)
        => Warning("HS3113", at, $"No rule reads the finding '{finding}'.", "Write the rule that needs it, or remove the finding and the rules that conclude it.") with { Subject = finding };

    /// <summary>HS3114: a request that cannot be carried out.</summary>
    public static Diagnostic NotPermitted(SourceSpan at, string rule, string request, string permit)
        => Warning("HS3114", at, $"The request '{request}' of '{rule}' cannot be carried out: none of its variants permits '{permit}'.", $"Add 'permits: includes {permit}' to see which variants are left, or remove the request.") with { Subject = rule };

    /// <summary>HS3115: a stop of today that says no to everything and names nothing else.</summary>
    public static Diagnostic StopWithoutOption(SourceSpan at, string rule)
        => Warning("HS3115", at, $"The stop of '{rule}' is of level today and leaves nothing to do.", "Say with 'allow only' what may still be done, or make it a stop of level refer.") with { Subject = rule };

    /// <summary>HS3116: a cue that names nothing that it asks.</summary>
    public static Diagnostic CueAsksNothing(SourceSpan at, string rule)
        => Warning("HS3116", at, $"The cue of '{rule}' names nothing that it asks of the body, so no rule can withhold it.", "Name under 'asks' what the words ask.") with { Subject = rule };

    /// <summary>HS3117: a withheld cue that nobody gives.</summary>
    public static Diagnostic WithholdsNothing(SourceSpan at, string rule, string ask)
        => Warning("HS3117", at, $"'{rule}' withholds cues that ask '{ask}', but no cue asks it.", "Check the name, or remove it.") with { Subject = rule };

    /// <summary>HS3118: a rule that asks for more than stands without it, and no word of caution with it.</summary>
    public static Diagnostic RaisesWithoutCaution(SourceSpan at, string rule, string request)
        => Warning("HS3118", at, $"'{rule}' asks for '{request}', more than stands without it, and there are screens on which no caution from the same facts comes with it.", "Add a caution, ask for less load beside it, or have a caution fire whenever it does.") with { Subject = rule };

    /// <summary>HS3119: a rule that speaks for something after an injury, and no word of caution with it.</summary>
    public static Diagnostic HistoryWithoutCaution(SourceSpan at, string rule)
        => Warning("HS3119", at, $"'{rule}' speaks for something in athletes with an injury on file, and there are screens on which no caution about the injury comes with it.", "Add a caution, or have one fire whenever it does.") with { Subject = rule };

    /// <summary>HS3120: a source that has been withdrawn.</summary>
    public static Diagnostic Retracted(SourceSpan at, string where, string source)
        => Error("HS3120", at, $"{where} cites '{source}', which has been retracted.", "Name another source, or lower the grade to 'practice' and say that there is none.") with { Subject = where };

    /// <summary>HS3121: a source that a later one replaces.</summary>
    public static Diagnostic Superseded(SourceSpan at, string where, string source)
        => Warning("HS3121", at, $"{where} cites '{source}', which a later publication replaces.", "Read the later one and cite it.") with { Subject = where };

    /// <summary>HS3122: an acceptance that accepts nothing.</summary>
    public static Diagnostic UnusedAcceptance(SourceSpan at, string code, string of)
        => Warning("HS3122", at, $"'{code}' is accepted for '{of}', but there is no such warning any more.", "Remove it.");

    /// <summary>HS3123: a branch that nobody can meet.</summary>
    public static Diagnostic DeadBranch(SourceSpan at, string rule, string branch)
        => Warning("HS3123", at, $"The branch '{branch}' of '{rule}' can never hold together with its other lines.", "Remove the branch, or change the line that it contradicts.") with { Subject = rule };

    /// <summary>HS3124: a question that was given up.</summary>
    public static Diagnostic NotDecided(SourceSpan at, string about)
        => Warning("HS3124", at, $"The search for {about} was given up: the conditions hang together in too many ways. Nothing is said about it, neither good nor bad.", "Split rules with many 'any of' lines into findings.") with { Subject = about };

    private static string Quoted(IReadOnlyList<string> lines) => lines.Count == 1 ? $"'{lines[0]}'" : string.Join(", ", lines.Take(lines.Count - 1).Select(l => $"'{l}'")) + $" and '{lines[^1]}' together";
}
