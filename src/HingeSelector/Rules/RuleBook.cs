using HingeSelector.Knowledge;
using HingeSelector.Words;

namespace HingeSelector.Rules;

/// <summary>Everything that staff wrote, read, checked and compiled; immutable and safe to share between threads.</summary>
public sealed record RuleBook
{
    /// <summary>Every word.</summary>
    public required Vocabulary Vocabulary { get; init; }

    /// <summary>The catalogue of variants in its order.</summary>
    public required IReadOnlyList<Variant> Variants { get; init; }

    /// <summary>The criteria in their order.</summary>
    public required IReadOnlyList<Criterion> Criteria { get; init; }

    /// <summary>The bibliography.</summary>
    public required IReadOnlyDictionary<string, Source> Sources { get; init; }

    /// <summary>The philosophies by id.</summary>
    public required IReadOnlyDictionary<string, Philosophy> Philosophies { get; init; }

    /// <summary>The findings by index.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The rules by index, in order of id.</summary>
    public required IReadOnlyList<Rule> Rules { get; init; }

    /// <summary>Findings in an order in which each comes after all that its rules read.</summary>
    public required IReadOnlyList<int> FindingOrder { get; init; }

    /// <summary>Indexes of the rules that conclude each finding.</summary>
    public required IReadOnlyList<IReadOnlyList<int>> RulesOfFinding { get; init; }

    /// <summary>The numbers of the posture and statics model.</summary>
    public required Model Model { get; init; }

    /// <summary>What is taken when neither day nor room says it.</summary>
    public required Assumptions Assumptions { get; init; }

    /// <summary>Warnings that the file <c>accepted.yaml</c> lets stand.</summary>
    public IReadOnlyList<Acceptance> Accepted { get; init; } = [];

    /// <summary>Which kinds of source can carry a grade; a grade that is not listed needs none.</summary>
    public required IReadOnlyDictionary<Grade, IReadOnlyList<string>> Carriers { get; init; }

    /// <summary>Hash over all texts of the folder.</summary>
    public required string Hash { get; init; }
}
