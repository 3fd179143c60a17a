using HingeSelector.Knowledge;

namespace HingeSelector.Explaining;

/// <summary>How the points of one criterion come about.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Amounts">Points lines of the rules that hold.</param>
/// <param name="Clamped">Their sum, kept between -3 and +3.</param>
/// <param name="Weight">What the philosophy gives it.</param>
public sealed record CriterionSum(Criterion Criterion, IReadOnlyList<int> Amounts, int Clamped, int Weight)
{
    /// <summary>What it adds to the score.</summary>
    public int Weighted => Clamped * Weight;
}
