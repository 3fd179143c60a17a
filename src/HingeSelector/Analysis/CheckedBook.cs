using HingeSelector.Rules;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>A rule book with what the checks share: the solver, the facts behind each rule, the rules that can never fire.</summary>
internal sealed class CheckedBook
{
    private readonly Dictionary<Form, HashSet<int>> _families = [];

    /// <summary>Prepares the checks of a book.</summary>
    public CheckedBook(RuleBook book, RuleFiles files)
    {
        Book = book;
        Files = files;
        Space = new RuleSpace(book.Vocabulary, book.Variants, book.Rules);
        Solver = new Solver(Space);
        Facts = new FactsBehind(book.Rules);
        Living = [.. book.Rules.Where(r => Solver.Find(new Goal(Space.Of(r), Need.True)) is not null)];
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
    public Witness WitnessOf(Rule rule) => Solver.Find(new Goal(Space.Of(rule), Need.True))!;

    /// <summary>What a rule asks for.</summary>
    public static IEnumerable<RequestedChange> RequestsOf(Rule rule) => rule.Conclusions.OfType<RequestConclusion>().Select(r => r.Request);

    // Each line of the other rule must rest on something that this one asks; else it can be unknown.
    private bool MayImply(Rule rule, Rule other)
    {
        if (!other.PerCandidate && other.Conditions.Count == 0)
            return true;
        var own = FamiliesOf(Space.Of(rule));
        return other.Conditions.All(c => FamiliesOf(Space.Of(c)) is var asked && (asked.Overlaps(own) || asked.IsSubsetOf([Space.Variants.Index])));
    }

    private HashSet<int> FamiliesOf(Form form)
    {
        if (_families.TryGetValue(form, out var families))
            return families;
        families = form switch
        {
            LeafForm leaf => [leaf.Family.Index],
            NotForm not => FamiliesOf(not.Part),
            AllForm all => [.. all.Parts.SelectMany(FamiliesOf)],
            AnyForm any => [.. any.Parts.SelectMany(FamiliesOf)],
            _ => [],
        };
        return _families[form] = families;
    }
}
