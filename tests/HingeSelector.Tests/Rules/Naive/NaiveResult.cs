namespace HingeSelector.Tests.Rules.Naive;

/// <summary>What the naive interpreter found: findings by id, rules that hold, rules that are open; -1 stands for the athlete.</summary>
internal sealed class NaiveResult
{
    public Dictionary<string, Answer> Findings { get; } = new(StringComparer.Ordinal);

    public List<(string Rule, int Candidate)> Fired { get; } = [];

    public List<(string Rule, int Candidate)> Open { get; } = [];
}
