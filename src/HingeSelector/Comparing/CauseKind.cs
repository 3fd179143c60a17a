namespace HingeSelector.Comparing;

/// <summary>How an edit is known to change an answer.</summary>
public enum CauseKind
{
    /// <summary>Made alone, each of them changes the answer.</summary>
    Alone,

    /// <summary>None does alone; taken back, each of them changes the answer.</summary>
    Together,

    /// <summary>It is one of these; which, has not been told apart.</summary>
    NotToldApart,
}
