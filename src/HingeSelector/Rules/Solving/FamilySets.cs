namespace HingeSelector.Rules.Solving;

/// <summary>Remembers which families each form asks.</summary>
internal sealed class FamilySets
{
    private readonly Dictionary<Form, FamilySet> _known = [];

    /// <summary>The families that a form asks.</summary>
    public FamilySet Of(Form form)
    {
        if (!_known.TryGetValue(form, out var set))
            _known[form] = set = FamilySet.Of(form);
        return set;
    }
}
