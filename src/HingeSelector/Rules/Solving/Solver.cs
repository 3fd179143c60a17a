namespace HingeSelector.Rules.Solving;

/// <summary>Finds a screen that meets a list of goals, or proves that there is none.</summary>
/// <remarks>
/// Goals are taken apart until only questions about single families are left; each cuts down the states in which its family may be.
/// Where one of several things will do, the choice with the fewest ways left is tried first, and the search steps back when a family
/// has no state left. Families are finite and complete, so the search ends and its answer is exact.
/// </remarks>
/// <param name="space">The rules as questions.</param>
/// <param name="mostSteps">Steps after which a search is given up.</param>
internal sealed class Solver(RuleSpace space, int mostSteps = Solver.UsualSteps)
{
    /// <summary>A search that would run on for seconds is given up; no question about one or two rules comes near it.</summary>
    public const int UsualSteps = 20000;

    private readonly FamilyFinder _finder = new(space);
    private readonly FamilySets _asked = new();
    private int _steps;

    /// <summary>A screen that meets all goals; null when no screen does.</summary>
    /// <exception cref="SearchGivenUpException">The search was too long; then nothing is known.</exception>
    public Witness? Find(params IReadOnlyList<Goal> goals) => Find(goals, false);

    /// <summary>A screen on which every word that the goals read is known and applies; null when no such screen meets them.</summary>
    public Witness? FindComplete(params IReadOnlyList<Goal> goals) => Find(goals, true);

    private Witness? Find(IReadOnlyList<Goal> goals, bool complete)
    {
        _steps = 0;
        var families = _finder.Of(goals, out var links);
        var domains = new Bits?[space.Families.Count];
        foreach (var family in families)
            domains[family.Index] = complete ? family.Complete : family.All;
        var open = new List<Goal>();
        foreach (var goal in goals.Concat(links))
        {
            if (!Assert(goal, domains, open))
                return null;
        }
        return Search(domains, open, out _) is { } found ? new Witness(space, families, found) : null;
    }

    /// <param name="domains">States left of each family.</param>
    /// <param name="open">Choices that are not made yet.</param>
    /// <param name="why">Where nothing is found: the families that do not fit together.</param>
    private Bits?[]? Search(Bits?[] domains, List<Goal> open, out FamilySet why)
    {
        if (++_steps > mostSteps)
            throw new SearchGivenUpException();
        var trail = new List<ForcedChoice>();
        if (!Settle(domains, ref open, trail, out why))
        {
            why = Reasons(why, trail);
            return null;
        }
        if (open.Count == 0)
            return domains;
        // Choices about different families have nothing to do with each other: each group is settled for itself.
        foreach (var group in Groups(domains, open))
        {
            if (Branch(domains, group, out why) is not { } found)
            {
                why = Reasons(why, trail);
                return null;
            }
            domains = found;
        }
        return domains;
    }

    private Bits?[]? Branch(Bits?[] domains, List<Goal> open, out FamilySet why)
    {
        var (place, ways) = Narrowest(domains, open);
        var all = _asked.Of(open[place].Form);
        foreach (var way in ways)
        {
            var trial = (Bits?[])domains.Clone();
            var rest = new List<Goal>(open);
            rest.RemoveAt(place);
            if (!Assert(way, trial, rest))
                continue;
            if (Search(trial, rest, out why) is { } found)
                return found;
            // What does not fit has nothing to do with this choice, so no other way of making it helps.
            if (!why.Overlaps(_asked.Of(way.Form)))
                return null;
            all = FamilySet.Union([all, why]);
        }
        why = all;
        return null;
    }

    /// <summary>The families that do not fit together, and those because of which they are as they are.</summary>
    private static FamilySet Reasons(FamilySet why, List<ForcedChoice> trail)
    {
        for (var i = trail.Count - 1; i >= 0; i--)
        {
            if (trail[i].Way.Overlaps(why))
                why = FamilySet.Union([why, trail[i].Choice]);
        }
        return why;
    }

    /// <summary>Choices that share a family which is not settled yet, kept together.</summary>
    private List<List<Goal>> Groups(Bits?[] domains, List<Goal> open)
    {
        var settled = FamilySet.Where(domains.Length, f => domains[f] is { IsSingle: true });
        var groups = new List<(FamilySet Asked, List<Goal> Goals)>();
        foreach (var goal in open)
        {
            var asked = FamilySet.Union([.. Ways(goal, domains)!.Select(w => _asked.Of(w.Form))]).Without(settled);
            var touched = groups.Where(g => g.Asked.Overlaps(asked)).ToList();
            groups = [.. groups.Except(touched), (FamilySet.Union([asked, .. touched.Select(t => t.Asked)]), [.. touched.SelectMany(t => t.Goals), goal])];
        }
        return [.. groups.Select(g => g.Goals)];
    }

    /// <summary>Drops choices that are met, takes those with one way left, until nothing moves.</summary>
    private bool Settle(Bits?[] domains, ref List<Goal> open, List<ForcedChoice> trail, out FamilySet why)
    {
        why = FamilySet.Union([]);
        for (var moved = true; moved;)
        {
            moved = false;
            var left = new List<Goal>();
            foreach (var goal in open)
            {
                var ways = Ways(goal, domains);
                if (ways is null)
                    continue;
                why = _asked.Of(goal.Form);
                if (ways.Count == 0)
                    return false;
                if (ways.Count > 1)
                {
                    left.Add(goal);
                    continue;
                }
                moved = true;
                trail.Add(new ForcedChoice(_asked.Of(ways[0].Form), why));
                if (!Assert(ways[0], domains, left))
                    return false;
            }
            open = left;
        }
        return true;
    }

    private static (int Place, List<Goal> Ways) Narrowest(Bits?[] domains, List<Goal> open)
    {
        var (place, best) = (0, (List<Goal>?)null);
        for (var i = 0; i < open.Count && best is not { Count: <= 2 }; i++)
        {
            var ways = Ways(open[i], domains)!;
            if (best is null || ways.Count < best.Count)
                (place, best) = (i, ways);
        }
        return (place, best!);
    }

    /// <summary>The ways still left to meet a choice; null when it is met already.</summary>
    private static List<Goal>? Ways(Goal choice, Bits?[] domains)
    {
        var ways = new List<Goal>();
        foreach (var part in PartsOf(choice.Form))
        {
            var goal = new Goal(part, choice.Need);
            switch (Look(goal, domains))
            {
                case Outlook.Met:
                    return null;
                case Outlook.Possible:
                    ways.Add(goal);
                    break;
            }
        }
        return ways;
    }

    private static Outlook Look(Goal goal, Bits?[] domains)
    {
        switch (goal.Form)
        {
            case LeafForm leaf:
                var domain = domains[leaf.Family.Index]!;
                var states = leaf.States(goal.Need);
                return domain.Misses(states) ? Outlook.Impossible : domain.Within(states) ? Outlook.Met : Outlook.Possible;
            case NotForm not:
                return Look(new Goal(not.Part, goal.Need.OfNegation()), domains);
            default:
                var every = NeedsEvery(goal);
                var outlook = every ? Outlook.Met : Outlook.Impossible;
                foreach (var part in PartsOf(goal.Form))
                {
                    var one = Look(new Goal(part, goal.Need), domains);
                    if (one == (every ? Outlook.Impossible : Outlook.Met))
                        return one;
                    if (one == Outlook.Possible)
                        outlook = Outlook.Possible;
                }
                return outlook;
        }
    }

    /// <summary>Takes a goal apart; choices go to the open ones.</summary>
    /// <returns>Whether every family still has a state.</returns>
    private static bool Assert(Goal goal, Bits?[] domains, List<Goal> open)
    {
        switch (goal.Form)
        {
            case LeafForm leaf:
                var left = domains[leaf.Family.Index]!.And(leaf.States(goal.Need));
                domains[leaf.Family.Index] = left;
                return !left.IsEmpty;
            case NotForm not:
                return Assert(new Goal(not.Part, goal.Need.OfNegation()), domains, open);
            default:
                if (!NeedsEvery(goal))
                {
                    open.Add(goal);
                    return true;
                }
                foreach (var part in PartsOf(goal.Form))
                {
                    if (!Assert(new Goal(part, goal.Need), domains, open))
                        return false;
                }
                return true;
        }
    }

    // All parts must hold for "all" to hold, and none may hold for "any" not to hold; otherwise one part will do.
    private static bool NeedsEvery(Goal goal) => goal.Form is AllForm == (goal.Need is Need.True or Need.NotFalse);

    private static IReadOnlyList<Form> PartsOf(Form form) => form is AllForm all ? all.Parts : ((AnyForm)form).Parts;

    /// <param name="Way">Families of the one way that was left.</param>
    /// <param name="Choice">Families of all ways.</param>
    private sealed record ForcedChoice(FamilySet Way, FamilySet Choice);

    private enum Outlook
    {
        Impossible,
        Possible,
        Met,
    }
}
