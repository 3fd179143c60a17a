using HingeSelector.Tests.Demo;

namespace HingeSelector.Tests.Explaining;

public sealed class TallAthleteTests
{
    // Found while drawing segments: a knee above the highest start that is looked for left a hinge from the top without any height.
    [Fact]
    public void An_athlete_whose_knee_lies_above_the_highest_start_still_gets_an_answer()
        => OneAthlete.Ask("stature: 214 cm", "thigh-length: 52 cm", "shank-length: 56 cm", "trunk-length: 66 cm", "arm-length: 84 cm").Ranked.ShouldNotBeEmpty();

    [Fact]
    public void An_athlete_whose_knee_lies_below_the_bar_on_the_floor_still_gets_an_answer()
        => OneAthlete.Ask("stature: 122 cm", "thigh-length: 27 cm", "shank-length: 25 cm", "trunk-length: 38 cm", "arm-length: 46 cm", "disc-diameter: 50 cm").Ranked.ShouldNotBeEmpty();
}
