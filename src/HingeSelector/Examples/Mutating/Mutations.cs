using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples.Mutating;

/// <summary>Every change of a condition, as an author could have slipped.</summary>
internal static class Mutations
{
    /// <summary>Changes inside a condition; leaving it out as a whole is the caller's.</summary>
    public static IEnumerable<Mutation> Of(Condition condition)
    {
        if (ConditionLine.IsOneLine(condition))
            return OfLine((AnyCondition)condition);
        return condition switch
        {
            AnyCondition any => OfParts(any.Parts, any, parts => parts.Count == 1 ? parts[0] : new AnyCondition(parts, any.Text, any.Span)),
            AllCondition all => OfParts(all.Parts, all, parts => parts.Count == 1 ? parts[0] : new AllCondition(parts, all.Text, all.Span)),
            NotCondition not => OfNot(not),
            _ => LeafMutations.Of(condition).OfType<Mutation>(),
        };
    }

    private static IEnumerable<Mutation> OfParts(IReadOnlyList<Condition> parts, Condition whole, Func<IReadOnlyList<Condition>, Condition> build)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            var place = i;
            foreach (var inner in Of(parts[i]))
                yield return inner with { Condition = build([.. parts.Select((p, j) => j == place ? inner.Condition! : p)]) };
            // What is left of a branch that loses its only line is no branch: losing the branch is the other change.
            if (parts.Count > 1)
                yield return new Mutation(MutationKind.Dropped, build([.. parts.Where((_, j) => j != place)]), parts[i], whole is AnyCondition ? "(branch left out)" : "(left out)");
        }
    }

    private static IEnumerable<Mutation> OfNot(NotCondition not)
    {
        foreach (var inner in Of(not.Part))
            yield return inner with { Condition = new NotCondition(inner.Condition!, not.Text, not.Span) };
        yield return new Mutation(MutationKind.Negation, not.Part, not, "any of instead of none of");
    }

    // Words on one line share its text: a moved threshold moves for all, and a word can be left out. A group is one word.
    private static IEnumerable<Mutation> OfLine(AnyCondition line)
    {
        var changes = line.Parts.Select(LeafMutations.Of).ToList();
        for (var i = 0; i < changes[0].Count; i++)
        {
            var place = i;
            if (changes.Exists(c => place >= c.Count || c[place] is null))
                continue;
            yield return changes[0][place]! with { At = line, Condition = new AnyCondition([.. changes.Select(c => c[place]!.Condition!)], line.Text, line.Span) };
        }
        if (ConditionLine.GroupOf(line) is not null)
            yield break;
        foreach (var gone in line.Parts)
        {
            var rest = line.Parts.Where(p => p != gone).ToList();
            yield return new Mutation(MutationKind.Dropped, rest.Count == 1 ? rest[0] : new AnyCondition(rest, line.Text, line.Span), gone, "(word left out)");
        }
    }
}
