using HingeSelector.Quantities;

namespace HingeSelector.Tests.Quantities;

public sealed class UnitTests
{
    // International yard and pound agreement, 1959: both factors are exact.
    [Theory]
    [InlineData("lb", 315, 142.88159655)]
    [InlineData("in", 71.5, 1.8161)]
    [InlineData("cm", 182, 1.82)]
    public void A_unit_converts_to_its_base(string symbol, double value, double expected)
        => (Unit.Find(symbol)!.Factor * value).ShouldBe(expected, 1e-9);

    [Fact]
    public void Every_spelling_leads_to_a_unit()
        => Unit.Spellings.Keys.ShouldAllBe(s => Unit.Find(s) != null);
}
