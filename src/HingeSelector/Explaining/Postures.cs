using System.Collections.Concurrent;
using HingeSelector.Candidates;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>
/// Every variant for one body: the tables at the standard set-up, and the chosen set-ups as they are asked for. Facts that the
/// posture model does not read leave all of it as it is.
/// </summary>
/// <remarks>Safe to share between threads.</remarks>
internal sealed class Postures
{
    /// <summary>The answers that the candidates' tables rest on.</summary>
    private static readonly string[] _words =
    [
        "sex", "age", "stature", "mass", "thigh-length", "shank-length", "trunk-length", "arm-length", "limb-difference", "throwing-side",
        "straight-leg-raise", "straight-leg-raise-pelvis-held", "hip-flexion", "hip-flexion-pelvis-held", "hip-abduction", "hip-external-rotation",
        "knee-to-wall", "disc-diameter", "sole-thickness", "held-height", "held-height-variant", "held-height-grip", "held-height-stance", "pulled-before",
    ];

    private readonly FactValue[] _facts;
    private readonly Vocabulary _vocabulary;
    private readonly StandingChoice? _standing;
    private readonly CandidateBuilder _builder;
    private readonly IReadOnlyList<Candidate> _standard;
    private readonly CandidateTable _table;
    private readonly ConcurrentDictionary<(int Variant, bool Lowest, double? AtLeast, double? GripAtMost, string Stance), (Candidate, FactValue[])> _chosen = [];

    public Postures(RuleBook book, FactValue[] facts, HeightLists heights, StandingChoice? standing)
    {
        (_facts, _vocabulary, _standing) = (facts, book.Vocabulary, standing);
        _builder = new CandidateBuilder(book, facts, heights);
        _standard = _builder.Standard();
        _table = new CandidateTable(book, _builder, _standard);
        Tables = [.. _standard.Select(c => _table.Start(c, facts, heights.Room, standing))];
    }

    /// <summary>Ids of the answers that the posture model and the candidates' tables read.</summary>
    public static IReadOnlyList<string> Words => _words;

    /// <summary>Tables of the candidates without their chosen set-ups, by place; not to be written to.</summary>
    public IReadOnlyList<FactValue[]> Tables { get; }

    /// <summary>Whether other facts of the same athlete leave every posture as it is.</summary>
    public bool Serve(FactValue[] facts)
    {
        foreach (var id in _words)
        {
            var word = _vocabulary[id];
            for (var i = 0; i < Math.Max(1, word.Readings.Count); i++)
            {
                if (facts[word.Slot + i] != _facts[word.Slot + i])
                    return false;
            }
        }
        return true;
    }

    /// <summary>A candidate at the set-up that the search finds inside the wishes, and its whole table; not to be written to.</summary>
    public (Candidate Candidate, FactValue[] Table) Choose(int variant, SetUpWishes wishes)
        => _chosen.GetOrAdd((variant, wishes.LowestThatFits, wishes.AtLeast, wishes.GripAtMost, wishes.Word("stance")), _ => Search(variant, wishes));

    private (Candidate, FactValue[]) Search(int variant, SetUpWishes wishes)
    {
        // The dead band and the block rule ask for the errors of the standing variant; of the others nobody asks.
        var chosen = DeadBand.Apply(_builder, _builder.WithChoice(_standard[variant], wishes, _standing?.Variant != variant), wishes, _standing).Candidate;
        var table = (FactValue[])Tables[variant].Clone();
        _table.AddChoice(table, chosen);
        return (chosen, table);
    }
}
