using HingeSelector.Diagnostics;

namespace HingeSelector.Knowledge;

/// <summary>A way of pulling, as its file in rules/variants/ describes it.</summary>
public sealed record Variant
{
    /// <summary>Name of the file.</summary>
    public required string Id { get; init; }

    /// <summary>Place in the catalogue.</summary>
    public required int Index { get; init; }

    /// <summary>Name for people.</summary>
    public required string Label { get; init; }

    /// <summary>What it is and why a thrower's coach would want it.</summary>
    public required string Summary { get; init; }

    /// <summary>Everything the room must have.</summary>
    public required IReadOnlyList<string> Kit { get; init; }

    /// <summary>How it is described to the posture model; null when the model does not cover it.</summary>
    public required VariantPosture? Posture { get; init; }

    /// <summary>Its answers to the words of the variants, by slot of the candidate's table.</summary>
    public required IReadOnlyList<VariantWord> Words { get; init; }

    /// <summary>What it trains, spares and asks.</summary>
    public required IReadOnlyList<Claim> Claims { get; init; }

    /// <summary>Published ratio to another variant; null when none is published.</summary>
    public StrengthRelation? StrengthRelation { get; init; }

    /// <summary>Why it is never a first choice; null when it can be.</summary>
    public string? NeverFirst { get; init; }

    /// <summary>Cautions that always belong to it.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Where.</summary>
    public required SourceSpan Span { get; init; }
}
