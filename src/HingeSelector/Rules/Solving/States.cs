using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Solving;

/// <summary>Collects states; those that no condition can tell apart are kept once.</summary>
internal sealed class States
{
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);
    private readonly List<FamilyState> _all = [];

    /// <summary>The states in the order in which they came.</summary>
    public IReadOnlyList<FamilyState> All => _all;

    /// <summary>Adds a state unless there is one like it.</summary>
    public void Add(IReadOnlyList<GivenWord> given, Truth[] truths, bool complete, int tag) => Add(() => given, truths, complete, tag);

    /// <summary>Adds a state unless there is one like it; what brings it about is written down only when it is new.</summary>
    public void Add(Func<IReadOnlyList<GivenWord>> given, Truth[] truths, bool complete, int tag)
    {
        var key = string.Create(truths.Length + 2, (truths, complete, tag), static (span, state) =>
        {
            for (var i = 0; i < state.truths.Length; i++)
                span[i] = (char)('b' + (int)state.truths[i]);
            span[^2] = state.complete ? 'y' : 'n';
            span[^1] = (char)('b' + state.tag);
        });
        if (_seen.Add(key))
            _all.Add(new FamilyState(given(), truths, complete, tag));
    }
}
