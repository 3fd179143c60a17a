namespace HingeSelector.Words;

/// <summary>Every word that files and rules may use, with the layout of the fact tables.</summary>
public sealed class Vocabulary
{
    private readonly Dictionary<string, Word> _words;
    private readonly Dictionary<string, IReadOnlyList<Word>> _groups;

    /// <summary>Lays the words out in slots.</summary>
    /// <param name="words">Words in any order; their slots are assigned here.</param>
    /// <param name="groups">Groups that can be answered with one line.</param>
    /// <param name="clearance">What a clearance is written in.</param>
    public Vocabulary(IEnumerable<Word> words, IReadOnlyList<WordGroup> groups, ClearanceTerms clearance)
    {
        var placed = new List<Word>();
        var (athlete, candidate) = (0, 0);
        foreach (var word in words)
        {
            var size = Math.Max(1, word.Readings.Count);
            placed.Add(word with { Slot = word.OfCandidate ? candidate : athlete });
            if (word.OfCandidate)
                candidate += size;
            else
                athlete += size;
        }
        Words = placed;
        AthleteSlots = athlete;
        CandidateSlots = candidate;
        _words = placed.ToDictionary(w => w.Id, StringComparer.Ordinal);
        Groups = groups;
        Clearance = clearance;
        _groups = GroupsOf(placed);
    }

    /// <summary>All words in file order, computed ones last.</summary>
    public IReadOnlyList<Word> Words { get; }

    /// <summary>Groups that can be answered with one line.</summary>
    public IReadOnlyList<WordGroup> Groups { get; }

    /// <summary>What a clearance is written in.</summary>
    public ClearanceTerms Clearance { get; }

    /// <summary>Size of the athlete's fact table.</summary>
    public int AthleteSlots { get; }

    /// <summary>Size of a candidate's fact table.</summary>
    public int CandidateSlots { get; }

    /// <summary>Ids of all words.</summary>
    public IReadOnlyCollection<string> Ids => _words.Keys;

    /// <summary>Ids of all groups.</summary>
    public IReadOnlyCollection<string> GroupIds => _groups.Keys;

    /// <summary>Finds a word by id, or null.</summary>
    public Word? Find(string id) => _words.GetValueOrDefault(id);

    /// <summary>A word that the program itself relies on.</summary>
    /// <exception cref="KeyNotFoundException">The vocabulary file no longer declares it.</exception>
    public Word this[string id] => Find(id) ?? throw new KeyNotFoundException($"The vocabulary no longer holds '{id}', which the program needs.");

    /// <summary>Words of a group; empty for an unknown group.</summary>
    public IReadOnlyList<Word> InGroup(string group) => _groups.GetValueOrDefault(group) ?? [];

    private static Dictionary<string, IReadOnlyList<Word>> GroupsOf(List<Word> words)
    {
        var groups = new Dictionary<string, IReadOnlyList<Word>>(StringComparer.Ordinal);
        foreach (var group in words.SelectMany(w => w.Groups).Distinct(StringComparer.Ordinal))
            groups.Add(group, [.. words.Where(w => w.Groups.Contains(group))]);
        return groups;
    }

    /// <summary>A reading of a word, or null when the word has no such reading.</summary>
    public static WordReading? Reading(Word word, string? name)
    {
        if (word.Readings.Count == 0)
            return name is null ? new WordReading(word, null, word.Slot) : null;
        for (var i = 0; i < word.Readings.Count; i++)
        {
            if (word.Readings[i] == (name ?? ""))
                return new WordReading(word, name, word.Slot + i);
        }
        return null;
    }
}
