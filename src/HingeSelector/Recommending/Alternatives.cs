using HingeSelector.Candidates;
using HingeSelector.Knowledge;
using HingeSelector.Quantities;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Recommending;

/// <summary>What other heights and grips of the band would cost, in weighted points against the first try.</summary>
internal sealed class Alternatives(RuleBook book, Philosophy philosophy, CandidateBuilder builder, CandidateTable table, CaseFacts cases, Evaluation explained, LoopEvaluator loop)
{
    public IReadOnlyList<AlternativeSetUp> Heights(Candidate candidate)
        => candidate.Choice?.Heights.Widened is { } band ? Costs(candidate, band.Values, h => builder.At(candidate, height: h)) : [];

    public IReadOnlyList<AlternativeSetUp> Grips(Candidate candidate)
        => candidate.Choice?.Grips.Widened is { } band ? Costs(candidate, band.Values, g => builder.At(candidate, grip: g)) : [];

    private List<AlternativeSetUp> Costs(Candidate candidate, IReadOnlyList<Length> lengths, Func<Length, Candidate> at)
    {
        var place = candidate.Variant.Index;
        // What does not read the chosen set-up stays as it was decided.
        var stays = explained.Fired.Where(f => (f.Candidate == place || f.Candidate < 0) && !book.Rules[f.Rule].AfterSetUp).ToList();
        var first = Total(place, stays, cases.Candidates[place]);
        return [.. lengths.Select(l => new AlternativeSetUp(l.Metres, first - Total(place, stays, With(place, at(l)))))];
    }

    private Words.FactValue[] With(int place, Candidate other)
    {
        var copy = (Words.FactValue[])cases.Candidates[place].Clone();
        table.AddChoice(copy, other);
        return copy;
    }

    private int Total(int place, List<Firing> stays, Words.FactValue[] facts)
    {
        var view = new FactView(cases.Athlete, facts, explained.Findings);
        return Scores.Of(book, stays.Concat(loop.SecondOf(place, view)), philosophy).Total(place);
    }
}
