using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Explaining;

/// <summary>The numbers at which rules ask about a word: between two of them nothing that reads the word directly can change.</summary>
internal sealed class RuleNumbers
{
    private readonly Dictionary<string, SortedSet<double>> _plain = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SortedSet<double>> _gaps = new(StringComparer.Ordinal);

    public RuleNumbers(RuleBook book)
    {
        foreach (var condition in book.Rules.SelectMany(r => r.OpenConditions))
            Visit(condition);
    }

    /// <summary>Numbers for the word's own values, on whatever side.</summary>
    public IEnumerable<double> Of(string word) => _plain.GetValueOrDefault(word) ?? [];

    /// <summary>Numbers for the distance between its sides.</summary>
    public IEnumerable<double> GapsOf(string word) => _gaps.GetValueOrDefault(word) ?? [];

    private void Visit(Condition condition)
    {
        switch (condition)
        {
            case NumberCondition number:
                var known = number.Reading.Name == "gap" ? _gaps : _plain;
                if (!known.TryGetValue(number.Reading.Word.Id, out var numbers))
                    known.Add(number.Reading.Word.Id, numbers = []);
                numbers.UnionWith(new[] { number.Interval.Low, number.Interval.High }.Where(double.IsFinite));
                break;
            case AllCondition all:
                foreach (var part in all.Parts)
                    Visit(part);
                break;
            case AnyCondition any:
                foreach (var part in any.Parts)
                    Visit(part);
                break;
            case NotCondition not:
                Visit(not.Part);
                break;
        }
    }
}
