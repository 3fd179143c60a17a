using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Choosing;

/// <summary>Answers one athlete after the other and hands each answer to the writer of the format.</summary>
internal sealed class ChooseRun(ChooseRequest request, RuleBook book, Surroundings around)
{
    /// <summary>Runs.</summary>
    /// <returns>The exit code.</returns>
    public int Run()
    {
        var engine = EngineOfRecord.For(book);
        var input = new ChooseInput(request, book, around);
        if (input.Diagnostics.Count > 0)
            around.Error.Write(DiagnosticPrinter.Print(input.Diagnostics));
        var selector = new Selector(book, engine);
        var outcomes = new List<Outcome>();
        var progress = new Progress(around, input.Athletes.Count);
        using var writer = AnswerWriter.For(request, book, around, input, engine);
        foreach (var athlete in input.Athletes)
        {
            var question = input.About(athlete);
            var answer = selector.Choose(question);
            outcomes.Add(answer.Outcome);
            writer.Add(question, answer);
            progress.Step();
        }
        progress.Finish();
        writer.Finish();
        // What was asked about one athlete goes before the faults of other rows.
        var level = request.Typed.ExitLevel ? Level(outcomes[0]) : ExitCode.Done;
        return level == ExitCode.Done && input.BadRows > 0 ? ExitCode.BadInput : level;
    }

    private static int Level(Outcome outcome) => outcome switch
    {
        Outcome.Emergency => ExitCode.Emergency,
        Outcome.Refer => ExitCode.Refer,
        Outcome.Held => ExitCode.Held,
        Outcome.LimitedToday => ExitCode.LimitedToday,
        _ => ExitCode.Done,
    };
}
