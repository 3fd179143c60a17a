using HingeSelector.Body;
using HingeSelector.Knowledge;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>Works out the candidates of one athlete: standard set-ups first, the chosen ones after the rules have asked their changes.</summary>
public sealed class CandidateBuilder
{
    private readonly RuleBook _book;
    private readonly Room? _room;
    private readonly FactValue[] _facts;
    private readonly BodyEstimate _body;
    private readonly RangeOfMotion _ranges;
    private readonly double? _disc;

    /// <summary>Takes the athlete's facts and the room.</summary>
    public CandidateBuilder(RuleBook book, FactValue[] facts, Room? room)
    {
        _book = book;
        _room = room;
        _facts = facts;
        _body = AthleteBody.Estimate(facts, book.Vocabulary, book.Model);
        _ranges = AthleteBody.Ranges(facts, book.Vocabulary, book.Model);
        _disc = Exact("disc-diameter");
        Sole = Length.FromMetres(Exact("sole-thickness") ?? book.Assumptions.SoleThickness);
    }

    /// <summary>The body, or why it is not known.</summary>
    public BodyEstimate Body => _body;

    /// <summary>Sole of the shoe.</summary>
    public Length Sole { get; }

    private ModelParameters Parameters => _book.Model.Parameters;

    /// <summary>Every variant at its standard set-up.</summary>
    public IReadOnlyList<Candidate> Standard() => [.. _book.Variants.Select(Standard)];

    /// <summary>One variant with the set-up that the search finds inside the wishes.</summary>
    public Candidate WithChoice(Candidate candidate, SetUpWishes wishes)
    {
        if (candidate.Pull is null || candidate.Heights is null)
            return candidate;
        var posture = candidate.Variant.Posture!;
        var held = HeldFor(candidate.Variant);
        // What the coach saw holds for its grip and stance, so both are taken over.
        var pull = held?.Stance is { } seen
            ? candidate.Pull with { Stance = new StanceRule(StanceBasis.Metres, seen.Metres, candidate.Pull.Stance.TurnOut) }
            : WithStance(candidate, wishes);
        var at = candidate.Standard ?? Rough(posture, candidate.Heights);
        var (grips, standardGrip) = PullOf.Grips(posture, (_body as KnownBody)?.Segments, pull, at, wishes.GripAtMost, _book.Assumptions, Parameters);
        if (held is not null && wishes.GripAtMost is null)
            (grips, standardGrip) = (Including(grips, held.Grip), held.Grip);
        var asked = wishes.LowestThatFits || wishes.AtLeast is not null || held is not null;
        var request = new SetUpRequest
        {
            Heights = candidate.Heights.Lengths(),
            Grips = grips,
            StandardHeight = Length.FromMetres(candidate.Heights.Standard),
            StandardGrip = standardGrip,
            Sole = Sole,
            Height = new HeightRequest(
                asked && wishes.LowestThatFits ? HeightRequestKind.LowestThatFits : HeightRequestKind.Standard,
                wishes.AtLeast is { } metres ? Length.FromMetres(metres) : null),
            Grip = GripFor(posture, held),
            Held = held,
        };
        return candidate with { Pull = pull, Choice = SetUpSearch.Choose(_body, _ranges, pull, request, Parameters) };
    }

    // Higher bars bring the knees elsewhere: "outside" and "inside the legs" are wherever the arms pass them.
    private static GripRequest GripFor(VariantPosture posture, HeldHeight? held) => posture.Grip.Kind switch
    {
        _ when held is not null => GripRequest.Standard,
        GripRuleKind.OutsideTheLegs => GripRequest.NarrowestThatFits,
        GripRuleKind.InsideTheLegs => GripRequest.WidestThatFits,
        _ => GripRequest.Standard,
    };

    /// <summary>A chosen candidate with the hands at another height or grip.</summary>
    public Candidate At(Candidate candidate, Length? height = null, Length? grip = null, bool withErrors = false)
    {
        if (candidate.Choice is not { } choice || _body is not KnownBody known)
            return candidate;
        var setUp = SetUpSearch.Place(known.Segments, candidate.Pull!, height ?? choice.FirstTry.HandHeight, grip ?? choice.FirstTry.Grip, Sole, Parameters);
        var outcome = PostureSolver.Solve(known.Segments, candidate.Pull!, setUp, Parameters);
        return candidate with
        {
            Choice = choice with
            {
                FirstTry = setUp,
                Outcome = outcome,
                Margins = outcome is StartPosition ? new MarginFinder(known.Segments, _ranges, candidate.Pull!, Parameters).Find(setUp, withErrors) : null,
            },
        };
    }

    /// <summary>The held height seen in this variant, m, whatever grip and stance it was seen with; null when none was.</summary>
    public double? HeldHeightOf(Variant variant) => Seen("held-height", variant);

    /// <summary>The held height when it was seen in this variant; its grip and stance as noted, or the variant's own.</summary>
    public HeldHeight? HeldFor(Variant variant)
        => Seen("held-height", variant) is { } height && Seen("held-height-grip", variant) is { } grip
            ? new HeldHeight(Length.FromMetres(height), Length.FromMetres(grip), Seen("held-height-stance", variant) is { } stance ? Length.FromMetres(stance) : null)
            : null;

    private double? Seen(string word, Variant variant) => _facts[Vocabulary.Reading(_book.Vocabulary[word], variant.Id)!.Slot] is { IsExact: true } seen ? seen.Low : null;

    /// <summary>One variant at its standard set-up.</summary>
    public Candidate Standard(Variant variant)
    {
        if (variant.Posture is not { } posture)
            return new Candidate(variant, null, null, null, null, null);
        var pull = PullOf.Variant(posture);
        var segments = (_body as KnownBody)?.Segments;
        var kneeHeight = segments is null ? (double?)null : segments.Metres(SegmentName.AnkleHeight) + segments.Metres(SegmentName.Shank);
        var heights = HandHeights.For(posture.Height, posture.Hands == "load-between-feet", _room, _disc, kneeHeight, _book.Assumptions);
        if (segments is null)
            return new Candidate(variant, heights, pull, null, null, null);
        var rough = Rough(posture, heights);
        var (_, grip) = PullOf.Grips(posture, segments, pull, rough, null, _book.Assumptions, Parameters);
        var setUp = SetUpSearch.Place(segments, pull, Length.FromMetres(heights.Standard), grip, Sole, Parameters);
        var outcome = PostureSolver.Solve(segments, pull, setUp, Parameters);
        var margins = outcome is StartPosition ? new MarginFinder(segments, _ranges, pull, Parameters).Find(setUp, withErrors: false) : null;
        return new Candidate(variant, heights, pull, setUp, outcome, margins);
    }

    private SetUp Rough(VariantPosture posture, HandHeights heights)
        => new(Length.FromMetres(heights.Standard), Sole, Length.FromMetres(posture.Stance), Length.FromMetres(posture.Stance), Angle.FromDegrees(posture.TurnOut));

    // A narrower stance is looked for in steps, from the standard one inwards, until groin and turn-out have enough.
    private PullGeometry WithStance(Candidate candidate, SetUpWishes wishes)
    {
        var pull = candidate.Pull!;
        var word = wishes.Word("stance");
        if (word == "standard")
            return pull;
        var assumed = _book.Assumptions;
        var posture = candidate.Variant.Posture!;
        for (var step = 1; step <= assumed.MostStepsOfStance; step++)
        {
            var width = posture.Stance + (word == "wider" ? step : -step) * assumed.StanceStep;
            if (width < Parameters.NarrowestStance)
                break;
            // Feet turn out less as they come closer: the turn-out shrinks with the width.
            var turnOut = posture.TurnOut * width / posture.Stance;
            pull = pull with { Stance = new StanceRule(StanceBasis.Metres, width, Angle.FromDegrees(Math.Min(posture.TurnOut, turnOut))) };
            if (word == "wider" || candidate.Standard is null || Suits(candidate, pull))
                break;
        }
        return pull;
    }

    private bool Suits(Candidate candidate, PullGeometry pull)
    {
        var segments = ((KnownBody)_body).Segments;
        var setUp = candidate.Standard! with { Stance = pull.Stance.WidthFor(segments), TurnOut = pull.Stance.TurnOut };
        return new MarginFinder(segments, _ranges, pull, Parameters).Find(setUp, withErrors: false) is { } margins
            && margins.HipAbduction is not { Value.Degrees: < 0 }
            && margins.TurnOut is not { Value.Degrees: < 0 };
    }

    private static List<Length> Including(IReadOnlyList<Length> grips, Length grip)
    {
        var all = new List<Length>(grips);
        if (!all.Exists(g => Math.Abs(g.Metres - grip.Metres) < 1e-6))
            all.Insert(all.FindLastIndex(g => g.Metres <= grip.Metres) + 1, grip);
        return all;
    }

    private double? Exact(string word)
    {
        var value = _facts[_book.Vocabulary[word].Slot];
        return value.IsExact ? value.Low : null;
    }
}
