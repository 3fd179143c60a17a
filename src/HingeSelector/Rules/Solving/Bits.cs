using System.Numerics;

namespace HingeSelector.Rules.Solving;

/// <summary>A set of states of one family; never changed once made.</summary>
internal sealed class Bits
{
    private readonly ulong[] _words;

    private Bits(ulong[] words) => _words = words;

    /// <summary>The states for which a test holds.</summary>
    public static Bits Where(int count, Func<int, bool> test)
    {
        var words = new ulong[(count + 63) / 64];
        for (var i = 0; i < count; i++)
        {
            if (test(i))
                words[i >> 6] |= 1UL << (i & 63);
        }
        return new Bits(words);
    }

    /// <summary>Whether no state belongs to it.</summary>
    public bool IsEmpty
    {
        get
        {
            foreach (var word in _words)
            {
                if (word != 0)
                    return false;
            }
            return true;
        }
    }

    /// <summary>Whether exactly one state belongs to it.</summary>
    public bool IsSingle => _words.Sum(BitOperations.PopCount) == 1;

    /// <summary>The first state; -1 when there is none.</summary>
    public int First
    {
        get
        {
            for (var i = 0; i < _words.Length; i++)
            {
                if (_words[i] != 0)
                    return (i << 6) + BitOperations.TrailingZeroCount(_words[i]);
            }
            return -1;
        }
    }

    /// <summary>Whether a state belongs to it.</summary>
    public bool Has(int state) => (_words[state >> 6] >> (state & 63) & 1) != 0;

    /// <summary>What belongs to both.</summary>
    public Bits And(Bits other)
    {
        var words = new ulong[_words.Length];
        for (var i = 0; i < words.Length; i++)
            words[i] = _words[i] & other._words[i];
        return new Bits(words);
    }

    /// <summary>Whether no state belongs to both.</summary>
    public bool Misses(Bits other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            if ((_words[i] & other._words[i]) != 0)
                return false;
        }
        return true;
    }

    /// <summary>Whether all of it belongs to the other.</summary>
    public bool Within(Bits other)
    {
        for (var i = 0; i < _words.Length; i++)
        {
            if ((_words[i] & ~other._words[i]) != 0)
                return false;
        }
        return true;
    }
}
