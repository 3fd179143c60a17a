using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Rules.Checking;

/// <summary>HS3501: places of a new rule that its author has still to fill. They are told instead of the faults that they would cause.</summary>
public static class UnfilledPlaces
{
    /// <summary>What such a place begins with.</summary>
    public const string Mark = "FILL IN ";

    /// <summary>Whether a file may hold such places; asked once a file, so that the others cost nothing.</summary>
    public static bool MayStandIn(SourceText? source) => source?.Text.Contains(Mark, StringComparison.Ordinal) == true;

    /// <summary>Reports every such place below a node.</summary>
    /// <returns>Whether there was one.</returns>
    public static bool Report(YamlNode node, DiagnosticBag bag)
    {
        var before = bag.ErrorCount;
        Walk(node, bag);
        return bag.ErrorCount > before;
    }

    private static void Walk(YamlNode node, DiagnosticBag bag)
    {
        if (node is YamlScalar scalar && scalar.Value.StartsWith(Mark, StringComparison.Ordinal))
            bag.Add(Problems.StillToFill(scalar.Span, scalar.Value[Mark.Length..]));
        foreach (var (key, value) in (node as YamlMap)?.Entries ?? [])
        {
            Walk(key, bag);
            Walk(value, bag);
        }
        foreach (var item in (node as YamlList)?.Items ?? [])
            Walk(item, bag);
    }
}
