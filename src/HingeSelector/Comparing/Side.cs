using System.Collections.Concurrent;
using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;

namespace HingeSelector.Comparing;

/// <summary>One of two sides of a comparison: rules with a squad read by them, asked by the loop evaluator or the engine of record.</summary>
/// <param name="book">The rules.</param>
/// <param name="squad">The squad.</param>
/// <param name="recordEngine">Makes the engine of record; it confirms what is shown as an example.</param>
public sealed class Side(RuleBook book, Squad squad, Func<RuleBook, IRuleEngine> recordEngine)
{
    private readonly ConcurrentDictionary<string, (RuleBook Book, Selector Selector)> _quick = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (RuleBook Book, Selector Selector)> _ofRecord = new(StringComparer.Ordinal);
    private readonly Dictionary<string, AthleteRecord> _byId = squad.Athletes.ToDictionary(a => a.Id, StringComparer.Ordinal);

    /// <summary>The rules, before any philosophy.</summary>
    public RuleBook Book { get; } = book;

    /// <summary>The squad.</summary>
    public Squad Squad { get; } = squad;

    /// <summary>Ids of the criteria.</summary>
    public IReadOnlyList<string> Criteria { get; } = [.. book.Criteria.Select(c => c.Id)];

    /// <summary>The athlete with an id; null when this side could not read it.</summary>
    public AthleteRecord? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The picture of an athlete's answer by the loop evaluator.</summary>
    public Picture Of(AthleteRecord athlete)
    {
        var question = Squad.About(athlete);
        return Ask(question, Quick(question));
    }

    /// <summary>The pictures of an athlete's answers on two sides by the loop evaluator, on common groundwork.</summary>
    /// <remarks>Words, variants, model and assumptions of both sides must be the same; so must room and standing choice.</remarks>
    internal static (Picture From, Picture To) OfBoth(Side from, Side to, AthleteRecord athlete)
    {
        var (before, after) = (from.Squad.About(athlete), to.Squad.About(athlete));
        var (x, y) = (from.Quick(before), to.Quick(after));
        var ground = x.Selector.Lay(before);
        return (Picture.Of(x.Selector.Choose(before, ground), x.Book), Picture.Of(y.Selector.Choose(after, ground), y.Book));
    }

    /// <summary>The picture of an athlete's answer by the engine of record.</summary>
    public Picture OfRecord(AthleteRecord athlete)
    {
        var question = Squad.About(athlete);
        if (!_ofRecord.TryGetValue(KeyOf(question.Philosophy), out var asked))
            _ofRecord[KeyOf(question.Philosophy)] = asked = Make(question.Philosophy, recordEngine);
        return Ask(question, asked);
    }

    /// <summary>The rules under the philosophy of an athlete.</summary>
    public RuleBook BookOf(AthleteRecord athlete) => Book.Under(Squad.About(athlete).Philosophy);

    private static Picture Ask(Question question, (RuleBook Book, Selector Selector) asked) => Picture.Of(asked.Selector.Choose(question), asked.Book);

    private (RuleBook Book, Selector Selector) Quick(Question question)
        => _quick.GetOrAdd(KeyOf(question.Philosophy), _ => Make(question.Philosophy, b => new LoopEvaluator(b)));

    private static string KeyOf(Philosophy philosophy) => philosophy.ChangesRules ? philosophy.Id : "";

    private (RuleBook Book, Selector Selector) Make(Philosophy philosophy, Func<RuleBook, IRuleEngine> engine)
    {
        var under = Book.Under(philosophy);
        return (under, new Selector(under, engine(under)));
    }
}
