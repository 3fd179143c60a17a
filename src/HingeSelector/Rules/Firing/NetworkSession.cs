using HingeSelector.Rules.Evaluating;
using NRules;

namespace HingeSelector.Rules.Firing;

/// <summary>One decision of the network, in two stages; for one thread.</summary>
public sealed class NetworkSession : IRuleSession
{
    private readonly Network _network;
    private readonly CaseFacts _facts;
    private readonly ISession _session;
    private readonly Recorder _recorder;
    private Evaluation? _evaluation;
    private bool _finished;

    internal NetworkSession(Network network, ISessionFactory factory, CaseFacts facts)
    {
        _network = network;
        _facts = facts;
        _recorder = new Recorder(network.Book);
        _session = factory.CreateSession();
        // Marks go through the network once per round of firing instead of one by one.
        _session.AutoPropagateLinkedFacts = false;
    }

    /// <summary>Every conclusion in the order in which it came.</summary>
    public IReadOnlyList<TraceStep> Trace => _recorder.Trace;

    /// <summary>Order in which candidates enter; catalogue order unless a test says otherwise.</summary>
    internal IReadOnlyList<int>? Order { get; set; }

    /// <summary>Decides findings, rules of the athlete, and rules of the candidates that do not read the chosen set-up.</summary>
    /// <returns>Fired rules, sorted; findings that are present, or proven absent where some rule asks for absence. Open rules are not listed.</returns>
    /// <exception cref="InvalidOperationException">The stage has run already.</exception>
    public Evaluation First()
    {
        if (_evaluation is not null)
            throw new InvalidOperationException("The first stage has run already.");
        _evaluation = new Evaluation(_recorder.Findings);
        Run([new UndecidedAthlete(_recorder, _facts)]);
        var subjects = new object[_facts.Candidates.Length + 1];
        subjects[0] = new DecidedAthlete(_recorder, _facts);
        for (var i = 0; i < _facts.Candidates.Length; i++)
            subjects[i + 1] = new FirstCandidate(_recorder, _facts, Order?[i] ?? i);
        Run(subjects);
        _recorder.Note(_evaluation, afterSetUp: false);
        return _evaluation;
    }

    /// <summary>Decides the rules that read the chosen set-up; adds them to the evaluation of the first stage.</summary>
    /// <exception cref="InvalidOperationException">The first stage has not run, or this one has.</exception>
    public void Second()
    {
        if (_evaluation is null || _finished)
            throw new InvalidOperationException("The second stage runs once, after the first.");
        _finished = true;
        var subjects = new object[_facts.Candidates.Length];
        for (var i = 0; i < subjects.Length; i++)
            subjects[i] = new SecondCandidate(_recorder, _facts, Order?[i] ?? i);
        Run(subjects);
        _recorder.Note(_evaluation, afterSetUp: true);
    }

    // Every mark is set at most once per definition, so this comes to rest; the cap is there for the day that it does not.
    private void Run(object[] subjects)
    {
        _session.InsertAll(subjects);
        var left = _network.MostFirings;
        while (!_session.Agenda.IsEmpty)
        {
            left -= _session.Fire(left);
            if (left <= 0)
                throw new NetworkException($"The rules did not come to rest after {_network.MostFirings} firings.");
            _session.PropagateLinked();
        }
    }
}
