using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using HingeSelector.Rules;
using HingeSelector.Screening;

namespace HingeSelector.Recommending;

/// <summary>Makes the stamp of an answer.</summary>
public static class Stamps
{
    private const int HashLength = 16;

    /// <summary>Version of the tool.</summary>
    public static string Tool { get; } = typeof(Stamps).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    /// <summary>The stamp.</summary>
    public static Stamp Of(RuleBook book, Question question) => new(Tool, book.Hash, question.Philosophy.Id, question.On, InputHash(question));

    private static string InputHash(Question question)
    {
        var text = new StringBuilder();
        var keys = new List<AnswerKey>(question.Athlete.Answers.Keys);
        keys.Sort((a, b) => a.Word != b.Word ? string.CompareOrdinal(a.Word, b.Word) : a.Side.CompareTo(b.Side));
        foreach (var key in keys)
        {
            var answer = question.Athlete.Answers[key];
            text.Append(CultureInfo.InvariantCulture, $"{key.Word}|{key.Side}|{(int)answer.Value.State}|{answer.Value.Low:R}|{answer.Value.High:R}|{answer.Value.Bits}|{answer.On:O}|{answer.Until:O}\n");
        }
        foreach (var c in question.Athlete.Clearances)
            text.Append(CultureInfo.InvariantCulture, $"{c.Profession}|{c.Who}|{c.Date:O}|{c.ValidUntil:O}|{string.Join('+', c.For)}|{string.Join('+', c.Covers)}|{c.Cap:R}|{c.SeenBy}\n");
        foreach (var (variant, answers) in question.Athlete.HeldHeights)
        {
            foreach (var (word, answer) in answers.OrderBy(a => a.Key, StringComparer.Ordinal))
                text.Append(CultureInfo.InvariantCulture, $"{variant}|{word}|{(int)answer.Value.State}|{answer.Value.Low:R}|{answer.On:O}\n");
        }
        text.Append(question.Room is null ? "no room" : RoomText(question.Room));
        if (question.Standing is { } s)
            text.Append(CultureInfo.InvariantCulture, $"|{s.Variant}|{s.StartHeight:R}|{s.GripWidth:R}|{s.Since:O}|{s.BlockEnds:O}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..HashLength];
    }

    private static string RoomText(Screening.Room room) => string.Join('|',
        room.Name, room.BarsMayBeDropped, string.Join(',', room.StraightBars), string.Join(',', room.HexBars), string.Join(',', room.Discs), string.Join(',', room.Blocks),
        string.Join(',', room.Racks), room.Straps, string.Join(',', room.WeightsByHand), string.Join(',', room.Boxes), room.CablesOrBands, room.Benches, room.Sticks);
}
