using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Words;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>The numbers at which rules can change their mind, by word.</summary>
internal sealed class Thresholds
{
    private readonly Dictionary<string, double[]> _ofWord;

    public Thresholds(RuleBook book)
        => _ofWord = book.Rules.SelectMany(r => r.Conditions).SelectMany(Numbers)
            .SelectMany(n => new[] { n.Interval.Low, n.Interval.High }.Where(double.IsFinite).Select(v => (n.Reading.Word.Id, Value: v)))
            .GroupBy(p => p.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Select(p => p.Value).Distinct().Order().ToArray(), StringComparer.Ordinal);

    /// <summary>A number for a word: on a threshold, beside one, or anywhere in its range.</summary>
    public double Draw(Word word, Random random)
    {
        var (low, high) = word.Range ?? (-20, 120);
        if (!_ofWord.TryGetValue(word.Id, out var ends) || random.Next(5) == 0)
            return low + (random.NextDouble() * (high - low));
        var end = ends[random.Next(ends.Length)];
        var step = (high - low) * 1e-3;
        return random.Next(6) switch
        {
            0 or 1 => end,
            2 => end - step,
            3 => end + step,
            4 => end - (random.NextDouble() * (high - low) / 8),
            _ => end + (random.NextDouble() * (high - low) / 8),
        };
    }

    private static IEnumerable<NumberCondition> Numbers(Condition condition) => condition switch
    {
        NumberCondition number => [number],
        NotCondition not => Numbers(not.Part),
        AllCondition all => all.Parts.SelectMany(Numbers),
        AnyCondition any => any.Parts.SelectMany(Numbers),
        _ => [],
    };
}
