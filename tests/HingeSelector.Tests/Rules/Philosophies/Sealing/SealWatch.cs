using HingeSelector.Rules;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Rules.Philosophies.Sealing;

/// <summary>Watches screen by screen whether everything sealed that holds or is open in the base does so under a philosophy.</summary>
internal sealed class SealWatch
{
    private readonly RuleBook _book;
    private readonly SealedRules _seals;
    private readonly LoopEvaluator _base;
    private readonly RandomCases _cases;

    public SealWatch(RuleBook book, SealedRules seals)
    {
        (_book, _seals) = (book, seals);
        _base = new LoopEvaluator(book);
        _cases = new RandomCases(book);
    }

    /// <summary>Sealed rules that held in the base, over all screens.</summary>
    public long Held { get; private set; }

    /// <summary>Rules of philosophies that held beside them.</summary>
    public long Stricter { get; private set; }

    /// <summary>What goes missing under a philosophy on the screens of some seeds; null when nothing does.</summary>
    public string? Missing(Overlay overlay, int firstSeed, int screens)
    {
        var under = _book with { Rules = overlay.Rules, FindingOrder = overlay.FindingOrder, RulesOfFinding = overlay.RulesOfFinding };
        var loop = new LoopEvaluator(under);
        for (var seed = firstSeed; seed < firstSeed + screens; seed++)
        {
            var facts = _cases.First(seed);
            var (before, after) = (_base.First(facts), loop.First(facts));
            _cases.FillChosen(facts, seed);
            _base.Second(facts, before);
            loop.Second(facts, after);
            if (Missing(before, after, under) is { } missing)
                return $"screen {seed}: {missing}";
        }
        return null;
    }

    private string? Missing(Evaluation before, Evaluation after, RuleBook under)
    {
        var holds = Named(after.Fired, under);
        foreach (var (rule, candidate) in Named(before.Fired.Where(IsSealed), _book))
        {
            Held++;
            if (!holds.Contains((rule, candidate)))
                return $"{rule} no longer holds";
        }
        Stricter += after.Fired.Count(f => under.Rules[f.Rule].Change?.Kind == RuleChangeKind.Added);
        var open = Named(after.Open, under);
        foreach (var (rule, candidate) in Named(before.Open.Where(IsSealed), _book))
        {
            if (!open.Contains((rule, candidate)) && !holds.Contains((rule, candidate)))
                return $"{rule} is no longer open";
        }
        return null;
    }

    private bool IsSealed(HingeSelector.Rules.Evaluating.Firing firing) => _seals.Why(_book.Rules[firing.Rule]) is not null;

    private static HashSet<(string, int)> Named(IEnumerable<HingeSelector.Rules.Evaluating.Firing> firings, RuleBook book) => [.. firings.Select(f => (book.Rules[f.Rule].Id, f.Candidate))];
}
