using System.Text.Json;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Writes the set-up of a candidate in base units: metres, degrees.</summary>
internal sealed class JsonSetUp(Utf8JsonWriter json, RuleBook book)
{
    // A tenth of a millimetre and a hundredth of a degree: finer digits would say nothing.
    private const int LengthDecimals = 4;
    private const int AngleDecimals = 2;

    private readonly SetUpText _words = new(book);

    public void Write(Recommendation answer, RankedCandidate ranked)
    {
        var candidate = ranked.Candidate;
        json.WriteStartObject("setUp");
        json.WriteBoolean("modelled", candidate.Pull is not null);
        WriteFit(candidate.Choice);
        WriteHeight(ranked);
        WriteGrip(ranked);
        WriteStance(candidate.Choice);
        json.WriteString("hands", VariantFacts.Of(book, candidate.Variant, "grip"));
        json.WriteString("straps", _words.StrapsWord(ranked));
        foreach (var word in new[] { "footwear", "lowering", "load", "repetitions", "speed" })
            json.WriteString(word, ranked.Wishes.Word(word));
        WriteHeld(HeldSeen.In(book, answer, candidate));
        WritePosition(candidate.Choice?.Outcome as StartPosition);
        WriteSpare(candidate.Choice?.Margins);
        json.WriteEndObject();
    }

    private void WriteFit(SetUpChoice? choice)
    {
        json.WriteString("fit", FitWord(choice?.Fit));
        json.WriteString("computedFit", FitWord(choice?.ComputedFit));
        json.WriteStartArray("notes");
        foreach (var note in choice is null ? [] : SetUpText.Why(choice))
            json.WriteStringValue(note);
        json.WriteEndArray();
    }

    private static string FitWord(Fit? fit) => fit switch
    {
        Fit.Fits => "fits",
        Fit.DoesNotFit => "does-not-fit",
        _ => "not-known",
    };

    private void WriteHeight(RankedCandidate ranked)
    {
        var candidate = ranked.Candidate;
        if (candidate.Choice is not { } choice)
        {
            json.WriteNull("handHeight");
            return;
        }
        json.WriteStartObject("handHeight");
        WriteBand(choice.Heights);
        json.WriteString("madeBy", candidate.Heights?.MadeBy(choice.Heights.FirstTry.Metres));
        Metres("standardMetres", candidate.Heights is { } heights ? Length.FromMetres(heights.Standard) : null);
        Metres("computedLowestMetres", HeldSeen.LowestThatFits(choice));
        WriteOthers(ranked.Heights.Value);
        json.WriteEndObject();
    }

    private void WriteGrip(RankedCandidate ranked)
    {
        var candidate = ranked.Candidate;
        if (candidate.Choice is not { } choice)
        {
            json.WriteNull("grip");
            return;
        }
        json.WriteStartObject("grip");
        WriteBand(choice.Grips);
        if (VariantFacts.OnStraightBar(book, candidate.Variant))
        {
            json.WriteStartObject("onTheBar");
            Metres("outsideRingsMetres", _words.OutsideRing(choice.FirstTry.Grip));
            Metres("assumedRingSpacingMetres", Length.FromMetres(book.Assumptions.RingSpacing));
            json.WriteString("text", _words.OnBar(candidate));
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("onTheBar");
        }
        WriteOthers(ranked.Grips.Value);
        json.WriteEndObject();
    }

    private void WriteBand(LengthBand band)
    {
        Metres("firstTryMetres", band.FirstTry);
        WriteRun("fitting", band.Fitting);
        json.WriteStartArray("fittingFurther");
        foreach (var run in band.Further)
            WriteRunValue(run);
        json.WriteEndArray();
        WriteRun("withinErrors", band.Widened);
    }

    private void WriteRun(string property, LengthRun? run)
    {
        if (run is null)
        {
            json.WriteNull(property);
            return;
        }
        json.WritePropertyName(property);
        WriteRunValue(run);
    }

    private void WriteRunValue(LengthRun run)
    {
        json.WriteStartObject();
        Metres("fromMetres", run.From);
        Metres("toMetres", run.To);
        json.WriteEndObject();
    }

    private void WriteOthers(IReadOnlyList<AlternativeSetUp> others)
    {
        json.WriteStartArray("others");
        foreach (var other in others)
        {
            json.WriteStartObject();
            Metres("metres", Length.FromMetres(other.Metres));
            json.WriteNumber("pointsLess", other.Cost);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void WriteStance(SetUpChoice? choice)
    {
        if (choice is null)
        {
            json.WriteNull("stance");
            return;
        }
        json.WriteStartObject("stance");
        Metres("widthMetres", choice.FirstTry.Stance);
        Degrees("turnOutDegrees", choice.FirstTry.TurnOut);
        Metres("soleMetres", choice.FirstTry.Sole);
        json.WriteEndObject();
    }

    private void WriteHeld(HeldSeen? held)
    {
        if (held is null)
        {
            json.WriteNull("held");
            return;
        }
        json.WriteStartObject("held");
        Metres("heightMetres", Length.FromMetres(held.Height));
        Metres("gripMetres", Known(held.Grip));
        Metres("stanceMetres", Known(held.Stance));
        Metres("computedMetres", Known(held.Computed));
        Metres("lessComputedMetres", Known(held.LessComputed));
        json.WriteBoolean("decides", held.Decides);
        json.WriteEndObject();
    }

    private static Length? Known(double? metres) => metres is { } known ? Length.FromMetres(known) : null;

    private void WritePosition(StartPosition? position)
    {
        if (position is null)
        {
            json.WriteNull("position");
            return;
        }
        json.WriteStartObject("position");
        Degrees("trunkAboveLevelDegrees", position.TrunkAboveLevel);
        Degrees("kneeFlexionDegrees", position.KneeFlexion);
        Degrees("hipDemandDegrees", position.HipDemand);
        Degrees("hipAbductionDemandDegrees", position.HipAbductionDemand);
        Degrees("shoulderAbductionDegrees", position.ShoulderAbduction);
        Metres("hipHeightMetres", position.HipHeight);
        Metres("travelMetres", position.Travel);
        json.WriteEndObject();
    }

    private void WriteSpare(Margins? margins)
    {
        json.WriteStartArray("spare");
        foreach (var (joint, _, spare) in SpareText.Measured(margins))
        {
            json.WriteStartObject();
            json.WriteString("joint", joint);
            Degrees("valueDegrees", spare.Value);
            Degrees("measuringErrorDegrees", spare.MeasuringError);
            Degrees("modelErrorDegrees", spare.ModelError);
            json.WriteString("side", SpareText.Side(spare.Side));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void Metres(string property, Length? length)
    {
        if (length is { } known)
            json.WriteNumber(property, Rounded(known.Metres, LengthDecimals));
        else
            json.WriteNull(property);
    }

    private void Degrees(string property, Angle angle) => json.WriteNumber(property, Rounded(angle.Degrees, AngleDecimals));

    // Adding zero turns a negative zero into a plain one.
    private static double Rounded(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
}
