using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using NRules;

namespace HingeSelector.Rules.Firing;

/// <summary>The rules as a network that makes the decision of record; immutable and safe to share between threads.</summary>
public sealed class Network : IRuleEngine
{
    private readonly ISessionFactory _factory;

    /// <summary>Builds the network of a rule book.</summary>
    /// <exception cref="NetworkException">A rule cannot be laid out.</exception>
    public Network(RuleBook book)
        : this(book, Definitions.Of(book))
    {
    }

    /// <summary>Builds the network from definitions in any order.</summary>
    internal Network(RuleBook book, IReadOnlyList<Definition> definitions)
    {
        Book = book;
        Refutable = definitions.SelectMany(d => d.Sets).Select(new MarkCodes(book.Findings.Count).FindingOf)
            .OfType<FindingRead>().Where(m => !m.Present).Select(m => m.Finding).ToHashSet();
        DefinitionCount = definitions.Count;
        // Each definition can fire once per subject; anything beyond is a loop.
        MostFirings = definitions.Count * (book.Variants.Count + 1);
        _factory = NetworkBuilder.Build(book.Findings.Count, definitions);
    }

    /// <summary>The rules it was built from.</summary>
    public RuleBook Book { get; }

    /// <summary>Findings that some rule reads as absent, so that their absence is proven or left open.</summary>
    public IReadOnlySet<int> Refutable { get; }

    /// <summary>How many rules the engine holds: branches and refutations counted apart.</summary>
    public int DefinitionCount { get; }

    /// <summary>How many firings one stage can need at most.</summary>
    public int MostFirings { get; internal init; }

    IRuleSession IRuleEngine.Start(CaseFacts facts) => Start(facts);

    /// <summary>Begins a decision.</summary>
    /// <param name="facts">Fact tables; those of the candidates may be filled further between the two stages.</param>
    /// <exception cref="ArgumentException">The tables were made for another vocabulary.</exception>
    public NetworkSession Start(CaseFacts facts)
    {
        if (facts.Athlete.Length != Book.Vocabulary.AthleteSlots || facts.Candidates.Length != Book.Variants.Count || facts.Candidates.Any(c => c.Length != Book.Vocabulary.CandidateSlots))
            throw new ArgumentException("The fact tables do not fit the vocabulary of the rule book.", nameof(facts));
        return new NetworkSession(this, _factory, facts);
    }
}
