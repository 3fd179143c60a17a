using HingeSelector.Explaining;
using HingeSelector.Recommending;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rendering;

/// <content>The parts, one for each verb.</content>
public sealed partial class JsonExplanation
{
    /// <summary>Writes why a variant has its score.</summary>
    public void Write(Derivation derivation)
    {
        if (IsSilent)
            return;
        var mayPull = _answer.Outcome is Outcome.Ranked or Outcome.LimitedToday;
        var ranked = _answer.Ranked.FirstOrDefault(r => r.Candidate.Variant.Index == derivation.Variant.Index);
        _json.WriteStartObject("why");
        WriteVariant("option", derivation.Variant);
        WriteNullable("place", ranked?.Place);
        WriteNullable("score", ranked is null ? null : derivation.Total);
        _json.WriteStartArray("sums");
        foreach (var sum in mayPull ? derivation.Sums : [])
        {
            _json.WriteStartObject();
            _json.WriteString("criterion", sum.Criterion.Id);
            _json.WriteStartArray("amounts");
            foreach (var amount in sum.Amounts)
                _json.WriteNumberValue(amount);
            _json.WriteEndArray();
            _json.WriteNumber("points", sum.Clamped);
            _json.WriteNumber("weight", sum.Weight);
            _json.WriteNumber("weighted", sum.Weighted);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        _json.WriteStartArray("rules");
        foreach (var derived in derivation.Rules.Where(r => mayPull || r.Rule.Conclusions.Any(c => c is StopConclusion or FindingConclusion)))
            WriteDerived(derived);
        _json.WriteEndArray();
        _json.WriteStartArray("open");
        foreach (var open in derivation.Open)
        {
            _json.WriteStartObject();
            WriteRule(open.Trace.Rule);
            WriteStrings("missing", open.Missing);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    /// <summary>Writes why options are not first.</summary>
    public void Write(IReadOnlyList<WhyNotOption> options)
    {
        if (IsSilent)
            return;
        _json.WriteStartArray("whyNot");
        foreach (var option in options)
        {
            _json.WriteStartObject();
            WriteVariant("option", option.Variant);
            _json.WriteString("place", Word(option.Place));
            WriteNullable("pointsBehind", option.Gap);
            _json.WriteStartArray("causes");
            foreach (var cause in option.Causes)
                WriteCause(cause);
            _json.WriteEndArray();
            _json.WriteNumber("moreCauses", option.More);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    /// <summary>Writes turning points.</summary>
    public void Write(TurningPoints points)
    {
        if (IsSilent)
            return;
        _json.WriteStartObject("turningPoints");
        _json.WriteNumber("factsMoved", points.Asked);
        _json.WriteStartArray("numbers");
        foreach (var point in points.Numbers)
        {
            _json.WriteStartObject();
            _json.WriteString("word", point.Word.Id);
            _json.WriteString("side", point.Side);
            _json.WriteString("label", point.Label);
            WriteNumber("now", point.Now, point.Word);
            WriteNumber("from", point.At, point.Word);
            _json.WriteString("direction", point.IsAbove ? "up" : "down");
            WriteNumber("distance", point.Distance, point.Word);
            WriteNullable("measuringErrors", point.InErrors, 3);
            WriteVariant("becomes", point.Becomes);
            _json.WriteString("outcome", OutcomeText.Word(point.Outcome));
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        _json.WriteStartArray("answers");
        foreach (var answer in points.Answers)
        {
            _json.WriteStartObject();
            _json.WriteString("word", answer.Word.Id);
            _json.WriteString("label", answer.Word.Label);
            _json.WriteString("now", answer.Now);
            _json.WriteString("value", answer.Value);
            WriteVariant("becomes", answer.Becomes);
            _json.WriteString("outcome", OutcomeText.Word(answer.Outcome));
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        WriteLeftOut(points.LeftOut);
        _json.WriteEndObject();
    }

    /// <summary>Writes what to measure next.</summary>
    public void Write(NextMeasurement next)
    {
        if (IsSilent)
            return;
        _json.WriteStartObject("nextMeasurement");
        _json.WriteBoolean("nothingWouldChangeIt", next.NothingWould);
        _json.WriteStartArray("measures");
        foreach (var measure in next.Measures)
        {
            _json.WriteStartObject();
            _json.WriteString("word", measure.Word.Id);
            _json.WriteString("label", measure.Word.Label);
            _json.WriteBoolean("hasRunOut", measure.IsExpired);
            WriteNullable("minutes", measure.Minutes, 1);
            WriteNullable("chance", measure.Chance, 4);
            _json.WriteString("spread", measure.Spread);
            WriteStrings("becomes", measure.Becomes.Select(v => v.Id));
            WriteStrings("examples", measure.Examples);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        WriteStrings("refused", next.Refused);
        WriteLeftOut(next.LeftOut);
        _json.WriteEndObject();
    }

    /// <summary>Writes how sure the first choice is.</summary>
    public void Write(HowSure sure)
    {
        if (IsSilent)
            return;
        _json.WriteStartObject("howSure");
        _json.WriteNumber("draws", sure.Draws);
        _json.WriteBoolean("clearFirst", sure.IsClear);
        WriteNullable("firstInHundred", sure.First is null ? null : sure.OfHundred);
        _json.WriteBoolean("staysByBlock", sure.StaysByBlock);
        _json.WriteStartArray("counts");
        foreach (var (variant, count) in sure.Counts)
        {
            _json.WriteStartObject();
            _json.WriteString("variant", variant.Id);
            _json.WriteNumber("count", count);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        _json.WriteNumber("nothingMayBePulled", sure.NoPull);
        _json.WriteEndObject();
    }

    private void WriteDerived(DerivedRule derived)
    {
        _json.WriteStartObject();
        WriteRule(derived.Rule);
        _json.WriteStartArray("conditions");
        foreach (var (condition, facts) in derived.Conditions)
        {
            _json.WriteStartObject();
            _json.WriteString("condition", condition);
            _json.WriteStartArray("facts");
            foreach (var fact in facts)
            {
                _json.WriteStartObject();
                _json.WriteString("word", fact.Word);
                _json.WriteString("label", fact.Label);
                _json.WriteString("value", fact.Value);
                _json.WriteEndObject();
            }
            _json.WriteEndArray();
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
        WriteStrings("then", derived.Rule.Conclusions.Select(c => ConclusionText.Of(_book, c)));
        _json.WriteEndObject();
    }

    private void WriteCause(Cause cause)
    {
        _json.WriteStartObject();
        _json.WriteString("kind", Word(cause.Kind));
        _json.WriteString("say", cause.Say);
        WriteNullable("points", cause.Points);
        _json.WriteString("criterion", cause.Criterion?.Id);
        if (cause.Shortfall is { } shortfall)
        {
            _json.WriteStartObject("condition");
            _json.WriteString("text", shortfall.Condition.Text);
            _json.WriteString("label", shortfall.Label);
            _json.WriteString("now", shortfall.Now);
            WriteNumber("turnsAt", shortfall.Needed, shortfall.Word);
            WriteNumber("distance", shortfall.Distance, shortfall.Word);
            WriteNullable("errors", shortfall.InErrors, 3);
            _json.WriteEndObject();
        }
        else
        {
            _json.WriteNull("condition");
        }
        WriteStrings("missing", cause.Missing);
        WriteRule(cause.Rule);
        _json.WriteEndObject();
    }
}
