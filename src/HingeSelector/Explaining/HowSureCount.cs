using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Explaining;

/// <summary>Counts who comes first over many draws.</summary>
public static class HowSureCount
{
    /// <summary>Draws of a whole count.</summary>
    public const int Draws = 1000;

    private const int Threads = 2;

    /// <summary>Counts.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="question">The athlete, the room, the day.</param>
    /// <param name="draws">How many draws.</param>
    public static HowSure Count(RuleBook book, Question question, int draws = Draws)
    {
        var decider = Decider.For(book, question);
        if (decider.Base.First < 0)
            return new HowSure(null, 0, [], 0, false);
        var drawn = new Draws(book, question.Athlete);
        var firsts = new int[draws];
        Parallel.For(0, draws, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i =>
        {
            var (model, athlete) = drawn[i];
            firsts[i] = decider.DecideWith(model, athlete).First;
        });
        var first = book.Variants[decider.Base.First];
        var counts = firsts.Where(f => f >= 0).Append(first.Index).GroupBy(f => f)
            .Select(g => (book.Variants[g.Key], Count: g.Key == first.Index ? g.Count() - 1 : g.Count()))
            .OrderByDescending(c => c.Count).ThenBy(c => c.Item1.Index);
        return new HowSure(first, draws, [.. counts], firsts.Count(f => f < 0), question.StandingInForce?.Variant == first.Index);
    }
}
