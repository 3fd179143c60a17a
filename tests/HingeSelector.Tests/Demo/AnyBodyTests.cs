using System.Globalization;
using CsCheck;
using HingeSelector.Recommending;

namespace HingeSelector.Tests.Demo;

/// <summary>Every body that the reader accepts gets an answer, however unlikely it is.</summary>
public sealed class AnyBodyTests
{
    private static readonly Gen<string[]> _bodies = Gen.Select(Lengths("thigh-length", 25, 60), Lengths("shank-length", 25, 60), Lengths("trunk-length", 35, 75), Lengths("arm-length", 45, 95), Lengths("disc-diameter", 15, 50))
        .Select((thigh, shank, trunk, arm, discs) => new[] { thigh, shank, trunk, arm, discs });

    [Theory]
    [InlineData("content/demo/room.yaml")]
    [InlineData("content/demo/room-without-blocks.yaml")]
    public void Any_lengths_within_the_ranges_get_an_answer(string room)
        => _bodies.Sample(lines => OneAthlete.AskIn(room, null, lines).Outcome.ShouldBe(Outcome.Ranked), iter: 60, threads: 1);

    [Fact]
    public void A_shank_longer_than_the_highest_start_still_has_a_turning_point()
        => OneAthlete.AskIn("content/demo/room-without-blocks.yaml", null, "thigh-length: 25 cm", "shank-length: 60 cm", "trunk-length: 40 cm", "arm-length: 45 cm")
            .Outcome.ShouldBe(Outcome.Ranked);

    private static Gen<string> Lengths(string word, int from, int to)
        => Gen.Int[from * 2, to * 2].Select(half => string.Create(CultureInfo.InvariantCulture, $"{word}: {half / 2.0} cm"));
}
