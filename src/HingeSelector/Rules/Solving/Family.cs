using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Solving;

/// <summary>Words whose values hang together and are decided together, with every state that rules can tell apart.</summary>
/// <remarks>A state is one way in which the words may stand: known, not known, not applicable, and for sides how left and right stand to each other. The states are complete: whatever an athlete's answers are, one of the states comes out the same in every condition of the book.</remarks>
internal sealed class Family
{
    private readonly IReadOnlyList<FamilyState> _states;
    private readonly Dictionary<string, LeafForm> _leaves = new(StringComparer.Ordinal);

    /// <summary>Takes the states.</summary>
    /// <param name="index">Place among the families of the space.</param>
    /// <param name="name">What it is about.</param>
    /// <param name="states">The states, the plainest first.</param>
    /// <param name="leaves">The conditions that read it, in the order of the truths in the states.</param>
    public Family(int index, string name, IReadOnlyList<FamilyState> states, IReadOnlyList<Condition> leaves)
    {
        Index = index;
        Name = name;
        _states = states;
        All = Bits.Where(Count, _ => true);
        Complete = Bits.Where(Count, s => states[s].Complete);
        for (var i = 0; i < leaves.Count; i++)
        {
            var place = i;
            _leaves[leaves[i].Key] = Leaf(s => _states[s].Truths[place]);
        }
    }

    /// <summary>Place among the families of the space.</summary>
    public int Index { get; }

    /// <summary>What it is about: the id of its first word.</summary>
    public string Name { get; }

    /// <summary>How many states it has.</summary>
    public int Count => _states.Count;

    /// <summary>Every state.</summary>
    public Bits All { get; }

    /// <summary>States in which all its words are known and apply.</summary>
    public Bits Complete { get; }

    /// <summary>A state.</summary>
    public FamilyState this[int state] => _states[state];

    /// <summary>The question that a condition of the book asks of it.</summary>
    public LeafForm Of(Condition condition) => _leaves[condition.Key];

    /// <summary>A question by its outcome in every state.</summary>
    public LeafForm Leaf(Func<int, Truth> truth)
        => new(this, Bits.Where(Count, s => truth(s) == Truth.True), Bits.Where(Count, s => truth(s) == Truth.False));
}
