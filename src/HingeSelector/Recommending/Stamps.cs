using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using HingeSelector.Rules;

namespace HingeSelector.Recommending;

/// <summary>Makes the stamp of an answer.</summary>
public static class Stamps
{
    private const int HashLength = 16;

    /// <summary>Version of the tool.</summary>
    public static string Tool { get; } = typeof(Stamps).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    /// <summary>The stamp.</summary>
    public static Stamp Of(RuleBook book, Question question) => new(Tool, book.Hash, question.Philosophy.Id, question.On, InputHash(question), question.Decision);

    private static string InputHash(Question question)
    {
        var text = new StringBuilder();
        foreach (var (key, answer) in question.Athlete.Answers.OrderBy(a => a.Key.Word, StringComparer.Ordinal).ThenBy(a => a.Key.Side))
            text.Append(CultureInfo.InvariantCulture, $"{key.Word}|{key.Side}|{(int)answer.Value.State}|{answer.Value.Low:R}|{answer.Value.High:R}|{answer.Value.Bits}|{answer.On:yyyy-MM-dd}|{answer.Until:yyyy-MM-dd}\n");
        foreach (var c in question.Athlete.Clearances)
            text.Append(CultureInfo.InvariantCulture, $"{c.Profession}|{c.Who}|{c.Date:yyyy-MM-dd}|{c.ValidUntil:yyyy-MM-dd}|{string.Join('+', c.Covers)}|{c.Cap:R}|{c.SeenBy}\n");
        text.Append(question.Room is null ? "no room" : RoomText(question.Room));
        if (question.Standing is { } s)
            text.Append(CultureInfo.InvariantCulture, $"|{s.Variant}|{s.StartHeight:R}|{s.GripWidth:R}|{s.Since:yyyy-MM-dd}|{s.BlockEnds:yyyy-MM-dd}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..HashLength];
    }

    private static string RoomText(Screening.Room room) => string.Join('|',
        room.Name, room.BarsMayBeDropped, string.Join(',', room.StraightBars), string.Join(',', room.HexBars), string.Join(',', room.Discs), string.Join(',', room.Blocks),
        string.Join(',', room.Racks), room.Straps, string.Join(',', room.WeightsByHand), string.Join(',', room.Boxes), room.CablesOrBands, room.Benches, room.Sticks);
}
