using HingeSelector.Cli.Frame;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Choosing;

/// <summary>Writes answers for people: one athlete in full, a roster in a few lines each.</summary>
internal sealed class TextAnswerWriter(ChooseRequest request, RuleBook book, Surroundings around, ChooseInput input, Deciders deciders) : AnswerWriter
{
    private readonly LinePrinter _print = new(around, request.Format == ChooseRequest.Markdown);
    private readonly AthleteText _athlete = new(book);
    private readonly RosterText _roster = new(book);
    private readonly List<(string Id, Outcome Outcome)> _answers = [];
    private readonly Dictionary<string, int> _decided = new(StringComparer.Ordinal);
    private Stamp? _stamp;

    public override void Add(Question question, Recommendation answer)
    {
        _answers.Add((answer.Athlete.Id, answer.Outcome));
        if (answer.Stamp.Decision is null)
            _stamp = answer.Stamp;
        else
            _decided[answer.Stamp.Philosophy] = _decided.GetValueOrDefault(answer.Stamp.Philosophy) + 1;
        if (input.Why is { } variant)
            Explain(question, answer, variant);
        else
            _print.Print(request.IsSingle ? _athlete.Of(answer, request.Top ?? DefaultTop) : _roster.Of(answer));
    }

    public override void Finish()
    {
        if (!request.IsSingle)
            _print.Print(RosterText.Closing(_answers, input.BadRows, _stamp, _decided));
    }

    private void Explain(Question question, Recommendation answer, Knowledge.Variant variant)
    {
        var decider = deciders.For(question.Philosophy);
        _print.Print(new DerivationText(decider.Book).Of(answer, Derivation.Of(decider.Book, decider.Engine, question, variant)));
    }
}
