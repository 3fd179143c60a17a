using HingeSelector.Quantities;
using HingeSelector.Rendering;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Rendering;

public class SetUpTextTests
{
    [Theory]
    [InlineData(0.55, -0.18)]
    [InlineData(0.91, 0)]
    [InlineData(1.01, 0.05)]
    public void A_hand_lies_half_the_difference_to_the_rings_outside_them(double grip, double expected)
        => new SetUpText(RepositoryFiles.Book).OutsideRing(Length.FromMetres(grip)).Metres.ShouldBe(expected, 1e-9);

    [Theory]
    [InlineData(0.34, 0.30, true, "34 cm seen at the bar (grip 56 cm), 30 cm computed: 4 cm higher than computed; what was seen decides")]
    [InlineData(0.30, 0.34, true, "30 cm seen at the bar (grip 56 cm), 34 cm computed: 4 cm lower than computed; what was seen decides")]
    [InlineData(0.30, 0.30, true, "30 cm seen at the bar (grip 56 cm), 30 cm computed: no difference; what was seen decides")]
    [InlineData(0.30, null, false, "30 cm seen at the bar (grip 56 cm), no height could be computed beside it; it was seen at another grip or stance, so it does not set the height by itself")]
    public void Held_and_computed_height_are_told_with_their_difference(double held, double? computed, bool decides, string expected)
        => new HeldSeen(held, 0.56, null, computed, decides).ToString().ShouldBe(expected);

    [Fact]
    public void A_comparison_names_its_basis()
        => TraceText.Fact(new Recommending.FactRead("back-moment, as set up", "Moment at the low back, as set up", "92 %"))
            .ShouldBe("Moment at the low back, as set up: 92 % of this athlete's conventional pull at equal load");
}
