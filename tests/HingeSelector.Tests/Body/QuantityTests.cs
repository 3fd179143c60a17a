using HingeSelector.Quantities;

namespace HingeSelector.Tests.Body;

public sealed class QuantityTests
{
    [Fact]
    public void A_quantity_is_held_in_its_base_unit_and_printed_the_same_everywhere()
    {
        Angle.FromRadians(Math.PI).Degrees.ShouldBe(180, 1e-12);
        Length.FromCentimetres(22.5).ToString().ShouldBe("0.225 m");
        (Moment.FromNewtonMetres(12) / Moment.FromNewtonMetres(8)).ShouldBe(1.5);
        (Mass.FromKilograms(100) - Mass.FromKilograms(20) * 2).ShouldBe(Mass.FromKilograms(60));
        (Force.FromNewtons(1) < Force.FromNewtons(2)).ShouldBeTrue();
    }

    [Fact]
    public void What_is_not_a_number_is_no_quantity()
    {
        Should.Throw<ArgumentException>(() => Angle.FromDegrees(double.NaN));
        Should.Throw<ArgumentException>(() => Length.FromMetres(double.NaN));
    }
}
