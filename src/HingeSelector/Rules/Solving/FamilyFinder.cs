namespace HingeSelector.Rules.Solving;

/// <summary>Finds the families that goals speak of, and what links them to others.</summary>
internal sealed class FamilyFinder(RuleSpace space)
{
    private readonly Dictionary<Form, HashSet<Family>> _known = [];

    /// <summary>The families of some goals, links followed.</summary>
    /// <param name="goals">The goals.</param>
    /// <param name="links">What always holds between these families.</param>
    public IReadOnlyList<Family> Of(IReadOnlyList<Goal> goals, out IReadOnlyList<Goal> links)
    {
        var found = new HashSet<Family>();
        foreach (var goal in goals)
            found.UnionWith(Of(goal.Form));
        var kept = new List<Goal>();
        var waiting = new Queue<Family>(found);
        while (waiting.TryDequeue(out var family))
        {
            foreach (var link in space.LinksOf(family))
            {
                kept.Add(new Goal(link, Need.True));
                foreach (var other in Of(link).Where(found.Add))
                    waiting.Enqueue(other);
            }
        }
        links = kept;
        return [.. found.OrderBy(f => f.Index)];
    }

    private HashSet<Family> Of(Form form)
    {
        if (_known.TryGetValue(form, out var families))
            return families;
        families = form switch
        {
            LeafForm leaf => [leaf.Family],
            NotForm not => Of(not.Part),
            AllForm all => [.. all.Parts.SelectMany(Of)],
            AnyForm any => [.. any.Parts.SelectMany(Of)],
            _ => [],
        };
        return _known[form] = families;
    }
}
