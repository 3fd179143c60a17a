using HingeSelector.Body;
using HingeSelector.Quantities;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>
/// The same athlete as they may really be: every measured number off by its own error, every number of the model anywhere in its
/// range, and segments that were not measured anywhere in the scatter of the survey.
/// </summary>
/// <remarks>Ratings are what the athlete says and stay. A draw depends on its number alone, so draws may be made in any order.</remarks>
internal sealed class Draws
{
    private const ulong Seed = 20261124;
    private const ulong Apart = 0xD1B54A32D192ED03;

    private readonly RuleBook _book;
    private readonly AthleteRecord _athlete;
    private readonly (AnswerKey Key, Word Word, double Value, double Error)[] _measured;
    private readonly Scatter _female;
    private readonly Scatter _male;

    public Draws(RuleBook book, AthleteRecord athlete)
    {
        (_book, _athlete) = (book, athlete);
        _measured = [.. athlete.Answers.Select(a => (a.Key, Word: book.Vocabulary[a.Key.Word], a.Value.Value))
            .Where(a => a.Word.Kind == WordKind.Number && a.Word.Dimension != Dimension.Rating && a.Value.IsExact && a.Word.ErrorOf(a.Value.Low) > 0)
            .OrderBy(a => a.Key.Word, StringComparer.Ordinal).ThenBy(a => a.Key.Side)
            .Select(a => (a.Key, a.Word, a.Value.Low, a.Word.ErrorOf(a.Value.Low)))];
        (_female, _male) = (new Scatter(book.Model.Survey.Female), new Scatter(book.Model.Survey.Male));
    }

    /// <summary>One draw: the rules with their model, and the record, as they may be.</summary>
    public (RuleBook Book, AthleteRecord Athlete) this[int number]
    {
        get
        {
            var chances = new Chances(Seed ^ ((ulong)(number + 1) * Apart));
            var athlete = Edited.Change(_athlete, Measured(ref chances));
            if (athlete.HeldHeights.Count > 0)
                athlete = athlete with { HeldHeights = Held(ref chances) };
            var parameters = Parameters(ref chances);
            // One body: whoever stands out by sex stands out alike in both tables.
            var shape = new double[Segments.Count];
            for (var i = 0; i < shape.Length; i++)
                shape[i] = chances.Normal();
            var old = _book.Model.Survey;
            var survey = new SurveyTable(old.YoungestYears, old.OldestYears, _female.Of(shape), _male.Of(shape));
            return (_book with { Model = _book.Model with { Survey = survey, Parameters = parameters } }, athlete);
        }
    }

    private List<(AnswerKey, FactValue)> Measured(ref Chances chances)
    {
        var changes = new List<(AnswerKey, FactValue)>(_measured.Length);
        foreach (var (key, word, value, error) in _measured)
        {
            changes.Add((key, FactValue.Number(Inside(word, value + (error * chances.Normal())))));
        }
        return changes;
    }

    private List<HeldEntry> Held(ref Chances chances)
    {
        var entries = new List<HeldEntry>();
        foreach (var entry in _athlete.HeldHeights)
        {
            var answers = new Dictionary<string, Answer>(StringComparer.Ordinal);
            foreach (var (id, answer) in entry.Answers.OrderBy(a => a.Key, StringComparer.Ordinal))
                answers.Add(id, answer.Value.IsExact && _book.Vocabulary[id].ErrorOf(answer.Value.Low) is > 0 and var error ? answer with { Value = FactValue.Number(Inside(_book.Vocabulary[id], answer.Value.Low + (error * chances.Normal()))) } : answer);
            entries.Add(entry with { Answers = answers });
        }
        return entries;
    }

    private static double Inside(Word word, double value) => word.Range is { } range ? Math.Clamp(value, range.Low, range.High) : value;

    private ModelParameters Parameters(ref Chances chances)
    {
        var values = new Dictionary<string, ParameterValue>(ModelParameters.Ids.Count, StringComparer.Ordinal);
        foreach (var (id, _) in ModelParameters.Ids)
        {
            var range = _book.Model.Parameters.RangeOf(id);
            values.Add(id, range with { Value = range.Low + ((range.High - range.Low) * chances.Even()) });
        }
        return new ModelParameters(values);
    }
}
