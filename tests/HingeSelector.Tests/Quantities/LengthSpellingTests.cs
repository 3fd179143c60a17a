using HingeSelector.Quantities;

namespace HingeSelector.Tests.Quantities;

public sealed class LengthSpellingTests
{
    private static readonly Unit _centimetres = Unit.Find("cm")!;

    [Theory]
    [InlineData("182", 1.82)]
    [InlineData("182.5", 1.825)]
    [InlineData("182,5", 1.825)]
    [InlineData(" 182 ", 1.82)]
    [InlineData("+182", 1.82)]
    [InlineData("182 cm", 1.82)]
    [InlineData("182cm", 1.82)]
    [InlineData("182  cm", 1.82)]
    [InlineData("182 CM", 1.82)]
    [InlineData("182,5 cm", 1.825)]
    [InlineData("1.82 m", 1.82)]
    [InlineData("1.82m", 1.82)]
    [InlineData("1,82 m", 1.82)]
    [InlineData("1,82m", 1.82)]
    [InlineData("1.82 M", 1.82)]
    [InlineData("1.825 m", 1.825)]
    [InlineData("0,825 m", 0.825)]
    [InlineData("2 metres", 2)]
    [InlineData("2 meters", 2)]
    [InlineData("1820 mm", 1.82)]
    [InlineData("1820mm", 1.82)]
    [InlineData("71.5 in", 1.8161)]
    [InlineData("71.5in", 1.8161)]
    [InlineData("71,5 in", 1.8161)]
    [InlineData("71.5 inches", 1.8161)]
    [InlineData("1 inch", 0.0254)]
    [InlineData("71.5\"", 1.8161)]
    [InlineData("71.5”", 1.8161)]
    [InlineData("5'11\"", 1.8034)]
    [InlineData("5'11", 1.8034)]
    [InlineData("5' 11\"", 1.8034)]
    [InlineData("5 ' 11 \"", 1.8034)]
    [InlineData("5’11”", 1.8034)]
    [InlineData("5'11''", 1.8034)]
    [InlineData("5'11.5\"", 1.8161)]
    [InlineData("5'11,5\"", 1.8161)]
    [InlineData("5'0\"", 1.524)]
    [InlineData("6'", 1.8288)]
    [InlineData("6 ft", 1.8288)]
    [InlineData("6ft", 1.8288)]
    [InlineData("6 feet", 1.8288)]
    [InlineData("6 FT 1 IN", 1.8542)]
    [InlineData("6 ft 1 in", 1.8542)]
    [InlineData("6ft1in", 1.8542)]
    [InlineData("6 feet 1 inches", 1.8542)]
    [InlineData("5.9 ft", 1.79832)]
    [InlineData("0", 0)]
    [InlineData("-2 cm", -0.02)]
    [InlineData("−2 cm", -0.02)]
    public void A_length_is_read_as_people_type_it(string text, double metres)
    {
        QuantityText.TryRead(text, Dimension.Length, _centimetres, out var value, out var problem).ShouldBeTrue(problem);
        value.ShouldBe(metres, 1e-12);
    }

    [Theory]
    [InlineData("1,820")]
    [InlineData("1,820 m")]
    [InlineData("0182")]
    [InlineData("182 kg")]
    [InlineData("182 deg")]
    [InlineData("182 cn")]
    [InlineData("182 cm tall")]
    [InlineData("1 m 82")]
    [InlineData("1.8.2 m")]
    [InlineData("5'12\"")]
    [InlineData("5'11\"\"")]
    [InlineData("tall")]
    [InlineData("cm")]
    [InlineData("182-184")]
    [InlineData("~182")]
    [InlineData("1e3")]
    [InlineData("0x10")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("")]
    public void What_is_no_length_is_refused_with_a_reason(string text)
    {
        QuantityText.TryRead(text, Dimension.Length, _centimetres, out _, out var problem).ShouldBeFalse();
        problem.ShouldNotBeNullOrWhiteSpace();
    }

    [Theory]
    [InlineData(57, "57 cm", "0.57 m", "570 mm")]
    [InlineData(22.5, "22.5 cm", "0.225 m", "225 mm")]
    [InlineData(29, "29 cm", "0.29 m", "290 mm")]
    public void One_length_is_one_number_in_every_unit(double centimetres, params string[] spellings)
    {
        var expected = Math.Round(centimetres / 100, 9);
        foreach (var spelling in spellings)
        {
            QuantityText.TryRead(spelling, Dimension.Length, null, out var value, out _).ShouldBeTrue();
            value.ShouldBe(expected, "a limit met exactly may not depend on the unit");
        }
    }
}
