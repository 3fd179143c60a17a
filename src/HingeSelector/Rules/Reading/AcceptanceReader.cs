using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads which warnings the authors let stand: <c>accepts</c> of a rule, and the file <c>accepted.yaml</c>.</summary>
internal static class AcceptanceReader
{
    /// <summary>Reads the map of codes and reasons of one rule.</summary>
    public static IReadOnlyList<Acceptance> OfRule(YamlNode? node, string rule, DiagnosticBag bag)
    {
        var accepted = new List<Acceptance>();
        foreach (var (code, reason) in MapReader.Open(node, "'accepts'", bag)?.Entries ?? [])
        {
            if (reason is YamlScalar { Value.Length: > 0 } because)
                accepted.Add(new Acceptance(code.Value, [rule], because.Value, code.Span));
            else
                bag.Add(Problems.WrongShape(reason.Span, $"The reason for '{code.Value}'", "a sentence", reason.KindName));
        }
        return accepted;
    }

    /// <summary>Reads the file.</summary>
    public static IReadOnlyList<Acceptance> OfFile(YamlNode? root, DiagnosticBag bag)
    {
        var map = MapReader.Open(root, "the file of accepted warnings", bag);
        var accepted = (map?.List("accepted") ?? []).Select(n => OfItem(n, bag)).OfType<Acceptance>().ToList();
        map?.Finish();
        return accepted;
    }

    private static Acceptance? OfItem(YamlNode node, DiagnosticBag bag)
    {
        var map = MapReader.Open(node, "an accepted warning", bag);
        var code = map?.Required("code");
        var of = map?.Scalars("of") ?? [];
        var because = map?.Required("because");
        map?.Finish();
        return code is null || because is null ? null : new Acceptance(code.Value, [.. of.Select(o => o.Value)], because.Value, code.Span);
    }
}
