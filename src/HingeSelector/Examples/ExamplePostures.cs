using HingeSelector.Candidates;
using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Words;

namespace HingeSelector.Examples;

/// <summary>The posture of one variant alone, with the set-up that the rules ask for it.</summary>
internal sealed class ExamplePostures(RuleBook book)
{
    // Moments at the low back are told against this pull.
    private readonly Variant? _conventional = book.Variants.FirstOrDefault(v => v.Id == "conventional");
    private readonly Rule[] _requests = [.. book.Rules.Where(r => r.Conclusions.Any(c => c is RequestConclusion))];

    /// <summary>The fact table of the variant, standard and as set up.</summary>
    public FactValue[] Table(Variant variant, FactValue[] facts, Truth[] findings)
    {
        var builder = new CandidateBuilder(book, facts, room: null);
        var standard = builder.Standard(variant);
        var table = new CandidateTable(book, builder, _conventional is null ? [] : [variant.Index == _conventional.Index ? standard : builder.Standard(_conventional)]);
        var row = table.Start(standard, facts, null, null);
        var asked = new Evaluation(findings);
        foreach (var rule in _requests)
        {
            if ((rule.Variants & (1UL << variant.Index)) != 0 || !rule.PerCandidate)
                asked.Note(rule, rule.PerCandidate ? variant.Index : Firing.OfAthlete, LoopEvaluator.Holds(rule, new FactView(facts, row, findings)));
        }
        var wishes = WishList.Collect(book, asked)[variant.Index];
        var chosen = RaisedBars.SetDown(DeadBand.Apply(builder, builder.WithChoice(standard, wishes), wishes, null));
        table.AddChoice(row, chosen.Candidate);
        return row;
    }
}
