namespace HingeSelector.Body;

/// <summary>A body whose segments are known.</summary>
/// <param name="Segments">The lengths, each with its error.</param>
/// <param name="Basis">Where the four main ones come from.</param>
/// <param name="Sex">Sex, when given; chooses the mass table's column.</param>
/// <param name="Mass">Body mass, when given.</param>
public sealed record KnownBody(Segments Segments, BodyBasis Basis, Sex Sex, Quantities.Mass? Mass) : BodyEstimate;
