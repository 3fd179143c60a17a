using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>Every question that the rules of a book ask of a single word, once each.</summary>
internal sealed class Leaves
{
    private readonly Dictionary<string, Condition> _byKey = new(StringComparer.Ordinal);
    private readonly ILookup<string, Condition> _byWord;

    /// <summary>Collects them.</summary>
    public Leaves(IReadOnlyList<Rule> rules)
    {
        foreach (var condition in rules.SelectMany(r => r.Conditions))
            Collect(condition);
        _byWord = _byKey.Values.ToLookup(c => c.Reads.First().Word.Id, StringComparer.Ordinal);
    }

    /// <summary>The questions about a word.</summary>
    public IEnumerable<Condition> About(Word word) => _byWord[word.Id];

    /// <summary>Every word that is asked about.</summary>
    public IEnumerable<Word> Words => _byKey.Values.Select(c => c.Reads.First().Word).DistinctBy(w => w.Id);

    private void Collect(Condition condition)
    {
        switch (condition)
        {
            case NumberCondition or ValuesCondition:
                _byKey.TryAdd(condition.Key, condition);
                break;
            case NotCondition not:
                Collect(not.Part);
                break;
            case AllCondition all:
                foreach (var part in all.Parts)
                    Collect(part);
                break;
            case AnyCondition any:
                foreach (var part in any.Parts)
                    Collect(part);
                break;
        }
    }
}
