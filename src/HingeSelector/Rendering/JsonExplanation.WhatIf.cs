using HingeSelector.Explaining;
using HingeSelector.Recommending;

namespace HingeSelector.Rendering;

/// <content>What if.</content>
public sealed partial class JsonExplanation
{
    /// <summary>Writes what would change.</summary>
    public void Write(WhatIf whatIf)
    {
        var difference = whatIf.Difference;
        _json.WriteStartObject("whatIf");
        _json.WriteStartArray("changes");
        foreach (var change in whatIf.Changes)
        {
            _json.WriteStartObject();
            _json.WriteString("word", change.Word.Id);
            _json.WriteString("side", change.Side);
            _json.WriteString("label", change.Label);
            _json.WriteString("now", change.Now);
            _json.WriteString("value", change.Then);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        _json.WriteBoolean("nothingChanges", difference.IsEmpty);
        _json.WriteString("outcome", OutcomeText.Word(difference.After.Outcome));
        _json.WriteString("outcomeText", OutcomeText.Headline(difference.After));
        WriteStops("newStops", difference.NewStops);
        WriteStops("goneStops", difference.GoneStops);
        // Help first: with an emergency nothing else is told.
        if (difference.After.Outcome != Outcome.Emergency)
            WriteRest(difference);
        _json.WriteEndObject();
    }

    private void WriteRest(AnswerDifference difference)
    {
        WriteStrings("newQuestions", difference.After.Unanswered.Except(difference.Before.Unanswered).Select(u => u.Word));
        WriteVariant("first", difference.FirstAfter);
        _json.WriteBoolean("sameFirst", difference.SameFirst);
        _json.WriteStartArray("moved");
        foreach (var (variant, before, after) in difference.Moved)
        {
            _json.WriteStartObject();
            _json.WriteString("variant", variant.Id);
            _json.WriteNumber("before", before);
            _json.WriteNumber("after", after);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        _json.WriteStartArray("out");
        foreach (var (variant, why) in difference.Lost)
        {
            _json.WriteStartObject();
            _json.WriteString("variant", variant.Id);
            _json.WriteString("why", why);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        WriteStrings("backIn", difference.Returned.Select(v => v.Id));
        var text = new SetUpText(_book);
        _json.WriteStartArray("setUps");
        foreach (var (before, after) in difference.SetUps)
        {
            _json.WriteStartObject();
            _json.WriteString("variant", after.Candidate.Variant.Id);
            _json.WriteString("before", WhatIfText.SetUp(text, before));
            _json.WriteString("after", WhatIfText.SetUp(text, after));
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        WriteStrings("newCues", difference.NewCues);
        WriteStrings("goneCues", difference.GoneCues);
    }
}
