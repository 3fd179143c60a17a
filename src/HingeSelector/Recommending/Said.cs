using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Recommending;

/// <summary>What fired rules conclude, of one kind.</summary>
internal static class Said
{
    /// <summary>The conclusions of a kind with the rule and candidate behind each, in order of firing.</summary>
    public static IEnumerable<(T Conclusion, Firing Firing)> Of<T>(RuleBook book, IReadOnlyList<Firing> fired)
        where T : Conclusion
    {
        // By index: an answer walks over some six hundred fired rules many times, and an enumerator for each would be most of the cost.
        for (var i = 0; i < fired.Count; i++)
        {
            var conclusions = book.Rules[fired[i].Rule].Conclusions;
            for (var c = 0; c < conclusions.Count; c++)
            {
                if (conclusions[c] is T one)
                    yield return (one, fired[i]);
            }
        }
    }
}
