namespace HingeSelector.Comparing;

/// <summary>An element of the rules that differs between two versions: a rule, a parameter of the model, a weight, a fact.</summary>
/// <param name="Name">What it is and what it is called.</param>
/// <param name="Rule">Id of the rule; null for anything else.</param>
/// <param name="IsWording">Whether only words for people, sources or examples differ, which no answer depends on.</param>
/// <param name="Lines">What differs, line by line.</param>
public sealed record Edit(string Name, string? Rule, bool IsWording, IReadOnlyList<EditedLine> Lines)
{
    /// <summary>The element in the first version; null when it is new.</summary>
    internal Element? Before { get; init; }

    /// <summary>The element in the second version; null when it is gone.</summary>
    internal Element? After { get; init; }

    /// <summary>The file that it stands in, inside the rules folder.</summary>
    internal string Path => (After ?? Before)!.Path;
}
