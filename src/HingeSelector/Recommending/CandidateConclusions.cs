using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Recommending;

/// <summary>What the rules that hold say of one candidate, sorted by kind, in order of the rules.</summary>
internal sealed class CandidateConclusions
{
    private readonly List<(CueConclusion Cue, RuleTrace Trace)> _cues = [];
    private readonly HashSet<string> _withheld = new(StringComparer.Ordinal);

    /// <summary>Reasons for and against.</summary>
    public List<Reason> Reasons { get; } = [];

    /// <summary>Set-up changes that rules ask.</summary>
    public List<AskedChange> Changes { get; } = [];

    /// <summary>Cautions that belong to this candidate.</summary>
    public List<CandidateCaution> Cautions { get; } = [];

    /// <summary>Cues that no rule withholds.</summary>
    public IEnumerable<Cue> CuesLeft()
        => _cues.Where(c => !c.Cue.Asks.Any(_withheld.Contains)).Select(c => new Cue(c.Cue.Say, c.Trace));

    /// <summary>Collects what rules of the candidate and of the athlete say of it.</summary>
    public static CandidateConclusions Of(RuleBook book, List<Firing> fired, int variant, Tracer tracer)
    {
        var all = new CandidateConclusions();
        foreach (var firing in fired)
        {
            if (firing.Candidate == variant || firing.Candidate < 0)
                all.Add(book.Rules[firing.Rule], firing, tracer);
        }
        return all;
    }

    private void Add(Rule rule, Firing firing, Tracer tracer)
    {
        RuleTrace? trace = null;
        for (var i = 0; i < rule.Conclusions.Count; i++)
        {
            switch (rule.Conclusions[i])
            {
                case PointsConclusion points:
                    Reasons.Add(new Reason(points.Amount, points.Criterion, trace ??= tracer.Trace(firing)));
                    break;
                case RequestConclusion request:
                    Changes.Add(new AskedChange(Describe(request.Request), trace ??= tracer.Trace(firing)));
                    break;
                case CueConclusion cue:
                    _cues.Add((cue, trace ??= tracer.Trace(firing)));
                    break;
                case CautionConclusion caution when firing.Candidate >= 0:
                    Cautions.Add(new CandidateCaution(caution.Text, trace ??= tracer.Trace(firing)));
                    break;
                case WithholdConclusion withhold:
                    _withheld.UnionWith(withhold.Asks);
                    break;
            }
        }
    }

    private static string Describe(RequestedChange change)
        => change.Word is { } word ? $"{change.Key}: {word}" : $"{change.Key}: {(change.Key == "grip-width" ? "at most" : "at least")} {Quantities.QuantityText.Print(change.Number!.Value, Quantities.Unit.Find("cm"))}";
}
