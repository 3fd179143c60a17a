namespace HingeSelector.Screening;

/// <summary>Everything on file about one athlete: who, screen, day, clearances.</summary>
public sealed record AthleteRecord
{
    /// <summary>Id on the roster, or the file's name.</summary>
    public required string Id { get; init; }

    /// <summary>Name or code; null when not given.</summary>
    public string? Name { get; init; }

    /// <summary>Date of the screen; null without one.</summary>
    public DateOnly? ScreenDate { get; init; }

    /// <summary>Answers, blanket answers already spread over the words that they cover.</summary>
    public required IReadOnlyDictionary<AnswerKey, Answer> Answers { get; init; }

    /// <summary>Clearances on file.</summary>
    public IReadOnlyList<Clearance> Clearances { get; init; } = [];

    /// <summary>Held heights pull by pull, when they were given as a list; a single one is among the answers.</summary>
    public IReadOnlyList<HeldEntry> HeldHeights { get; init; } = [];

    /// <summary>The answer to a word without sides, or to its left side; null without one.</summary>
    public Answer? Find(string word, int side = 0) => Answers.GetValueOrDefault(new AnswerKey(word, side));
}
