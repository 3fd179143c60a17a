using HingeSelector.Body;
using HingeSelector.Knowledge;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Statics;
using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>Writes what is known and computed of a candidate into its fact table.</summary>
public sealed class CandidateTable
{
    private const int Standard = 0;
    private const int AsSetUp = 1;

    private readonly RuleBook _book;
    private readonly CandidateBuilder _builder;
    private readonly double? _bodyMass;
    private readonly double? _conventionalBack;

    /// <summary>Prepares the tables of one athlete.</summary>
    /// <param name="book">The rule book.</param>
    /// <param name="builder">The athlete's builder.</param>
    /// <param name="standard">All candidates at their standard set-up; the conventional one is what moments are compared with.</param>
    public CandidateTable(RuleBook book, CandidateBuilder builder, IReadOnlyList<Candidate> standard)
    {
        _book = book;
        _builder = builder;
        _bodyMass = (builder.Body as KnownBody)?.Mass?.Kilograms;
        var conventional = standard.FirstOrDefault(c => c.Variant.Id == "conventional");
        _conventionalBack = conventional is { Pull: not null } ? Loads(conventional.Pull, conventional.StandardOutcome)?.L5S1.NewtonMetres : null;
    }

    /// <summary>A new table with everything but the chosen set-up.</summary>
    public FactValue[] Start(Candidate candidate, FactValue[] athlete, Room? room, StandingChoice? standing)
    {
        var table = Bare(_book.Vocabulary, candidate.Variant, athlete, room, standing);
        Write(table, Standard, candidate, candidate.Standard, candidate.StandardOutcome, candidate.StandardMargins, null);
        return table;
    }

    /// <summary>A new table with what is known of a candidate without the model.</summary>
    internal static FactValue[] Bare(Vocabulary vocabulary, Variant variant, FactValue[] athlete, Room? room, StandingChoice? standing)
    {
        var table = new FactValue[vocabulary.CandidateSlots];
        foreach (var (slot, value) in variant.Words)
            table[slot] = value;
        table[vocabulary["variant"].Slot] = FactValue.Choice(variant.Index);
        table[vocabulary["kit-there"].Slot] = room is null ? FactValue.Missing : FactValue.YesNo(KitList.IsThere(variant.Kit, room));
        var pulled = athlete[vocabulary["pulled-before"].Slot];
        table[vocabulary["new-to-athlete"].Slot] = pulled.IsKnown ? FactValue.YesNo((pulled.Bits & (1UL << variant.Index)) == 0) : FactValue.Unknown(pulled.State);
        table[vocabulary["is-block-variant"].Slot] = standing is null ? FactValue.Missing : FactValue.YesNo(standing.Variant == variant.Index);
        return table;
    }

    /// <summary>Adds the chosen set-up.</summary>
    public void AddChoice(FactValue[] table, Candidate candidate)
        => Write(table, AsSetUp, candidate, candidate.Choice?.FirstTry, candidate.Choice?.Outcome, candidate.Choice?.Margins, candidate.Choice);

    /// <summary>A copy in which the spare degrees of both set-ups are off by one standard error of measuring and model together.</summary>
    public FactValue[] Shifted(FactValue[] table, Margins? margins, int sign)
    {
        var copy = (FactValue[])table.Clone();
        Shift(copy, "hip-spare", margins?.HipFlexion, sign);
        Shift(copy, "groin-spare", margins?.HipAbduction, sign);
        Shift(copy, "turn-out-spare", margins?.TurnOut, sign);
        Shift(copy, "ankle-spare", margins?.Dorsiflexion, sign);
        return copy;
    }

    private void Shift(FactValue[] table, string word, Spare? spare, int sign)
    {
        foreach (var slot in new[] { _book.Vocabulary[word].Slot + Standard, _book.Vocabulary[word].Slot + AsSetUp })
        {
            if (spare is { } s && table[slot].IsExact)
                table[slot] = FactValue.Number(table[slot].Low + (sign * s.Error.Degrees));
        }
    }

    /// <summary>A candidate with the moments of its chosen set-up.</summary>
    public Candidate WithLoads(Candidate candidate)
        => candidate.Pull is { } pull ? candidate with { Loads = Loads(pull, candidate.Choice?.Outcome) } : candidate;

    /// <summary>Moments of a position at the load of comparison; null without a position or body mass.</summary>
    public StaticLoads? Loads(PullGeometry pull, PostureOutcome? outcome)
    {
        if (outcome is not StartPosition position || _builder.Body is not KnownBody body || _bodyMass is not { } kilograms)
            return null;
        return StaticSolver.Solve(
            position, body.Segments, Mass.FromKilograms(kilograms), Mass.FromKilograms(kilograms * _book.Assumptions.ComparisonLoad),
            _book.Model.Masses[0].For(body.Sex), pull.Legs, _book.Model.Parameters);
    }

    private void Write(FactValue[] table, int reading, Candidate candidate, SetUp? setUp, PostureOutcome? outcome, Margins? margins, SetUpChoice? choice)
    {
        void Put(string word, FactValue value) => table[_book.Vocabulary[word].Slot + reading] = value;

        var modelled = candidate.Pull is not null;
        Put("posture", FactValue.Choice(PlaceOf(outcome, modelled)));
        var position = outcome as StartPosition;
        FactValue Of(double? value) => !modelled ? FactValue.NotApplicable : value is { } v ? FactValue.Number(v) : FactValue.Undecided;
        Put("hip-spare", Of(margins?.HipFlexion?.Value.Degrees));
        Put("groin-spare", Of(margins?.HipAbduction?.Value.Degrees));
        Put("turn-out-spare", Of(margins?.TurnOut?.Value.Degrees));
        Put("ankle-spare", candidate.Pull is { Implement: ImplementKind.StraightBar } ? FactValue.NotApplicable : Of(margins?.Dorsiflexion?.Value.Degrees));
        Put("hip-demand", Of(position?.HipDemand.Degrees));
        Put("trunk-angle", Of(position?.TrunkAboveLevel.Degrees));
        Put("knee-bend", Of(position?.KneeFlexion.Degrees));
        Put("arm-spread", Of(position?.ShoulderAbduction.Degrees));
        var back = candidate.Pull is { } pull ? Loads(pull, outcome)?.L5S1.NewtonMetres : null;
        Put("back-moment", Of(back is { } moment && _conventionalBack is > 0 and { } reference ? 100 * moment / reference : null));
        var height = setUp?.HandHeight.Metres ?? (reading == Standard ? candidate.Heights?.Standard : null);
        Put("start-height", Of(height));
        Put("raise", Of(height is { } h && candidate.Heights is { } heights ? Math.Round(h - heights.Standard, 6) : null));
        var held = _builder.HeldHeightOf(candidate.Variant);
        Put("start-above-held", held is null ? FactValue.NotApplicable : Of(height - held));
        Put("fits", !modelled ? FactValue.NotApplicable : Fits(outcome, margins, choice));
    }

    private static FactValue Fits(PostureOutcome? outcome, Margins? margins, SetUpChoice? choice)
    {
        if (choice is not null)
            return choice.Fit switch { Fit.Fits => FactValue.YesNo(true), Fit.DoesNotFit => FactValue.YesNo(false), _ => FactValue.Undecided };
        if (outcome is null)
            return FactValue.Undecided;
        if (outcome is not StartPosition || margins is null)
            return outcome is NotModelled ? FactValue.Undecided : FactValue.YesNo(false);
        if (margins.HipFlexion is { Value.Degrees: < 0 } || margins.HipAbduction is { Value.Degrees: < 0 } || margins.TurnOut is { Value.Degrees: < 0 })
            return FactValue.YesNo(false);
        return margins.HipFlexion is null ? FactValue.Undecided : FactValue.YesNo(true);
    }

    private static int PlaceOf(PostureOutcome? outcome, bool modelled) => outcome switch
    {
        StartPosition => 0,
        Unreachable => 1,
        Folded => 2,
        NotModelled => 3,
        _ => modelled ? 4 : 3,
    };
}
