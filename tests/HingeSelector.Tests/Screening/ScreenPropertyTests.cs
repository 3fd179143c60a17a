using System.Globalization;
using System.Text;
using CsCheck;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

/// <summary>What must hold for every screen, held against drawn ones.</summary>
public sealed class ScreenPropertyTests
{
    private const string Seed = "0N0XIzNsQ0O2";
    private const int Draws = 300;

    private static readonly HashSet<int> _corrected = [.. Repository.Vocabulary.Words.Where(w => w.NotBelow is not null).SelectMany(w => Enumerable.Range(w.Slot, Math.Max(1, w.Readings.Count)))];

    private static readonly IReadOnlyList<Word> _sided = [.. Repository.Vocabulary.Words.Where(w => w.Sided && w.Kind == WordKind.Number)];
    private static readonly IReadOnlyList<Word> _weighed = [.. Repository.Vocabulary.Words.Where(w => w.IsMeasured && w.Dimension is Dimension.Length or Dimension.Mass && w.Range is not null)];

    /// <summary>One side of a word: a place in its range in thousandths, or one of the answers without a value.</summary>
    private static readonly Gen<string> _side = Gen.Frequency(
        (6, Gen.Int[0, 1000].Select(n => n.ToString(CultureInfo.InvariantCulture))),
        (2, Gen.Const("")),
        (1, Gen.Const("refused")),
        (1, Gen.Const("not applicable")));

    private static readonly Gen<(string Left, string Right)[]> _sides = Gen.Select(_side, _side).Array[_sided.Count];

    private static readonly Gen<string> _throwing = Gen.Int[0, 4].Select(i => new[] { "left", "right", "", "refused", "not applicable" }[i]);

    [Fact]
    public void The_unit_in_which_somebody_types_changes_nothing()
        => Gen.Int[0, 1000].Array[2 * _weighed.Count].Sample(
            places =>
            {
                var metric = Screens.Table(Weighed(places, "cm", "kg"));
                Screens.Table(Weighed(places, "in", "lb")).ShouldBe(metric);
                Screens.Table(Weighed(places, "m", "lb")).ShouldBe(metric);
                Screens.Table(Weighed(places, "mm", "kg")).ShouldBe(metric);
                Screens.Table(Weighed(places, "ft", "kg")).ShouldBe(metric);
            },
            seed: Seed, iter: Draws);

    [Fact]
    public void In_the_mirror_only_left_and_right_change()
        => Gen.Select(_sides, _throwing).Sample(
            (sides, throwing) =>
            {
                var table = Screens.Table(Sided(sides, throwing));
                var mirror = Screens.Table(Sided([.. sides.Select(s => (s.Right, s.Left))], throwing switch { "left" => "right", "right" => "left", _ => throwing }));
                foreach (var word in _sided)
                {
                    mirror.At(word.Id, "left").ShouldBe(table.At(word.Id, "right"));
                    mirror.At(word.Id, "right").ShouldBe(table.At(word.Id, "left"));
                    foreach (var reading in new[] { "worse", "better", "throwing", "other", "gap" })
                        mirror.At(word.Id, reading).ShouldBe(table.At(word.Id, reading), $"{word.Id}, {reading}");
                }
                foreach (var loss in new[] { "shoulder-flexion-loss", "internal-rotation-loss", "rotation-arc-loss" })
                    mirror.At(loss).ShouldBe(table.At(loss));
            },
            seed: Seed, iter: Draws);

    [Fact]
    public void Filling_a_gap_only_narrows_what_was_known()
        => Gen.Select(_sides, _throwing, Gen.Int[0, 1000], Gen.Int[0, 1].Select(i => Sides.Names[i])).Sample(
            (sides, throwing, place, side) =>
            {
                var filler = place.ToString(CultureInfo.InvariantCulture);
                var before = Screens.Table(Sided(sides, throwing));
                var after = Screens.Table(Sided([.. sides.Select(s => (s.Left.Length == 0 ? filler : s.Left, s.Right.Length == 0 ? filler : s.Right))], throwing.Length == 0 ? side : throwing));
                for (var slot = 0; slot < before.Length; slot++)
                {
                    // A pain at rest above the stated worst corrects the worst instead of narrowing it.
                    if (!before[slot].IsKnown || _corrected.Contains(slot))
                        continue;
                    after[slot].IsKnown.ShouldBeTrue();
                    after[slot].Low.ShouldBeGreaterThanOrEqualTo(before[slot].Low);
                    after[slot].High.ShouldBeLessThanOrEqualTo(before[slot].High);
                    after[slot].Bits.ShouldBe(before[slot].Bits);
                }
            },
            seed: Seed, iter: Draws);

    [Fact]
    public void Worse_and_better_are_the_two_sides_in_order()
        => _sides.Sample(
            sides =>
            {
                var table = Screens.Table(Sided(sides, "left"));
                foreach (var word in _sided.Where(w => table.At(w.Id, "left").IsExact && table.At(w.Id, "right").IsExact))
                {
                    var (left, right) = (table.At(word.Id, "left").Low, table.At(word.Id, "right").Low);
                    var lowIsWorse = word.Worse != WorseEnd.Higher;
                    table.At(word.Id, "worse").Low.ShouldBe(lowIsWorse ? Math.Min(left, right) : Math.Max(left, right));
                    table.At(word.Id, "better").Low.ShouldBe(lowIsWorse ? Math.Max(left, right) : Math.Min(left, right));
                    table.At(word.Id, "gap").Low.ShouldBe(Math.Abs(left - right), 1e-9);
                }
            },
            seed: Seed, iter: Draws);

    /// <summary>All lengths and masses, whole millimetres and tenths of a kilogram, in one pair of units.</summary>
    private static string Weighed(int[] places, string length, string mass)
    {
        var yaml = new StringBuilder($"date: {Screens.Day(0)}\nage: 20\n");
        for (var i = 0; i < _weighed.Count; i++)
        {
            var word = _weighed[i];
            var unit = Unit.Find(word.Dimension == Dimension.Length ? length : mass)!;
            var step = word.Dimension == Dimension.Length ? 0.001 : 0.1;
            yaml.Append(word.Sided
                ? $"{word.Id}: {{left: {Number(places[2 * i])}, right: {Number(places[(2 * i) + 1])}}}\n"
                : $"{word.Id}: {Number(places[2 * i])}\n");

            string Number(int place)
            {
                var (low, high) = word.Range!.Value;
                var value = Math.Round((low + ((high - low) * place / 1000)) / step) * step;
                return (value / unit.Factor).ToString("0.0###########", CultureInfo.InvariantCulture) + " " + unit.Symbol;
            }
        }
        return yaml.ToString();
    }

    private static string Sided((string Left, string Right)[] sides, string throwing)
    {
        var yaml = new StringBuilder($"date: {Screens.Day(0)}\nage: 20\nthrowing-side: {throwing}\nhours-since-hard-throwing: 72\n");
        yaml.Append("shoulder-flexion-baseline: 176\nshoulder-internal-rotation-baseline: 50\nshoulder-external-rotation-baseline: 115\n");
        for (var i = 0; i < _sided.Count; i++)
            yaml.Append(CultureInfo.InvariantCulture, $"{_sided[i].Id}: {{left: {Typed(_sided[i], sides[i].Left)}, right: {Typed(_sided[i], sides[i].Right)}}}\n");
        return yaml.ToString();
    }

    private static string Typed(Word word, string drawn)
    {
        if (!int.TryParse(drawn, NumberStyles.None, CultureInfo.InvariantCulture, out var place))
            return drawn;
        var (low, high) = word.Range!.Value;
        return ((low + ((high - low) * place / 1000)) / word.Unit!.Factor).ToString("0.0##", CultureInfo.InvariantCulture);
    }
}
