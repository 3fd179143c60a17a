using HingeSelector.Body;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>What people show of a fact that was not measured: from the vocabulary, for segments from the survey of the model.</summary>
internal sealed class Spreads
{
    private const int Parts = 100;
    private const int Examples = 25;

    /// <summary>A measure taken anew is taken by its protocol: with the pelvis held, and without straps.</summary>
    private static readonly Dictionary<string, (string Word, string Value)> _withIt = new(StringComparer.Ordinal)
    {
        ["straight-leg-raise"] = ("straight-leg-raise-pelvis-held", "yes"),
        ["hip-flexion"] = ("hip-flexion-pelvis-held", "yes"),
        ["tested-1rm"] = ("tested-1rm-straps", "no"),
    };

    private static readonly Dictionary<string, SegmentName> _segments = new(StringComparer.Ordinal)
    {
        ["thigh-length"] = SegmentName.Thigh,
        ["shank-length"] = SegmentName.Shank,
        ["trunk-length"] = SegmentName.TrunkToAcromion,
        ["arm-length"] = SegmentName.ArmToGrip,
    };

    private readonly RuleBook _book;
    private readonly Question _question;
    private readonly FactValue[] _facts;
    private readonly IReadOnlyList<Sex> _sexes;

    public Spreads(RuleBook book, Question question, FactValue[] facts)
    {
        (_book, _question, _facts) = (book, question, facts);
        var sex = facts[book.Vocabulary["sex"].Slot];
        _sexes = !sex.IsKnown ? [Sex.Female, Sex.Male] : sex == FactValue.Choice(book.Vocabulary["sex"].Values.ToList().IndexOf("female")) ? [Sex.Female] : [Sex.Male];
    }

    /// <summary>Facts that are taken together with another measure and are not measured alone.</summary>
    public bool GoesWithAnother(Word word) => _withIt.Any(w => w.Value.Word == word.Id && !_facts[_book.Vocabulary[w.Key].Slot].IsKnown);

    /// <summary>Plausible values of a number; without a spread on file examples over what is usual.</summary>
    public PlausibleValues? Of(Word word)
    {
        var missing = Enumerable.Range(0, word.Sided ? 2 : 1).Where(side => !_facts[word.Slot + side].IsKnown).ToList();
        if (missing.Count == 0)
            return null;
        IReadOnlyList<(AnswerKey, FactValue)> Answers(double value)
            => [.. missing.Select(side => (new AnswerKey(word.Id, side), FactValue.Number(value))), .. Companion(word)];

        var other = word.Sided && missing.Count == 1 ? _facts[word.Slot + 1 - missing[0]] : FactValue.Missing;
        if (word.Typical is { } typical)
        {
            var values = other.IsExact && typical.SidesApart > 0
                ? Quantiles.Of(other.Low, typical.SidesApart, Parts)
                : Both(sex => sex == Sex.Female ? typical.Female : typical.Male);
            return new PlausibleValues(Inside(word, values), Answers, Say(typical));
        }
        if (_segments.TryGetValue(word.Id, out var segment))
            return Stature is { } stature && _facts[_book.Vocabulary["body-basis"].Slot] != FactValue.Choice(BodyNotKnown)
                ? new PlausibleValues(Inside(word, Both(sex => Scaled(sex, segment, stature))), Answers, "scatter of the 2012 survey about the stature; laboratory")
                : new PlausibleValues(Evenly(word), Answers, null);
        return new PlausibleValues(Evenly(word), Answers, null);
    }

    private const int BodyNotKnown = 3;

    private double? Stature => _facts[_book.Vocabulary["stature"].Slot] is { IsExact: true } value ? value.Low : null;

    private (double Mean, double Deviation) Scaled(Sex sex, SegmentName segment, double stature)
    {
        var ratio = _book.Model.Survey.For(sex).Ratios[segment];
        return (ratio.Mean * stature, ratio.Deviation * stature);
    }

    // Where the sex is not on file half of the people are women and half are men.
    private IEnumerable<double> Both(Func<Sex, (double Mean, double Deviation)> of)
        => _sexes.SelectMany(sex => Quantiles.Of(of(sex).Mean, of(sex).Deviation, Parts / _sexes.Count));

    private static List<double> Inside(Word word, IEnumerable<double> values)
        => [.. values.Select(v => Math.Round(word.Range is { } range ? Math.Clamp(v, range.Low, range.High) : v, 9)).Order()];

    private static List<double> Evenly(Word word)
    {
        if ((word.Usual ?? word.Range) is not { } range)
            return [];
        var steps = Steps.Of(word);
        return [.. Enumerable.Range(0, Examples).Select(i => steps[steps.AtOrBelow(range.Low + ((range.High - range.Low) * i / (Examples - 1)))]).Distinct()];
    }

    private IEnumerable<(AnswerKey, FactValue)> Companion(Word word)
    {
        if (!_withIt.TryGetValue(word.Id, out var companion) || _book.Vocabulary.Find(companion.Word) is not { } with || _facts[with.Slot].IsKnown)
            yield break;
        yield return (new AnswerKey(with.Id, 0), FactValue.Choice(with.Values.ToList().IndexOf(companion.Value)));
    }

    private static string Say(TypicalSpread typical)
        => $"{(typical.Sources.Count > 0 ? string.Join(", ", typical.Sources) + "; " : "")}{typical.Grade}{(typical.Note is { } note ? $"; {note}" : "")}";
}
