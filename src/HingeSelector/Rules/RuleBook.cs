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

    /// <summary>The philosophies that change rules, by id.</summary>
    public IReadOnlyDictionary<string, Overlay> Overlays { get; init; } = new Dictionary<string, Overlay>(StringComparer.Ordinal);

    /// <summary>The philosophy whose changes are in <see cref="Rules"/>; null where they are those of the base.</summary>
    public Overlay? InForce { get; init; }

    /// <summary>The book with the changes of a philosophy in its rules; the same book where it changes no rule.</summary>
    /// <exception cref="InvalidOperationException">The changes of a philosophy are in force already.</exception>
    public RuleBook Under(Philosophy philosophy)
    {
        if (InForce?.Philosophy.Id == (philosophy.ChangesRules ? philosophy.Id : null))
            return this;
        if (InForce is not null)
            throw new InvalidOperationException($"The rules of '{InForce.Philosophy.Id}' are in force; lay '{philosophy.Id}' over the base.");
        var overlay = Overlays[philosophy.Id];
        return this with { Rules = overlay.Rules, FindingOrder = overlay.FindingOrder, RulesOfFinding = overlay.RulesOfFinding, InForce = overlay };
    }
}
