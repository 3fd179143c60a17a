using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Rules.Naive;
using Fired = HingeSelector.Rules.Evaluating.Firing;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>The network of record, the loop and the naive interpreter, asked side by side. For one thread.</summary>
internal sealed class Trio
{
    private readonly RuleBook _book;
    private readonly LoopEvaluator _loop;
    private readonly Network _network;
    private readonly NaiveInterpreter _naive;
    private readonly RandomCases _cases;
    private readonly Dictionary<string, int> _places;

    public Trio(RuleFiles files)
        : this(files, files, files)
    {
    }

    /// <summary>Gives each its own files, so that a fault can be planted in one of them.</summary>
    public Trio(RuleFiles forLoop, RuleFiles forNetwork, RuleFiles forNaive)
    {
        _book = RulesFolder.Book(forLoop);
        _loop = new LoopEvaluator(_book);
        _network = new Network(RulesFolder.Book(forNetwork));
        // A planted fault must be a rule that is wrong, not one that cannot be read.
        if (!_network.Book.Rules.Select(r => r.Id).SequenceEqual(_book.Rules.Select(r => r.Id)))
            throw new ArgumentException("The two books do not hold the same rules.");
        _naive = new NaiveInterpreter(forNaive, _book.Vocabulary);
        _cases = new RandomCases(_book);
        _places = _book.Rules.ToDictionary(r => r.Id, r => r.Index, StringComparer.Ordinal);
    }

    /// <summary>What was met on the way.</summary>
    public Tally Tally { get; } = new();

    /// <summary>The rules asked.</summary>
    public RuleBook Book => _book;

    /// <summary>The three as engines, in the order loop, network, naive.</summary>
    public IReadOnlyList<IRuleEngine> Engines => [_loop, _network, new NaiveEngine(_naive, _book)];

    /// <summary>Asks all three about one random case.</summary>
    /// <returns>The first difference, or null when all agree.</returns>
    public string? Difference(int seed)
    {
        var facts = _cases.First(seed);
        return Difference(facts, _ => _cases.FillChosen(facts, seed));
    }

    /// <summary>Asks all three about one case.</summary>
    /// <param name="facts">The fact tables before the set-up search.</param>
    /// <param name="search">Fills in the chosen set-ups.</param>
    /// <returns>The first difference, or null when all agree.</returns>
    public string? Difference(CaseFacts facts, Action<Evaluation> search)
    {
        var session = _network.Start(facts);
        var loop = _loop.First(facts);
        var network = session.First();
        var naive = _naive.First(facts);
        search(loop);
        _loop.Second(facts, loop);
        session.Second();
        _naive.Second(facts, naive);
        Tally.Add(loop);
        var fired = Sorted(loop.Fired);
        return Findings(loop, network, naive)
            ?? Rules("network and loop", "fired", Sorted(network.Fired), fired)
            ?? Rules("naive and loop", "fired", Sorted(naive.Fired), fired)
            ?? Rules("naive and loop", "open", Sorted(naive.Open), Sorted(loop.Open));
    }

    // A rule and a candidate as one number: a million comparisons of sorted lists have to be cheap.
    private static int[] Sorted(IReadOnlyList<Fired> list)
    {
        var keys = new int[list.Count];
        for (var i = 0; i < keys.Length; i++)
            keys[i] = Key(list[i].Rule, list[i].Candidate);
        Array.Sort(keys);
        return keys;
    }

    private int[] Sorted(List<(string Rule, int Candidate)> list)
    {
        var keys = new int[list.Count];
        for (var i = 0; i < keys.Length; i++)
            keys[i] = Key(_places[list[i].Rule], list[i].Candidate);
        Array.Sort(keys);
        return keys;
    }

    private static int Key(int rule, int candidate) => (rule * 128) + candidate + 1;

    private string? Findings(Evaluation loop, Evaluation network, NaiveResult naive)
    {
        foreach (var finding in _book.Findings)
        {
            var expected = loop.Findings[finding.Index];
            if ((int)naive.Findings[finding.Id] - 1 != (int)expected)
                return $"finding {finding.Id}: naive {naive.Findings[finding.Id]}, loop {expected}";
            // Absence is proven only where some rule asks for it.
            var found = network.Findings[finding.Index];
            var same = expected == Truth.False && !_network.Refutable.Contains(finding.Index) ? found == Truth.Open : found == expected;
            if (!same)
                return $"finding {finding.Id}: network {found}, loop {expected}";
        }
        return null;
    }

    private string? Rules(string who, string what, int[] a, int[] b)
    {
        for (var i = 0; i < Math.Max(a.Length, b.Length); i++)
        {
            if (i >= a.Length || i >= b.Length || a[i] != b[i])
            {
                var one = i >= a.Length || (i < b.Length && b[i] < a[i]) ? b[i] : a[i];
                return $"{who} differ: {_book.Rules[one / 128].Id} {what} for candidate {(one % 128) - 1} in one of them only";
            }
        }
        return null;
    }
}
