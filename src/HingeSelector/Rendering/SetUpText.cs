using HingeSelector.Candidates;
using HingeSelector.Knowledge;
using HingeSelector.Posture;
using HingeSelector.Quantities;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Says a set-up in the words of a gym.</summary>
public sealed class SetUpText(RuleBook book)
{
    private const double SameSpot = 0.005;

    private static readonly Unit _deg = Unit.Find("deg")!;

    /// <summary>Where the hands start: first try, what makes it, the bands around it.</summary>
    public static string? Height(Candidate candidate)
    {
        if (candidate.Choice is not { } choice)
            return null;
        var band = choice.Heights;
        var first = $"{Cm.Of(band.FirstTry)} above the floor{Made(candidate, band.FirstTry)}";
        var parts = new List<string> { first };
        AddBands(parts, band);
        return string.Join("; ", parts);
    }

    /// <summary>Where the hands start in short: first try, what makes it, the band around it.</summary>
    public static string? FirstHeight(Candidate candidate)
    {
        if (candidate.Choice is not { } choice)
            return null;
        var band = choice.Heights.Fitting is { } fitting && fitting.From != fitting.To ? $"; {Cm.Of(fitting)} fits" : "";
        return $"{Cm.Of(choice.Heights.FirstTry)} above the floor{Made(candidate, choice.Heights.FirstTry)}{band}";
    }

    /// <summary>Where the hands go in short: grip and place on a straight bar, else what is held.</summary>
    public string HandsInShort(Candidate candidate)
    {
        if (candidate.Choice is not { } choice || OnBar(candidate) is null)
            return Hands(candidate.Variant);
        var outside = OutsideRing(choice.FirstTry.Grip).Metres;
        var mark = Math.Abs(outside) < SameSpot ? "on the rings" : $"{Cm.Of(Math.Abs(outside))} {(outside < 0 ? "inside" : "outside")} the rings";
        return $"{Cm.Of(choice.Grips.FirstTry)} between the middle fingers, {mark}; {Hands(candidate.Variant)}";
    }

    /// <summary>How wide the hands are: first try, bands, place on the bar.</summary>
    public string? Grip(Candidate candidate)
    {
        if (candidate.Choice is not { } choice)
            return null;
        var parts = new List<string> { $"{Cm.Of(choice.Grips.FirstTry)} between the middle fingers" };
        AddBands(parts, choice.Grips);
        if (OnBar(candidate) is { } place)
            parts.Add(place);
        return string.Join("; ", parts);
    }

    /// <summary>The place of a hand on a straight bar; null for other implements.</summary>
    public string? OnBar(Candidate candidate)
    {
        if (candidate.Choice is not { } choice || !VariantFacts.OnStraightBar(book, candidate.Variant))
            return null;
        var outside = OutsideRing(choice.FirstTry.Grip).Metres;
        var rings = $"the rings (rings {Cm.Of(book.Assumptions.RingSpacing)} apart, assumed)";
        return Math.Abs(outside) < SameSpot
            ? $"middle fingers on {rings}"
            : $"middle fingers {Cm.Of(Math.Abs(outside))} {(outside < 0 ? "inside" : "outside")} {rings}";
    }

    /// <summary>How far a hand lies outside its ring; negative inside it.</summary>
    public Length OutsideRing(Length grip) => (grip - Length.FromMetres(book.Assumptions.RingSpacing)) * 0.5;

    /// <summary>Feet: width and turn-out.</summary>
    public static string? Stance(Candidate candidate)
        => candidate.Choice?.FirstTry is { } setUp ? $"stance {Cm.Of(setUp.Stance)} between the ankles, feet turned out {QuantityText.Print(setUp.TurnOut.Degrees, _deg)}" : null;

    /// <summary>Where the hands go.</summary>
    public string Hands(Variant variant) => VariantFacts.Of(book, variant, "grip") switch
    {
        "outside-the-legs" => "hands outside the legs",
        "inside-the-legs" => "hands inside the legs",
        "wide" => "hands wide on the bar",
        "neutral-handles" => "hands on the handles, palms facing in",
        "one-or-two-hands-light" => "one or two hands, a light load",
        _ => "nothing in the hands",
    };

    /// <summary>Straps: none, use or offer.</summary>
    public string StrapsWord(RankedCandidate ranked)
        => VariantFacts.Of(book, ranked.Candidate.Variant, "takes-straps") == "no" ? "none" : ranked.Wishes.Word("straps");

    /// <summary>Straps, footwear, lowering.</summary>
    public string Rest(RankedCandidate ranked)
        => $"{StrapsInWords(ranked)}; {Footwear(ranked)}; {LoweringInWords(ranked)}";

    /// <summary>Straps in words.</summary>
    public string StrapsInWords(RankedCandidate ranked) => Straps(StrapsWord(ranked));

    /// <summary>Footwear in words.</summary>
    public static string Footwear(RankedCandidate ranked) => ranked.Wishes.Word("footwear") == "flat" ? "flat shoes or socks" : "any footwear";

    /// <summary>How the bar comes down, in words.</summary>
    public static string LoweringInWords(RankedCandidate ranked) => Lowering(ranked.Wishes.Word("lowering"));

    /// <summary>Load, repetitions, speed.</summary>
    public static string Dose(RankedCandidate ranked)
        => $"load {ranked.Wishes.Word("load")}, repetitions {ranked.Wishes.Word("repetitions")}, speed {ranked.Wishes.Word("speed")}";

    /// <summary>The whole set-up in one short line, without bands.</summary>
    public string InOneLine(RankedCandidate ranked)
    {
        var candidate = ranked.Candidate;
        var parts = new List<string>();
        if (candidate.Choice is { } choice)
        {
            parts.Add($"hands {Cm.Of(choice.Heights.FirstTry)} above the floor{Made(candidate, choice.Heights.FirstTry)}");
            parts.Add($"grip {Cm.Of(choice.Grips.FirstTry)}");
            if (OnBar(candidate) is { } place)
                parts.Add(place);
        }
        else
        {
            parts.Add(Hands(candidate.Variant));
        }
        parts.Add(StrapsInWords(ranked));
        parts.Add(LoweringInWords(ranked));
        parts.Add(Dose(ranked));
        return string.Join("; ", parts);
    }

    /// <summary>Whether the start fits, and why it came out as it did.</summary>
    public static string Fit(Candidate candidate) => candidate.Choice switch
    {
        null => "the start is not modelled, so nothing is computed for it",
        { Fit: Posture.Fit.Fits, ComputedFit: not Posture.Fit.Fits } => "held at the bar; by computation alone it would not be said to fit",
        { Fit: Posture.Fit.Fits } => "fits",
        { Fit: Posture.Fit.DoesNotFit } => "does not fit",
        _ => "not known",
    };

    /// <summary>Why a set-up came out as it did, as sentences.</summary>
    public static IEnumerable<string> Why(SetUpChoice choice) => choice.Reasons.Select(r => r switch
    {
        ChoiceReason.HipFlexionNotMeasured => "no hip flexion was measured, so whether it fits is not known and the height is the standard one",
        ChoiceReason.HipFlexionHalfMeasured => "only one of straight-leg raise and knee-bent hip flexion was measured; that one decides",
        ChoiceReason.AbductionNotMeasured => "the stance is wide and hip abduction was not measured",
        ChoiceReason.NothingFits => "no height or grip that may be tried fits; the one with the most to spare is shown",
        ChoiceReason.RoomLacksStandardHeight => "the room cannot make the standard height; the nearest stands for it",
        ChoiceReason.RoomTooLow => "the room cannot make a height as high as asked; its highest is used",
        ChoiceReason.RaisedAboveStandard => "raised above the standard height",
        ChoiceReason.HeldHeightDecides => "what was seen at the bar sets the height",
        ChoiceReason.HeldHeightForAnotherSetUp => "a held height is known, but for another grip or stance",
        ChoiceReason.StanceNarrowedForGrip => "the feet come closer so that the arms pass outside the knees",
        ChoiceReason.ArmsMeetLegs => "arms and knees meet in this set-up",
        _ => "segments are not known: a raised, light first step; measure segments or find the held height",
    });

    /// <summary>What makes a height in this room, in brackets.</summary>
    private static string Made(Candidate candidate, Length height) => candidate.Heights is { } heights ? $" ({heights.MadeBy(height.Metres)})" : "";

    private static void AddBands(List<string> parts, LengthBand band)
    {
        // A run of one says no more than the first try itself.
        if (band.Fitting is { } fitting && fitting.From != fitting.To)
            parts.Add($"{Cm.Of(fitting)} fits");
        foreach (var run in band.Further)
            parts.Add($"so does {Cm.Of(run)}");
        if (band.Widened is { } widened && (band.Fitting is not { } narrow || narrow.From != widened.From || narrow.To != widened.To))
            parts.Add($"within the errors {Cm.Of(widened)}");
    }

    private static string Straps(string word) => word switch
    {
        "use" => "with straps",
        "offer" => "straps on offer",
        _ => "no straps",
    };

    private static string Lowering(string word) => word switch
    {
        "dropped" => "let go at the top",
        "assisted" => "blocks or pins catch the bar early on the way down",
        _ => "lowered under control",
    };
}
