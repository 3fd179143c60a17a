namespace HingeSelector.Words;

/// <summary>One way to read a word, with the slot in which its value is held.</summary>
/// <param name="Word">The word.</param>
/// <param name="Name">The reading; null for a bare word.</param>
/// <param name="Slot">Place in the fact table of the athlete or of the candidate.</param>
public sealed record WordReading(Word Word, string? Name, int Slot)
{
    /// <summary>As written in a rule.</summary>
    public override string ToString() => Name is null ? Word.Id : $"{Word.Id}, {Name}";
}
