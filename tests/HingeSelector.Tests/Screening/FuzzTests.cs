using System.Text;
using HingeSelector.Diagnostics;
using HingeSelector.Screening;

namespace HingeSelector.Tests.Screening;

/// <summary>Whatever stands in a file, the answer is a diagnostic and never a crash.</summary>
public sealed class FuzzTests
{
    private const int Mutations = 1500;
    private const int RandomTexts = 1000;

    /// <summary>Pieces that have a meaning in YAML, in CSV or in our own texts.</summary>
    private static readonly string[] _pieces =
        ["\"", "'", "{", "}", "[", "]", ":", ": ", "- ", ",", ";", "|", "#", "&a", "*a", "!t", "%", "@", "\t", "\n", "\r", "\n\n", "---", "...", "<<", "? ", "~", "\0", "\u00A0", "\uFEFF", "\uD800", "é", "∞", "1e999", "-", "0x1F", "99999999999999999999", "NaN", "9999-12-31", "0001-01-01", ", asked by ", " on ", "not applicable", "refused", "none"];

    private static readonly string _screen = """
        id: p01
        athlete: {name: K. Amadi, age: 24, stature: 5'11", mass: 92 kg, history: [hernia, eye-operation], throwing-side: right}
        clearances:
          - {who: H. Brandt, profession: surgeon, date: 2026-10-28, valid-until: 2027-01-31, for: [hernia], covers: [load-in-hand], cap: 20 kg, letter-seen-by: R. Idris}
        screen:
          date: 2026-11-20
          measured-by: R. Idris
          straight-leg-raise: {left: 86, right: {value: 84, on: 2026-11-19}}
          held-height: 34 cm
        day:
          date: 2026-11-24
          stop-questions: all no, asked by R. Idris on 2026-11-24
          pain: none, asked by R. Idris on 2026-11-24
          elbow-pain-worst: {left: 0, right: 3}
        """;

    [Fact]
    public void A_damaged_screen_never_crashes()
        => Damage(_screen, ReadScreen);

    [Fact]
    public void A_damaged_roster_never_crashes()
    {
        var lines = Repository.Source("content/demo/club.csv").Text.Split('\n');
        Damage(string.Join('\n', lines.Take(3)), ReadRoster);
    }

    [Fact]
    public void A_damaged_room_never_crashes()
        => Damage(Repository.Source("content/demo/room.yaml").Text, ReadRoom);

    [Fact]
    public void A_damaged_standing_file_never_crashes()
        => Damage(Repository.Source("content/demo/standing.yaml").Text, ReadStanding);

    [Fact]
    public void Random_bytes_never_crash()
    {
        var random = new Random(20261124);
        for (var i = 0; i < RandomTexts; i++)
        {
            var bytes = new byte[random.Next(0, 200)];
            random.NextBytes(bytes);
            var text = i % 2 == 0 ? Encoding.UTF8.GetString(bytes) : Encoding.Latin1.GetString(bytes);
            Try(text, ReadScreen);
            Try(text, ReadRoster);
            Try(text, ReadRoom);
            Try(text, ReadStanding);
        }
    }

    private static void Damage(string good, Action<SourceText, DiagnosticBag> read)
    {
        var random = new Random(20261124);
        for (var i = 0; i < Mutations; i++)
        {
            var text = new StringBuilder(good);
            for (var n = random.Next(1, 6); n > 0; n--)
                Mutate(text, random);
            Try(text.ToString(), read);
        }
    }

    private static void Mutate(StringBuilder text, Random random)
    {
        var at = random.Next(text.Length);
        var length = Math.Min(random.Next(1, 30), text.Length - at);
        switch (random.Next(6))
        {
            case 0:
                text.Remove(at, length);
                break;
            case 1:
                text.Insert(at, text.ToString(at, length));
                break;
            case 2:
                text[at] = (char)random.Next(1, 0x2FF);
                break;
            case 3:
                text.Length = at + 1;
                break;
            default:
                text.Insert(at, _pieces[random.Next(_pieces.Length)]);
                break;
        }
    }

    private static void Try(string text, Action<SourceText, DiagnosticBag> read)
    {
        var bag = new DiagnosticBag();
        try
        {
            read(new SourceText("file", text), bag);
            DiagnosticPrinter.Print(bag.Sorted);
        }
        catch (Exception e) when (e is not Shouldly.ShouldAssertException)
        {
            Assert.Fail($"{e}\n--- the text:\n{text}");
        }
    }

    private static void ReadScreen(SourceText source, DiagnosticBag bag)
    {
        var record = ScreenReader.Read(source, Repository.Vocabulary, Repository.DemoDay, bag);
        (record is null).ShouldBe(bag.HasErrors);
        Tabulate(record);
    }

    private static void ReadRoster(SourceText source, DiagnosticBag bag)
    {
        var result = RosterReader.Read(source, Repository.Vocabulary, Repository.DemoDay, bag);
        (result.BadRows.Count > 0 || !result.HeaderRead).ShouldBe(bag.HasErrors);
        foreach (var record in result.Good)
            Tabulate(record);
    }

    private static void ReadRoom(SourceText source, DiagnosticBag bag)
        => (RoomReader.Read(source, bag) is null).ShouldBe(bag.HasErrors);

    private static void ReadStanding(SourceText source, DiagnosticBag bag)
        => (StandingReader.Read(source, Repository.VariantIds, Repository.DemoDay, bag) is null).ShouldBe(bag.HasErrors);

    private static void Tabulate(AthleteRecord? record)
    {
        if (record is not null)
            FactTable.Build(record, Repository.Vocabulary, Repository.DemoDay, null).Length.ShouldBe(Repository.Vocabulary.AthleteSlots);
    }
}
