namespace HingeSelector.Diagnostics;

/// <content>Explanations: HS6xxx.</content>
public static partial class Problems
{
    /// <summary>HS6001: a change that is not in the form FACT=VALUE.</summary>
    public static Diagnostic BadWhatIf(SourceSpan at, string text) => Error("HS6001", at, $"'{text}' is not a change.", "Write FACT=VALUE, for example 'hinge-control=keeps', or with a side 'hip-flexion left=110 deg'.");

    /// <summary>HS6002: a change of the room where no room is given.</summary>
    public static Diagnostic WhatIfWithoutRoom(SourceSpan at, string word) => Error("HS6002", at, $"'{word}' is counted in a room, and no room is given.", "Add '--room FILE'.");

    /// <summary>HS6003: kit that a room does not have and that has sizes of its own.</summary>
    public static Diagnostic WhatIfNeedsSizes(SourceSpan at, string word, string room) => Error("HS6003", at, $"The room '{room}' has none of '{word}', so their sizes are not known.", "Enter them in a copy of the room file and ask with that.");

    /// <summary>HS6004: a change of an answer about safety that would loosen what holds.</summary>
    public static Diagnostic WhatIfLoosens(SourceSpan at, string label, string why)
        => Error("HS6004", at, $"With this answer a stop, a question, an exclusion, a limit or a caution that holds today would no longer hold, and '{label}' is not changed to see that: {why}.", "If the answer on file is wrong, ask the athlete again and enter what they say.");

    /// <summary>HS6005: one fact changed twice.</summary>
    public static Diagnostic WhatIfTwice(SourceSpan at, string word) => Error("HS6005", at, $"'{word}' is changed twice.", "Give one value.");
}
