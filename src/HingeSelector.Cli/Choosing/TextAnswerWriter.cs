using HingeSelector.Cli.Frame;
using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;
using HingeSelector.Rules.Evaluating;

namespace HingeSelector.Cli.Choosing;

/// <summary>Writes answers for people: one athlete in full, a roster in a few lines each.</summary>
internal sealed class TextAnswerWriter(ChooseRequest request, RuleBook book, Surroundings around, ChooseInput input, IRuleEngine engine) : AnswerWriter
{
    private readonly LinePrinter _print = new(around, request.Format == ChooseRequest.Markdown);
    private readonly AthleteText _athlete = new(book);
    private readonly RosterText _roster = new(book);
    private readonly List<(string Id, Outcome Outcome)> _answers = [];
    private Stamp? _stamp;

    public override void Add(Question question, Recommendation answer)
    {
        _answers.Add((answer.Athlete.Id, answer.Outcome));
        _stamp = answer.Stamp;
        if (input.Why is { } variant)
            _print.Print(new DerivationText(book).Of(answer, Derivation.Of(book, engine, question, variant)));
        else
            _print.Print(request.IsSingle ? _athlete.Of(answer, request.Top ?? DefaultTop) : _roster.Of(answer));
    }

    public override void Finish()
    {
        if (!request.IsSingle)
            _print.Print(RosterText.Closing(_answers, input.BadRows, _stamp));
    }
}
