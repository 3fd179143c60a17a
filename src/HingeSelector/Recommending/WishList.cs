using HingeSelector.Candidates;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Recommending;

/// <summary>Collects the set-up changes that rules ask for each candidate.</summary>
internal static class WishList
{
    /// <summary>Wishes by place of the variant.</summary>
    public static IReadOnlyList<SetUpWishes> Collect(RuleBook book, Evaluation evaluation)
    {
        var changes = book.Variants.Select(_ => new List<RequestedChange>()).ToList();
        foreach (var (request, firing) in Said.Of<RequestConclusion>(book, evaluation.Fired))
        {
            if (firing.Candidate >= 0)
                changes[firing.Candidate].Add(request.Request);
            else
                changes.ForEach(c => c.Add(request.Request));
        }
        return [.. book.Variants.Select(v => SetUpWishes.Merge(changes[v.Index], Permitted(book, v)))];
    }

    private static HashSet<string> Permitted(RuleBook book, Knowledge.Variant variant)
    {
        var word = book.Vocabulary["permits"];
        var bits = variant.Words.First(w => w.Slot == word.Slot).Value.Bits;
        return [.. word.Values.Where((_, i) => (bits & (1UL << i)) != 0)];
    }
}
