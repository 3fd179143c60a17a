using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Rules.Solving;

/// <summary>A screen that the solver has found.</summary>
internal sealed class Witness
{
    private readonly RuleSpace _space;
    private readonly Dictionary<int, int> _states;

    /// <summary>Takes one state of each family that matters.</summary>
    public Witness(RuleSpace space, IReadOnlyList<Family> families, Bits?[] domains)
    {
        _space = space;
        _states = families.ToDictionary(f => f.Index, f => domains[f.Index]!.First);
        Given = [.. families.Where(f => f.Index != space.Variants.Index && !IsOfSet(f)).SelectMany(f => f[_states[f.Index]].Given), .. OfSets()];
        Variant = _states.TryGetValue(space.Variants.Index, out var state) ? space.Variants[state].Tag : null;
    }

    /// <summary>The answers of the screen.</summary>
    public IReadOnlyList<GivenWord> Given { get; }

    /// <summary>Place of the variant for which it is asked; null when it is about the athlete alone.</summary>
    public int? Variant { get; }

    /// <summary>How a form comes out on this screen; it may ask only families that the goals asked.</summary>
    public Truth Of(Form form)
    {
        switch (form)
        {
            case LeafForm leaf:
                var state = _states[leaf.Family.Index];
                return leaf.States(Need.True).Has(state) ? Truth.True : leaf.States(Need.False).Has(state) ? Truth.False : Truth.Open;
            case NotForm not:
                return (Truth)(-(sbyte)Of(not.Part));
            case AllForm all:
                return all.Parts.Select(Of).Append(Truth.True).Min();
            default:
                return ((AnyForm)form).Parts.Select(Of).Append(Truth.False).Max();
        }
    }

    private bool IsOfSet(Family family) => _space.Sets.Any(s => s.Itself == family || s.Items.Contains(family));

    private IEnumerable<GivenWord> OfSets()
    {
        foreach (var set in _space.Sets.Where(s => _states.ContainsKey(s.Itself.Index)))
        {
            var value = set.Value(f => _states.GetValueOrDefault(f.Index));
            if (value != FactValue.Missing)
                yield return new GivenWord(set.Reading, value);
        }
    }
}
