using HingeSelector.Rules;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>A rule book with what the checks share: the solver, the facts behind each rule, the rules that can never fire.</summary>
internal sealed class CheckedBook
{
    private readonly Dictionary<int, Reach> _reach = [];

    /// <summary>Prepares the checks of a book.</summary>
    public CheckedBook(RuleBook book, RuleFiles files, int mostSteps = Solver.UsualSteps)
    {
        Book = book;
        Files = files;
        Space = new RuleSpace(book.Vocabulary, book.Variants, book.Rules);
        Solver = new Solver(Space, mostSteps);
        Facts = new FactsBehind(book.Rules);
        Living = [.. book.Rules.Where(r => ReachOf(r).Fires is not null)];
    }

    /// <summary>The book.</summary>
    public RuleBook Book { get; }

    /// <summary>The texts that it was read from.</summary>
    public RuleFiles Files { get; }

    /// <summary>Its rules as questions.</summary>
    public RuleSpace Space { get; }

    /// <summary>Answers the questions.</summary>
    public Solver Solver { get; }

    /// <summary>The words on which each rule rests.</summary>
    public FactsBehind Facts { get; }

    /// <summary>Rules that can fire; of the others nothing else is said.</summary>
    public IReadOnlyList<Rule> Living { get; }

    /// <summary>Whether one rule fires on every screen on which another does, for the same variant; decided exactly.</summary>
    public bool Implies(Rule rule, Rule other) => MayImply(rule, other) && Solver.Find(new Goal(Space.Of(rule), Need.True), new Goal(Space.Of(other), Need.NotTrue)) is null;

    /// <summary>A screen on which a rule fires.</summary>
    public Witness WitnessOf(Rule rule) => ReachOf(rule).Fires!;

    /// <summary>What a rule asks for.</summary>
    public static IEnumerable<RequestedChange> RequestsOf(Rule rule) => rule.Conclusions.OfType<RequestConclusion>().Select(r => r.Request);

    // Each line of the other rule must rest on something that this one asks; else it can be unknown. And one screen is at hand
    // on which this one fires: a line that asks nothing else and does not hold there settles it.
    private bool MayImply(Rule rule, Rule other)
    {
        var own = ReachOf(rule);
        foreach (var (asked, line) in ReachOf(other).Lines)
        {
            if (!asked.Overlaps(own.Asked) || (own.Fires is { } screen && asked.Within(own.Given) && screen.Of(line) != Truth.True))
                return false;
        }
        return true;
    }

    private Reach ReachOf(Rule rule)
    {
        if (_reach.TryGetValue(rule.Index, out var reach))
            return reach;
        var lines = rule.Conditions.Select(c => (FamilySet.Of(Space.Of(c)), Space.Of(c))).ToArray();
        var given = FamilySet.Union([.. lines.Select(l => l.Item1)]);
        // What the candidate is counts as asked by every rule: it is never unknown.
        return _reach[rule.Index] = new Reach(FamilySet.Union([FamilySet.OnlyOf(Space.Variants), given]), given, lines, Solver.Find(new Goal(Space.Of(rule), Need.True)));
    }

    /// <param name="Asked">Families that a rule asks, that of the variants included.</param>
    /// <param name="Given">Families that its lines ask.</param>
    /// <param name="Lines">Each line with the families that it asks.</param>
    /// <param name="Fires">A screen on which it fires; null for a rule that cannot.</param>
    private sealed record Reach(FamilySet Asked, FamilySet Given, (FamilySet Asked, Form Line)[] Lines, Witness? Fires);
}
