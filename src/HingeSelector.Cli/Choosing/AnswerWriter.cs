using HingeSelector.Cli.Frame;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Cli.Choosing;

/// <summary>Writes answers in one format.</summary>
internal abstract class AnswerWriter : IDisposable
{
    /// <summary>Candidates told in full where the command line does not say.</summary>
    protected const int DefaultTop = 3;

    /// <summary>The writer of the format asked for.</summary>
    public static AnswerWriter For(ChooseRequest request, RuleBook book, Surroundings around, ChooseInput input, Deciders deciders) => request.Format switch
    {
        ChooseRequest.Json => new JsonAnswerWriter(request, book, around),
        ChooseRequest.Csv => new CsvAnswerWriter(request, book, around),
        _ => new TextAnswerWriter(request, book, around, input, deciders),
    };

    /// <summary>Writes one answer.</summary>
    public abstract void Add(Question question, Recommendation answer);

    /// <summary>Writes what comes after the last answer.</summary>
    public abstract void Finish();

    /// <inheritdoc/>
    public virtual void Dispose() => GC.SuppressFinalize(this);
}
