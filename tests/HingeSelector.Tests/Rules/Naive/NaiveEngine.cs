using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Evaluating;
using Fired = HingeSelector.Rules.Evaluating.Firing;

namespace HingeSelector.Tests.Rules.Naive;

/// <summary>The naive interpreter in the place of the engine of record, so that whole answers can be compared.</summary>
internal sealed class NaiveEngine(NaiveInterpreter naive, RuleBook book) : IRuleEngine
{
    private readonly Dictionary<string, int> _places = book.Rules.ToDictionary(r => r.Id, r => r.Index, StringComparer.Ordinal);

    public IRuleSession Start(CaseFacts facts) => new Session(this, facts);

    private Truth[] Findings(NaiveResult result) => [.. book.Findings.Select(f => (Truth)((int)result.Findings[f.Id] - 1))];

    private sealed class Session(NaiveEngine engine, CaseFacts facts) : IRuleSession
    {
        private readonly NaiveInterpreter _naive = engine.Interpreter;
        private NaiveResult? _result;
        private Evaluation? _evaluation;
        private int _noted;

        public Evaluation First()
        {
            _result = _naive.First(facts);
            _evaluation = new Evaluation(engine.Findings(_result));
            Note();
            return _evaluation;
        }

        public void Second()
        {
            _naive.Second(facts, _result!);
            Note();
        }

        private void Note()
        {
            for (; _noted < _result!.Fired.Count; _noted++)
                _evaluation!.NoteFired(new Fired(engine._places[_result.Fired[_noted].Rule], _result.Fired[_noted].Candidate));
        }
    }

    private NaiveInterpreter Interpreter => naive;
}
