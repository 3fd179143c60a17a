using HingeSelector.Body;
using HingeSelector.Knowledge;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>Takes body and ranges of motion out of the fact table, for the posture model.</summary>
public sealed class AthleteBody
{
    private const double HoursPerYear = 24 * 365.25;

    private readonly FactValue[] _facts;
    private readonly Vocabulary _vocabulary;
    private readonly ModelParameters _parameters;

    private AthleteBody(FactValue[] facts, Vocabulary vocabulary, ModelParameters parameters)
    {
        _facts = facts;
        _vocabulary = vocabulary;
        _parameters = parameters;
    }

    /// <summary>The body, or why it is not known.</summary>
    public static BodyEstimate Estimate(FactValue[] facts, Vocabulary vocabulary, Model model)
    {
        var reader = new AthleteBody(facts, vocabulary, model.Parameters);
        var sex = vocabulary["sex"];
        return BodyEstimator.Estimate(
            new BodyMeasures
            {
                Sex = reader.Chosen(sex) switch { "female" => Sex.Female, "male" => Sex.Male, _ => Sex.Unknown },
                AgeYears = reader.Number("age") / HoursPerYear,
                Stature = reader.Length("stature"),
                Mass = reader.Number("mass") is { } kilograms ? Mass.FromKilograms(kilograms) : null,
                Thigh = reader.Length("thigh-length"),
                Shank = reader.Length("shank-length"),
                TrunkToAcromion = reader.Length("trunk-length"),
                ArmToGrip = reader.Length("arm-length"),
                LimbDifference = reader.Chosen(vocabulary["limb-difference"]) == "yes",
            },
            model.Survey,
            model.Parameters);
    }

    /// <summary>Ranges of motion of both sides. In a split stance the side opposite to the throwing arm works: it is the front leg of a throw.</summary>
    public static RangeOfMotion Ranges(FactValue[] facts, Vocabulary vocabulary, Model model)
    {
        var reader = new AthleteBody(facts, vocabulary, model.Parameters);
        Side? working = reader.Chosen(vocabulary["throwing-side"]) switch
        {
            "right" => Side.Left,
            "left" => Side.Right,
            _ => null,
        };
        return new RangeOfMotion(reader.OneSide(Sides.Left), reader.OneSide(Sides.Right), working);
    }

    private SideRange OneSide(int side) => new()
    {
        StraightLegRaise = Flexion("straight-leg-raise", "straight-leg-raise-pelvis-held", side),
        KneeBentHipFlexion = Flexion("hip-flexion", "hip-flexion-pelvis-held", side),
        HipAbduction = Range("hip-abduction", side),
        HipExternalRotation = Range("hip-external-rotation", side),
        Dorsiflexion = OfSide("knee-to-wall", side) is { } metres
            ? AngleMeasure.FromKneeToWall(Quantities.Length.FromMetres(metres), Quantities.Length.FromMetres(_vocabulary["knee-to-wall"].ErrorOf(metres)), _parameters)
            : null,
    };

    private HipFlexionMeasure? Flexion(string word, string pelvis, int side)
        => OfSide(word, side) is { } degrees
            ? new HipFlexionMeasure(Angle.FromDegrees(degrees), Angle.FromDegrees(_vocabulary[word].ErrorOf(degrees)), Chosen(_vocabulary[pelvis]) switch
            {
                "yes" => PelvisHeld.Yes,
                "no" => PelvisHeld.No,
                _ => PelvisHeld.Unknown,
            })
            : null;

    private AngleMeasure? Range(string word, int side)
        => OfSide(word, side) is { } degrees ? new AngleMeasure(Angle.FromDegrees(degrees), Angle.FromDegrees(_vocabulary[word].ErrorOf(degrees))) : null;

    private double? OfSide(string word, int side)
    {
        var value = _facts[_vocabulary[word].Slot + side];
        return value.IsExact ? value.Low : null;
    }

    private double? Number(string word) => OfSide(word, 0);

    private Length? Length(string word) => Number(word) is { } metres ? Quantities.Length.FromMetres(metres) : null;

    private string? Chosen(Word word)
    {
        var value = _facts[word.Slot];
        return value.IsKnown && value.Bits != 0 ? word.Values[System.Numerics.BitOperations.TrailingZeroCount(value.Bits)] : null;
    }
}
