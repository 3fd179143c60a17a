using HingeSelector.Candidates;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Recommending;

/// <summary>Orders the candidates that may be pulled, says which are tied, and keeps the variant of the block where nothing speaks against it.</summary>
internal sealed class Ranking
{
    private readonly RuleBook _book;
    private readonly Question _question;
    private readonly List<Firing> _fired;
    private readonly IReadOnlyList<ChosenSetUp> _chosen;
    private readonly Tracer _tracer;
    private readonly Alternatives _alternatives;
    private readonly Func<Candidate, Candidate> _withLoads;
    private readonly Scores _scores;
    private readonly List<string> _remarks = [];

    public Ranking(RuleBook book, Question question, List<Firing> fired, IReadOnlyList<ChosenSetUp> chosen, Tracer tracer, Alternatives alternatives, Func<int, Scores> scoresWithErrors, Func<Candidate, Candidate> withLoads, Func<int, bool> isNew, HashSet<int> excluded)
    {
        _withLoads = withLoads;
        _book = book;
        _question = question;
        _fired = fired;
        _chosen = chosen;
        _tracer = tracer;
        _alternatives = alternatives;
        _scores = Scores.Of(book, fired, question.Philosophy);
        var order = book.Variants.Select(v => v.Index).Where(i => !excluded.Contains(i)).OrderByDescending(_scores.Total).ThenBy(i => isNew(i)).ThenBy(i => i).ToList();
        var tied = order.Count > 0 ? Tied(order, scoresWithErrors) : [];
        KeepBlock(order, tied, excluded);
        Ranked = [.. order.Select((variant, place) => Build(variant, tied.Contains(variant) ? 1 : place + 1, tied.Contains(variant)))];
    }

    /// <summary>The candidates in order.</summary>
    public IReadOnlyList<RankedCandidate> Ranked { get; }

    /// <summary>Remarks on ties, block and dead band.</summary>
    public IReadOnlyList<string> Remarks => _remarks;

    // A lead counts when it is one step of the smallest weight or more, and when it survives the errors of measuring and model.
    // The tied ones follow each other without a gap: who is behind an untied candidate is not tied with the first.
    private HashSet<int> Tied(List<int> order, Func<int, Scores> scoresWithErrors)
    {
        var first = order[0];
        var step = _question.Philosophy.SmallestStep;
        var worse = scoresWithErrors(-1);
        var better = scoresWithErrors(1);
        bool IsTied(int other) => Lead(_scores, first, other) < step || Lead(worse, first, other) <= 0 || Lead(better, first, other) <= 0;
        var tied = order.Skip(1).TakeWhile(IsTied).ToHashSet();
        if (tied.Count == 0)
            return tied;
        tied.Add(first);
        _remarks.Add($"No clear first: {string.Join(", ", order.Where(tied.Contains).Select(i => _book.Variants[i].Label))} are tied, because the lead is smaller than one step or within the errors of measuring and model.");
        return tied;
    }

    private static int Lead(Scores scores, int first, int other) => scores.Total(first) - scores.Total(other);

    // The variant belongs to the block: a stop, an exclusion or a start position that no longer fits beyond its error removes it; points do not.
    private void KeepBlock(List<int> order, HashSet<int> tied, HashSet<int> excluded)
    {
        if (_question.StandingInForce is not { } standing)
            return;
        var label = _book.Variants[standing.Variant].Label;
        if (excluded.Contains(standing.Variant))
        {
            _remarks.Add($"{label} is the variant of the block, but it is out today; see why under the excluded ones.");
            return;
        }
        if (NoLongerFits(_chosen[standing.Variant].Candidate))
        {
            _remarks.Add($"{label} is the variant of the block, but its start position no longer fits, by more than the errors of measuring and model.");
            return;
        }
        if (order[0] == standing.Variant)
            return;
        _remarks.Add(tied.Contains(standing.Variant)
            ? $"{label} stays first because it is the variant of the block; no other leads beyond the errors."
            : $"{label} stays first because it is the variant of the block. {_book.Variants[order[0]].Label} has {Lead(_scores, order[0], standing.Variant)} weighted points more: look again when the block ends{(standing.BlockEnds is { } end ? $" on {end:yyyy-MM-dd}" : "")}.");
        order.Remove(standing.Variant);
        order.Insert(0, standing.Variant);
        if (!tied.Contains(standing.Variant))
            tied.Clear();
    }

    private static bool NoLongerFits(Candidate candidate) => candidate.Choice is { Fit: Posture.Fit.DoesNotFit } choice
        && choice.Margins is not { HipFlexion: null or { MayBeEnough: true }, HipAbduction: null or { MayBeEnough: true }, TurnOut: null or { MayBeEnough: true } };

    private RankedCandidate Build(int variant, int place, bool tied)
    {
        var chosen = _chosen[variant];
        if (chosen.KeptStanding is { } computed)
            _remarks.Add($"{chosen.Candidate.Variant.Label}: the standing height stays; the search alone would say {Quantities.QuantityText.Print(computed, Quantities.Unit.Find("cm"))}, which is within its error.");
        var said = CandidateConclusions.Of(_book, _fired, variant, _tracer);
        if (_question.StandingInForce is { StartHeight: { } before } standing && standing.Variant == variant && chosen.Candidate.Choice?.FirstTry.HandHeight.Metres is { } now && Math.Abs(now - before) > 0.01)
            _remarks.Add($"Changed from the block: {chosen.Candidate.Variant.Label} started at {Print(before)}, today at {Print(now)}.");
        return new RankedCandidate
        {
            Place = place,
            TiedWithFirst = tied,
            Candidate = _withLoads(chosen.Candidate),
            Score = _scores.Total(variant),
            Points = _scores.Points(variant),
            Reasons = [.. said.Reasons.OrderByDescending(r => Math.Abs(r.Points) * _question.Philosophy.Weights[r.Criterion])],
            Wishes = chosen.Wishes,
            Changes = said.Changes,
            Cues = [.. said.CuesLeft().OrderByDescending(c => c.Trace.Rule.OpenConditions.Count).DistinctBy(c => c.Say)],
            Cautions = [.. said.Cautions.OrderByDescending(c => SafetyTopics.Has(c.Trace!.Rule)), .. chosen.Candidate.Variant.Cautions.Select(c => new CandidateCaution(c, null))],
            IsStanding = _question.StandingInForce?.Variant == variant,
            Heights = new(() => _alternatives.Heights(chosen.Candidate)),
            Grips = new(() => _alternatives.Grips(chosen.Candidate)),
        };
    }

    private static string Print(double metres) => Quantities.QuantityText.Print(metres, Quantities.Unit.Find("cm"));
}
