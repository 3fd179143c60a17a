using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Reading;
using HingeSelector.Words;

namespace HingeSelector.Knowledge;

/// <summary>Reads a file of rules/variants/.</summary>
public sealed class VariantReader(Vocabulary vocabulary, IReadOnlyList<string> variantIds, IReadOnlyDictionary<string, Source> sources, DiagnosticBag bag)
{
    private static readonly string[] _kit = ["straight-bar", "hex-bar", "blocks-or-rack", "weights-by-hand", "cable-or-band", "bench", "stick"];

    /// <summary>Reads one variant.</summary>
    /// <param name="root">The file's tree.</param>
    /// <param name="index">Place in the catalogue; the file is named like the variant.</param>
    public Variant? Read(YamlNode? root, int index)
    {
        var map = MapReader.Open(root, "a variant", bag);
        if (map is null)
            return null;
        var id = map.Required("variant");
        var label = map.Required("label");
        var summary = map.Required("summary");
        if (id is not null && id.Value != variantIds[index])
            bag.Add(Problems.UnknownValue(id.Span, id.Value, "variant", [variantIds[index]]));
        var variant = new Variant
        {
            Id = variantIds[index],
            Index = index,
            Label = label?.Value ?? "",
            Summary = summary?.Value ?? "",
            Kit = ReadKit(map),
            Posture = VariantPostureReader.Read(map.Node("posture"), sources, bag),
            Words = ReadWords(map),
            Claims = [.. map.List("claims").Select(ReadClaim).OfType<Claim>()],
            StrengthRelation = ReadRelation(map),
            NeverFirst = map.Scalar("never-first")?.Value,
            Cautions = [.. map.Scalars("cautions").Select(c => c.Value)],
            Span = id?.Span ?? map.Span,
        };
        map.Finish();
        return id is null || label is null || summary is null ? null : variant;
    }

    private List<string> ReadKit(MapReader map)
    {
        var kit = map.Scalars("kit");
        foreach (var item in kit.Where(k => !_kit.Contains(k.Value, StringComparer.Ordinal)))
            bag.Add(Problems.UnknownValue(item.Span, item.Value, "kit", _kit));
        return [.. kit.Select(k => k.Value)];
    }

    private List<VariantWord> ReadWords(MapReader map)
    {
        var values = new List<VariantWord>();
        var words = MapReader.Open(map.Node("words"), "the words of a variant", bag);
        if (words is null)
        {
            bag.Add(Problems.MissingKey(map.Span, "words", "a variant"));
            return values;
        }
        foreach (var word in vocabulary.Words.Where(w => w.About == WordAbout.Variant))
            values.Add(new VariantWord(word.Slot, ReadWord(words, word)));
        words.Finish();
        return values;
    }

    private FactValue ReadWord(MapReader words, Word word)
    {
        var texts = words.Scalars(word.Id);
        if (texts.Count == 0 && words.Node(word.Id) is null)
            bag.Add(Problems.MissingKey(words.Span, word.Id, "the words of a variant"));
        if (texts.Count > 1 && !word.Many)
            bag.Add(Problems.WrongShape(texts[1].Span, $"'{word.Id}'", "one value", "several"));
        var bits = 0UL;
        foreach (var text in texts)
        {
            var place = word.Values.ToList().IndexOf(text.Value);
            if (place < 0)
                bag.Add(Trap.IsOne(text.Value) && !text.Quoted ? Problems.YamlTrap(text.Span, text.Value, string.Join(" or ", word.Values)) : Problems.UnknownValue(text.Span, text.Value, word.Id, word.Values));
            else
                bits |= 1UL << place;
        }
        return FactValue.Of(bits);
    }

    private Claim? ReadClaim(YamlNode node)
    {
        var map = MapReader.Open(node, "a claim", bag);
        if (map is null)
            return null;
        YamlScalar? text = null;
        var kind = "";
        foreach (var name in new[] { "trains", "spares", "asks" })
        {
            if (map.Scalar(name) is { } found)
                (kind, text) = (name, found);
        }
        if (text is null)
            bag.Add(Problems.MissingKey(map.Span, "trains', 'spares' or 'asks", "a claim"));
        var grade = Parse.Grade(map.Required("grade"), bag);
        var disputed = Parse.YesNo(map.Scalar("disputed"), "disputed", bag);
        var against = map.Scalar("against");
        if (disputed && against is null)
            bag.Add(Problems.MissingKey(map.Span, "against", "a disputed claim"));
        var ids = Parse.Sources(map, sources, bag);
        if (grade is not (null or Grade.Practice or Grade.Mechanics) && ids.Count == 0)
            bag.Add(Problems.GradeWithoutSource(map.Span, Parse.Name(grade.Value)));
        map.Finish();
        return text is null || grade is null ? null : new Claim(kind, text.Value, grade.Value, disputed, against?.Value, ids);
    }

    private StrengthRelation? ReadRelation(MapReader map)
    {
        if (map.Node("strength-relation") is YamlScalar { Value: "none published" } or null)
            return null;
        var relation = MapReader.Open(map.Node("strength-relation"), "a strength relation", bag);
        if (relation is null)
            return null;
        var to = relation.Required("to");
        var ratio = relation.Required("ratio");
        var ids = Parse.Sources(relation, sources, bag);
        relation.Finish();
        if (to is not null && !variantIds.Contains(to.Value))
            bag.Add(Problems.UnknownValue(to.Span, to.Value, "to", [.. variantIds]));
        if (ids.Count == 0)
            bag.Add(Problems.GradeWithoutSource(relation.Span, "published ratio"));
        var ends = ratio?.Value.Split(" to ") ?? [];
        if (to is null || ratio is null)
            return null;
        if (ends.Length == 2 && QuantityText.TryRead(ends[0], Dimension.None, null, out var low, out _) && QuantityText.TryRead(ends[1], Dimension.None, null, out var high, out _) && low <= high)
            return new StrengthRelation(to.Value, low, high, ids);
        bag.Add(Problems.BadQuantity(ratio.Span, "ratio", $"'{ratio.Value}' is not a range of bare numbers such as '1.00 to 1.08'"));
        return null;
    }
}
