using System.Globalization;
using HingeSelector.Body;
using HingeSelector.Tests.Body;

namespace HingeSelector.Tests.Statics;

/// <summary>Mass tables against the shipped data files and the sums that the sources must give.</summary>
public sealed class MassTableTests
{
    [Fact]
    public void Winter_after_Dempster_sums_to_0_497_0_678_and_1()
    {
        var rows = Rows("BSP_DempsterWinter.txt", 2);
        (rows["Thorax"] + rows["Abdomen"] + rows["Pelvis"]).ShouldBe(0.497, 1e-9);
        (rows["Trunk"] + rows["Head neck"] + (2 * rows["Total arm"])).ShouldBe(0.678, 1e-9);
        (rows["HAT"] + (2 * rows["Total leg"])).ShouldBe(1, 1e-9);
    }

    [Theory]
    [InlineData("BSPmale_ZdeLeva.txt", 100.0)]
    [InlineData("BSPfemale_ZdeLeva.txt", 99.99)]
    public void De_Leva_1996_masses_sum_to_the_whole_body(string file, double percent)
    {
        var rows = Rows(file, 2);
        var limbs = rows["Upper arm"] + rows["Forearm"] + rows["Hand"] + rows["Thigh"] + rows["Shank"] + rows["Foot"];
        (100 * (rows["Head"] + rows["Trunk"] + (2 * limbs))).ShouldBe(percent, 1e-6);
    }

    [Theory]
    [InlineData(Sex.Female)]
    [InlineData(Sex.Male)]
    public void The_shipped_Winter_table_is_the_printed_one(Sex sex)
    {
        var mass = Rows("BSP_DempsterWinter.txt", 2);
        var centre = Rows("BSP_DempsterWinter.txt", 3);
        var table = ModelFile.Masses("winter").For(sex);
        table.Total.ShouldBe(1, 1e-9);
        table.TrunkAndHead.Share.ShouldBe(mass["Trunk head neck"]);
        table.TrunkAndHead.Centre.ShouldBe(centre["Trunk head neck"]);
        (table.Arm.Share, table.Arm.Centre).ShouldBe((mass["Total arm"], centre["Total arm"]));
        (table.Thigh.Share, table.Thigh.Centre).ShouldBe((mass["Thigh"], centre["Thigh"]));
        (table.Shank.Share, table.Shank.Centre).ShouldBe((mass["Leg"], centre["Leg"]));
        (table.Foot.Share, table.Foot.Centre).ShouldBe((mass["Foot"], centre["Foot"]));
        table.Pelvis.Share.ShouldBe(mass["Pelvis"]);
        // Centre counted from L4-L5 in the source, from the hip in the model.
        table.Pelvis.Centre.ShouldBe(0.2 * (1 - centre["Pelvis"]), 1e-9);
    }

    [Theory]
    [InlineData(Sex.Female, "BSPfemale_ZdeLeva.txt", 0.9999)]
    [InlineData(Sex.Male, "BSPmale_ZdeLeva.txt", 1.0)]
    public void The_shipped_de_Leva_table_is_composed_of_the_printed_one(Sex sex, string file, double total)
    {
        var mass = Rows(file, 2);
        var centre = Rows(file, 3);
        var table = ModelFile.Masses("de-leva").For(sex);
        table.Total.ShouldBe(total, 1e-6);
        table.TrunkAndHead.Share.ShouldBe(mass["Trunk"] + mass["Head"], 1e-9);
        table.Arm.Share.ShouldBe(mass["Upper arm"] + mass["Forearm"] + mass["Hand"], 1e-9);
        table.Pelvis.Share.ShouldBe(mass["Lower trunk"]);
        (table.Thigh.Share, table.Thigh.Centre).ShouldBe((mass["Thigh"], centre["Thigh"]));
        (table.Shank.Share, table.Shank.Centre).ShouldBe((mass["Shank"], centre["Shank"]));
        table.Foot.Share.ShouldBe(mass["Foot"]);
        // Trunk from mid-shoulder (alternative row 3), head 0.0878 m plus its centre above mid-shoulder, over 0.5155 m (men's lengths).
        var head = (0.0878 + ((1 - centre["Head 2"]) * 0.2429)) / 0.5155;
        var trunk = ((mass["Trunk"] * (1 - centre["Trunk 3"])) + (mass["Head"] * (1 + head))) / table.TrunkAndHead.Share;
        table.TrunkAndHead.Centre.ShouldBe(trunk, 0.001);
        table.Pelvis.Centre.ShouldBe((1 - centre["Lower trunk"]) * 0.1457 / 0.5155, 0.001);
    }

    /// <summary>Segment name to the number in a column, counted from 0.</summary>
    private static Dictionary<string, double> Rows(string file, int column)
        => File.ReadLines(Path.Combine(ModelFile.RepositoryRoot, "tests", "data", "segment-parameters", file)).Skip(1)
            .Where(l => l.Length > 0).Select(l => l.Split('\t'))
            .ToDictionary(c => c[0].Trim(), c => double.Parse(c[column], CultureInfo.InvariantCulture));
}
