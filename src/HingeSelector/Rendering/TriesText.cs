using HingeSelector.Examples;
using HingeSelector.Reading;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>The outcome of examples as plain rows.</summary>
/// <param name="book">The rules.</param>
public sealed class TriesText(RuleBook book)
{
    /// <summary>The examples that come out otherwise than expected, and how many there are.</summary>
    public IEnumerable<string> Rows(IReadOnlyList<ExampleResult> results)
    {
        foreach (var result in results.Where(r => r is { Case: not null, Agrees: false }))
        {
            foreach (var row in Failing(result, result.Case!))
                yield return row;
            yield return "";
        }
        var wrong = results.Count(r => !r.Agrees);
        yield return $"{results.Count} examples of {results.Select(r => r.Rule.Index).Distinct().Count()} rules: {(wrong == 0 ? "all come out as expected" : $"{wrong} come out otherwise than expected")}.";
    }

    private IEnumerable<string> Failing(ExampleResult result, ExampleCase one)
    {
        var example = result.Example;
        yield return $"{example.At.Span}: {result.Rule.Id}{For(example)}";
        yield return $"  given     {Given(example)}";
        yield return $"  expected  {ExampleText.Say(example.Expect)}{Because(example)}";
        yield return $"  actual    {ExampleText.Say(one.Found)}{(result.WrongReason is { } reason ? $" because of {reason}" : "")}";
        foreach (var line in LineState.All(one))
            yield return $"    {ExampleText.SayOfCondition(line.Truth),-8} {line.Condition.Text}   [{string.Join("; ", line.Values.Take(4))}{(line.Values.Count > 4 ? $"; {line.Values.Count - 4} more" : "")}]";
    }

    /// <summary>The variant it is asked for.</summary>
    public string For(RuleExample example) => example.Variant is { } variant ? $" for {book.Variants[variant].Id}" : "";

    /// <summary>The given facts as the author wrote them, the change after them.</summary>
    public static string Given(RuleExample example)
        => Write(example.Given) + (example.Changes is { Entries.Count: > 0 } changes ? $"; changed: {Write(changes)}" : "");

    private static string Because(RuleExample example) => example.Because.Count == 0 ? "" : $" because of {string.Join(", ", example.Because.Select(b => b.Value))}";

    private static string Write(YamlMap map) => string.Join(", ", map.Entries.Select(e => $"{e.Key.Value}: {Write(e.Value)}"));

    private static string Write(YamlNode node) => node switch
    {
        YamlScalar scalar => scalar.Value,
        YamlList list => $"[{string.Join(", ", list.Items.Select(Write))}]",
        YamlMap map => $"{{{Write(map)}}}",
        _ => "",
    };
}
