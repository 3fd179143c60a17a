using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples;

/// <summary>Holds what an author names under <c>because</c> against the conditions that decide.</summary>
internal sealed class NamedReasons(RuleBook book, DiagnosticBag bag)
{
    private readonly GivenReader _reader = new(book, DateOnly.MinValue, bag);

    /// <summary>The true reason where the named one is not the whole of it, else null.</summary>
    public string? Wrong(ExampleCase one)
    {
        if (one.Example.Because.Count == 0)
            return null;
        var deciding = LineState.DecidingConditions(one).ToList();
        var named = one.Example.Because.ToDictionary(b => b, Matches);
        if (named.Values.Any(m => m is null))
            return null;
        var all = deciding.TrueForAll(c => named.Values.Any(m => m!(c)));
        var each = named.Values.All(m => deciding.Exists(c => m!(c)));
        return all && each ? null : string.Join(" and ", deciding.Select(c => $"'{c.Text}'"));
    }

    // A word alone stands for any reading of it.
    private Func<Condition, bool>? Matches(Reading.YamlScalar name)
    {
        if (book.Findings.FirstOrDefault(f => f.Id == name.Value) is { } finding)
            return c => c.Findings.Any(f => f.Finding == finding.Index);
        if (book.Vocabulary.Find(name.Value) is { } word)
            return c => c.Reads.Any(r => r.Word == word);
        return _reader.Reading(name) is { } reading ? c => c.Reads.Any(r => r == reading) : null;
    }
}
