using HingeSelector.Cli.Frame;
using HingeSelector.Recommending;
using HingeSelector.Rendering;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Choosing;

/// <summary>Writes one row a candidate.</summary>
internal sealed class CsvAnswerWriter(ChooseRequest request, RuleBook book, Surroundings around) : AnswerWriter
{
    private readonly CsvAnswer _csv = new(around.Output, book);

    public override void Add(Question question, Recommendation answer) => _csv.Add(answer, request.Top ?? int.MaxValue);

    public override void Finish()
    {
    }
}
