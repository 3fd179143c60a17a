using HingeSelector.Cli.Frame;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Choosing;

/// <summary>Writes one JSON document.</summary>
internal sealed class JsonAnswerWriter(ChooseRequest request, RuleBook book, Surroundings around) : AnswerWriter
{
    private readonly JsonAnswer _json = new(around.OutputStream, book, request.Philosophy, request.On);

    public override void Add(Question question, Recommendation answer) => _json.Add(answer, request.Top ?? int.MaxValue);

    public override void Finish() => _json.Finish();

    public override void Dispose()
    {
        _json.Dispose();
        base.Dispose();
    }
}
