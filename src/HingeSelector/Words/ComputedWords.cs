using HingeSelector.Quantities;

namespace HingeSelector.Words;

/// <summary>Words whose values the program computes, with the same metadata as measured ones.</summary>
public static class ComputedWords
{
    /// <summary>Reading at the variant's standard set-up.</summary>
    public const string Standard = "standard";

    /// <summary>Reading after the set-up search.</summary>
    public const string AsSetUp = "as set up";

    private static readonly string[] _bothSetUps = [Standard, AsSetUp];
    private static readonly string[] _noYes = ["no", "yes"];

    /// <summary>All computed words, in slot order.</summary>
    /// <param name="variants">Ids of the variants.</param>
    /// <param name="clearanceCovers">What a clearance may cover.</param>
    /// <param name="history">What a clearance may be for: values of the history as rules name them.</param>
    public static IEnumerable<Word> All(IReadOnlyList<string> variants, IReadOnlyList<string> clearanceCovers, IReadOnlyList<string> history)
    {
        yield return Number("relative-strength", "Relative strength", Dimension.BodyMassMultiple, "Tested 1RM without straps over body mass; open when the test was with straps or either is unknown.");
        yield return Number("shoulder-flexion-loss", "Shoulder flexion below the rested baseline", Dimension.Angle, "Rested baseline minus the throwing side today; open within 24 hours of hard throwing.") with { MayNotApply = true };
        yield return Number("internal-rotation-loss", "Internal rotation below the rested baseline", Dimension.Angle, "Rested baseline minus the throwing side today; open within 24 hours of hard throwing.") with { MayNotApply = true };
        yield return Number("rotation-arc-loss", "Rotation arc below the rested baseline", Dimension.Angle, "Internal and external rotation together, rested baseline minus the throwing side today; open within 24 hours of hard throwing.") with { MayNotApply = true };
        yield return Number("grown-since-screen", "Growth since the screen", Dimension.Length, "Stature today minus stature on the screen.");
        yield return Set("not-cleared", "Not cleared", history, clearanceCovers, "History on file for which no letter that is valid on the day names this kind of loading.");
        yield return Set("letter", "Letter", history, ClearanceTerms.States, "History on file whose letters are in this state.");
        yield return Number("clearance-load-cap", "Cap of the clearance", Dimension.Mass, "Lowest cap of the valid clearances; not applicable without one.") with { MayNotApply = true };
        yield return Choice("body-basis", "Segment lengths from", ["measured", "survey", "mixed", "not-known"], "Where the segment lengths of the posture model come from.");
        yield return Choice("training-on-file", "Training on file", ["none", "partly", "yes"], "Whether training age and the pulls taught are both on file, one of them, or neither.");
        foreach (var (id, label) in new[] { ("straight-bars", "Straight bars"), ("hex-bars", "Hex bars"), ("block-pairs", "Pairs of blocks"), ("racks", "Racks"), ("straps-in-room", "Pairs of straps"), ("weights-by-hand", "Kettlebells and dumbbells"), ("cables-or-bands", "Cables and bands") })
            yield return Number(id, label, Dimension.None, "Counted in the room file.") with { About = WordAbout.Room };
        yield return YesNo("room-can-raise-a-bar", "The room can raise a bar", "Blocks or rack pins that raise a straight bar.") with { About = WordAbout.Room };
        yield return YesNo("bars-may-be-dropped", "Bars may be dropped", "Floor and discs allow letting go from the top.") with { About = WordAbout.Room };

        yield return Choice("variant", "Variant", variants, "The way of pulling.") with { About = WordAbout.Candidate };
        yield return YesNo("kit-there", "The room has its kit", "Everything in the variant's kit list is in the room.") with { About = WordAbout.Candidate };
        yield return YesNo("new-to-athlete", "New to the athlete", "Not among the pulls they have been taught.") with { About = WordAbout.Candidate };
        yield return YesNo("is-block-variant", "The variant of the block", "The standing choice; open without one.") with { About = WordAbout.Candidate };
        yield return SetUp(Choice("posture", "Posture", ["solved", "unreachable", "folded", "not-modelled", "body-not-known"], "Outcome of the posture solver."));
        yield return SetUp(Number("hip-spare", "Spare hip flexion", Dimension.Angle, "Hip flexion available minus demanded, worse side; split stances: working side."));
        yield return SetUp(Number("hip-demand", "Hip flexion demanded", Dimension.Angle, "Thigh to pelvis, after the share of the low back."));
        yield return SetUp(Number("groin-spare", "Spare hip abduction", Dimension.Angle, "Hip abduction available minus demanded."));
        yield return SetUp(Number("turn-out-spare", "Spare turn-out", Dimension.Angle, "Hip external rotation available minus turn-out."));
        yield return SetUp(Number("ankle-spare", "Spare ankle bend", Dimension.Angle, "Dorsiflexion available minus demanded; not applicable where the shin rests on the bar."));
        yield return SetUp(Number("trunk-angle", "Trunk above horizontal", Dimension.Angle, "Hip-shoulder line above horizontal."));
        yield return SetUp(Number("knee-bend", "Knee bend", Dimension.Angle, "Knee flexion at the start."));
        yield return SetUp(Number("arm-spread", "Arm spread", Dimension.Angle, "Shoulder abduction that the grip asks."));
        yield return SetUp(Number("back-moment", "Moment at the low back", Dimension.Share, "L5/S1 moment against this athlete's conventional pull, equal load."));
        yield return SetUp(Number("start-height", "Start height", Dimension.Length, "Height of the hands above the floor."));
        yield return SetUp(Number("raise", "Raise", Dimension.Length, "Start height minus the standard one."));
        yield return SetUp(Number("start-above-held", "Start above the held height", Dimension.Length, "Start height minus the held height seen in this pull; not applicable when none was seen in it."));
        yield return SetUp(YesNo("fits", "Fits", "Every measured spare is at least zero."));
    }

    private static Word Number(string id, string label, Dimension dimension, string meaning)
        => new() { Id = id, Label = label, About = WordAbout.Computed, Kind = WordKind.Number, Dimension = dimension, Unit = Unit.PreferredFor(dimension), Meaning = meaning };

    private static Word Choice(string id, string label, IReadOnlyList<string> values, string meaning)
        => new() { Id = id, Label = label, About = WordAbout.Computed, Kind = WordKind.Choice, Values = values, Meaning = meaning };

    private static Word Set(string id, string label, IReadOnlyList<string> values, IReadOnlyList<string> readings, string meaning)
        => Choice(id, label, values, meaning) with { Kind = WordKind.Set, Readings = readings, MayNotApply = true };

    private static Word YesNo(string id, string label, string meaning) => Choice(id, label, _noYes, meaning);

    private static Word SetUp(Word word) => word with { About = WordAbout.Candidate, Readings = _bothSetUps, MayNotApply = word.Id != "posture" };
}
