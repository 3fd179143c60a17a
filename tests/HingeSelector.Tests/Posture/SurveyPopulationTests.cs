using HingeSelector.Body;
using HingeSelector.Posture;
using HingeSelector.Tests.Body;
using static HingeSelector.Tests.Posture.Examples;

namespace HingeSelector.Tests.Posture;

/// <summary>Everybody in the shipped sample of the 2012 survey.</summary>
public sealed class SurveyPopulationTests(ITestOutputHelper output)
{
    [Fact]
    public void Survey_2012_all_4277_people_have_a_posture_or_a_stated_reason()
    {
        var counts = new Dictionary<string, int>();
        foreach (var person in SurveyPeople.All)
        {
            var body = BodyEstimator.Estimate(person, ModelFile.Survey, Parameters).ShouldBeOfType<KnownBody>();
            foreach (var (name, pull, height, grip) in Pulls)
            {
                var outcome = PostureSolver.Solve(body.Segments, pull, At(height, grip, pull, body.Segments), Parameters);
                var what = outcome is StartPosition p
                    ? double.IsFinite(p.HipDemand.Degrees + p.KneeFlexion.Degrees + p.Travel.Metres + p.Hip.X) ? "posture" : "not a number"
                    : outcome.ToString();
                counts[$"{name}: {what}"] = counts.GetValueOrDefault($"{name}: {what}") + 1;
            }
        }

        foreach (var (what, count) in counts.OrderBy(c => c.Key, StringComparer.Ordinal))
            output.WriteLine($"{count,5}  {what}");
        SurveyPeople.All.Count.ShouldBe(4277);
        counts.Values.Sum().ShouldBe(4277 * Pulls.Length);
        counts.Keys.ShouldNotContain(k => k.Contains("not a number", StringComparison.Ordinal));
        // From the floor hardly anybody falls out: the few have a trunk far longer than legs and arms go with.
        counts["conventional 22.5: posture"].ShouldBeGreaterThan(4270);
        counts["sumo 22.5: posture"].ShouldBeGreaterThan(4270);
        counts["hex 22.5: posture"].ShouldBeGreaterThan(4270);
    }

    [Fact]
    public void Survey_2012_everybody_can_be_estimated_from_stature_and_sex()
        => SurveyPeople.All.ShouldAllBe(p => FromStature(p) is KnownBody);

    /// <summary>The stated error of a body taken from stature is the scatter that measured people have about it.</summary>
    [Theory]
    [InlineData(Sex.Female)]
    [InlineData(Sex.Male)]
    public void Survey_2012_measured_people_scatter_about_their_estimate_by_the_stated_error(Sex sex)
    {
        var people = SurveyPeople.All.Where(p => p.Sex == sex).ToList();
        var misses = new List<double>();
        var stated = new List<double>();
        var ranges = Hips(300, 300, error: 0);
        foreach (var person in people)
        {
            var estimated = ((KnownBody)FromStature(person)).Segments;
            var measured = ((KnownBody)BodyEstimator.Estimate(person, ModelFile.Survey, Parameters)).Segments;
            var setUp = At(22.5, 55, Conventional, estimated);
            misses.Add((Solved(measured, Conventional, setUp).HipDemand - Solved(estimated, Conventional, setUp).HipDemand).Degrees);
            if (stated.Count < 20)
                stated.Add(new MarginFinder(estimated, ranges, Conventional, Parameters).Find(setUp)!.HipFlexion!.Value.MeasuringError.Degrees);
        }

        var mean = misses.Average();
        var deviation = Math.Sqrt(misses.Average(m => (m - mean) * (m - mean)));
        output.WriteLine($"{sex}: miss {mean:0.00} +/- {deviation:0.00} deg, stated {stated.Average():0.00} deg");
        mean.ShouldBe(0, 0.5);
        deviation.ShouldBe(stated.Average(), 0.15 * deviation);
    }

    private static readonly (string Name, PullGeometry Pull, double Height, double Grip)[] Pulls =
    [
        ("conventional 22.5", Conventional, 22.5, 55),
        ("conventional 11.5", Conventional, 11.5, 55),
        ("wide grip 22.5", Conventional, 22.5, 105),
        ("sumo 22.5", Sumo, 22.5, 47),
        ("hex 22.5", Hex, 22.5, 60),
        ("Romanian 35", Romanian, 35, 55),
        ("rack 70", Conventional, 70, 55),
    ];

    private static BodyEstimate FromStature(BodyMeasures person)
        => BodyEstimator.Estimate(
            person with { Thigh = null, Shank = null, TrunkToAcromion = null, ArmToGrip = null }, ModelFile.Survey, Parameters);
}
