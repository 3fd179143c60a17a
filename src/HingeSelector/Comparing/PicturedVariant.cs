using HingeSelector.Candidates;

namespace HingeSelector.Comparing;

/// <summary>A ranked variant as far as two answers are compared.</summary>
/// <param name="Id">Id of the variant.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Tied">Whether it is tied with the first.</param>
/// <param name="Score">Weighted points.</param>
/// <param name="Points">Points by criterion.</param>
/// <param name="Band">Where the hands start.</param>
/// <param name="Wishes">What rules ask of the set-up.</param>
/// <param name="Cues">What is said.</param>
/// <param name="Cautions">What to beware of.</param>
public sealed record PicturedVariant(string Id, string Label, bool Tied, int Score, IReadOnlyList<int> Points, Band Band, SetUpWishes Wishes, IReadOnlyList<string> Cues, IReadOnlyList<string> Cautions);
