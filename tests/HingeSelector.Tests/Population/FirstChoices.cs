using System.Numerics;
using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;

namespace HingeSelector.Tests.Population;

/// <summary>Counts over many people who is first how often in some philosophies, and which rules fire for nobody or for everybody. For one thread.</summary>
/// <remarks>A rule about candidates is counted per athlete and candidate, over the candidates whose own words meet its conditions.</remarks>
internal sealed class FirstChoices(RuleBook book, IRuleEngine engine, IReadOnlyList<Philosophy> philosophies, DateOnly on)
{
    private readonly Selector _selector = new(book, engine);
    private readonly IReadOnlyList<Room> _rooms = TrainingRooms.All();
    private readonly int[][] _first = [.. philosophies.Select(_ => new int[book.Variants.Count])];
    private readonly int[] _ties = new int[philosophies.Count];
    private readonly int[] _fired = new int[book.Rules.Count];

    /// <summary>People asked so far.</summary>
    public int People { get; private set; }

    /// <summary>How many of them got a ranking.</summary>
    public int Ranked { get; private set; }

    /// <summary>How many had each outcome.</summary>
    public SortedDictionary<Outcome, int> Outcomes { get; } = [];

    /// <summary>Asks one person in each philosophy; rooms are given out in turn.</summary>
    /// <returns>The answer in the first philosophy, whose fired rules and outcome are counted: those of the others are the same.</returns>
    public Recommendation Ask(AthleteRecord athlete)
    {
        var answers = philosophies.Select(p => _selector.Choose(new Question(athlete, _rooms[People % _rooms.Count], null, p, on))).ToList();
        for (var p = 0; p < answers.Count; p++)
        {
            if (answers[p].Ranked.Count == 0)
                continue;
            _first[p][answers[p].Ranked[0].Candidate.Variant.Index]++;
            _ties[p] += answers[p].Ranked[0].TiedWithFirst ? 1 : 0;
        }
        var answer = answers[0];
        Outcomes[answer.Outcome] = Outcomes.GetValueOrDefault(answer.Outcome) + 1;
        Ranked += answer.Ranked.Count > 0 ? 1 : 0;
        foreach (var firing in answer.Fired)
            _fired[firing.Rule]++;
        People++;
        return answer;
    }

    /// <summary>In how many of a hundred rankings a variant is first.</summary>
    public double First(int philosophy, int variant) => 100.0 * _first[philosophy][variant] / Math.Max(1, Ranked);

    /// <summary>In how many of a hundred rankings others are tied with the first.</summary>
    public double Tied(int philosophy) => 100.0 * _ties[philosophy] / Math.Max(1, Ranked);

    /// <summary>Rules that have fired for nobody.</summary>
    public IEnumerable<Rule> ForNobody => book.Rules.Where(r => _fired[r.Index] == 0);

    /// <summary>Rules that have fired for everybody; those that ask of the variant only are left out.</summary>
    public IEnumerable<Rule> ForEverybody => book.Rules.Where(r => !AsksOfVariantOnly(r) && Share(r) >= 1);

    /// <summary>In what share of the times that it was asked a rule has fired.</summary>
    public double Share(Rule rule) => (double)_fired[rule.Index] / (Math.Max(1, People) * (rule.PerCandidate ? BitOperations.PopCount(rule.Variants) : 1));

    /// <summary>Whether a rule is a plain word on some variants, whoever the athlete is.</summary>
    public static bool AsksOfVariantOnly(Rule rule) => rule.PerCandidate && rule.OpenConditions.Count == 0;
}
