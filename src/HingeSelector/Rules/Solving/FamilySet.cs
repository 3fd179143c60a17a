namespace HingeSelector.Rules.Solving;

/// <summary>Some families, for quick comparison.</summary>
internal sealed class FamilySet
{
    private readonly ulong[] _words;

    private FamilySet(ulong[] words) => _words = words;

    /// <summary>The families that a form asks.</summary>
    public static FamilySet Of(Form form) => form switch
    {
        LeafForm leaf => OnlyOf(leaf.Family),
        NotForm not => Of(not.Part),
        AllForm all => Union([.. all.Parts.Select(Of)]),
        AnyForm any => Union([.. any.Parts.Select(Of)]),
        _ => new FamilySet([]),
    };

    /// <summary>One family.</summary>
    public static FamilySet OnlyOf(Family family)
    {
        var words = new ulong[(family.Index >> 6) + 1];
        words[^1] = 1UL << (family.Index & 63);
        return new FamilySet(words);
    }

    /// <summary>All families of some sets.</summary>
    public static FamilySet Union(IReadOnlyList<FamilySet> sets)
    {
        var words = new ulong[sets.Select(s => s._words.Length).DefaultIfEmpty(0).Max()];
        foreach (var set in sets)
        {
            for (var i = 0; i < set._words.Length; i++)
                words[i] |= set._words[i];
        }
        return new FamilySet(words);
    }

    /// <summary>The families, by place, for which a test holds.</summary>
    public static FamilySet Where(int count, Func<int, bool> test)
    {
        var words = new ulong[(count + 63) / 64];
        for (var i = 0; i < count; i++)
        {
            if (test(i))
                words[i >> 6] |= 1UL << (i & 63);
        }
        return new FamilySet(words);
    }

    /// <summary>This set without the families of another.</summary>
    public FamilySet Without(FamilySet other)
    {
        var words = (ulong[])_words.Clone();
        for (var i = Math.Min(words.Length, other._words.Length) - 1; i >= 0; i--)
            words[i] &= ~other._words[i];
        return new FamilySet(words);
    }

    /// <summary>Whether a family belongs to both.</summary>
    public bool Overlaps(FamilySet other)
    {
        for (var i = Math.Min(_words.Length, other._words.Length) - 1; i >= 0; i--)
        {
            if ((_words[i] & other._words[i]) != 0)
                return true;
        }
        return false;
    }

    /// <summary>Whether every family of this set belongs to the other.</summary>
    public bool Within(FamilySet other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            if ((_words[i] & ~(i < other._words.Length ? other._words[i] : 0)) != 0)
                return false;
        }
        return true;
    }
}
