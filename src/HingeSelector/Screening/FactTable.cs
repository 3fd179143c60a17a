using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Lays the answers of one athlete out in the slots that rules read.</summary>
public sealed class FactTable
{
    private readonly AthleteRecord _record;
    private readonly Vocabulary _vocabulary;
    private readonly DateOnly _on;
    private readonly Growth _growth;
    private readonly FactValue[] _facts;

    private FactTable(AthleteRecord record, Vocabulary vocabulary, DateOnly on)
    {
        _record = record;
        _vocabulary = vocabulary;
        _on = on;
        _growth = Growth.Of(record);
        _facts = new FactValue[vocabulary.AthleteSlots];
    }

    /// <summary>Builds the table.</summary>
    /// <param name="record">The athlete.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="on">Day of the decision.</param>
    /// <param name="room">The room; null when it is not known.</param>
    /// <returns>One value per slot of the athlete; <c>body-basis</c> is left for the body estimate to fill.</returns>
    public static FactValue[] Build(AthleteRecord record, Vocabulary vocabulary, DateOnly on, Room? room)
    {
        var table = new FactTable(record, vocabulary, on);
        table.PlaceAnswers();
        new HeldFacts(record, vocabulary, table.InForce, table._facts).Fill();
        new ComputedFacts(record, vocabulary, on, table._growth, table._facts).Fill();
        RoomFacts.Fill(room, vocabulary, table._facts);
        return table._facts;
    }

    private void PlaceAnswers()
    {
        var throwing = _vocabulary.Find("throwing-side") is { } side ? InForce(side, 0) : FactValue.Missing;
        var answered = _record.Answers.Keys.Select(k => k.Word).ToHashSet(StringComparer.Ordinal);
        foreach (var word in _vocabulary.Words)
        {
            if (!word.IsMeasured)
                continue;
            // A slot begins as not measured: of a word that nobody answered only the throwing and the other side say more.
            if (word.ValueSides is null && !answered.Contains(word.Id) && (word.NotBelow is null || !answered.Contains(word.NotBelow)))
                SidedFacts.FillUnanswered(word, throwing, _facts.AsSpan(word.Slot, Math.Max(1, word.Readings.Count)));
            else if (word.Sided)
                SidedFacts.Fill(word, AtLeast(word, Sides.Left), AtLeast(word, Sides.Right), throwing, _facts.AsSpan(word.Slot, word.Readings.Count));
            else if (word.ValueSides is { } sides)
                SidedFacts.Fill(sides, AtLeast(word, 0), throwing, _facts.AsSpan(word.Slot, word.Readings.Count));
            else
                _facts[word.Slot] = AtLeast(word, 0);
        }
    }

    /// <summary>The answer as it counts on the day, raised to that of the word below which it cannot lie.</summary>
    private FactValue AtLeast(Word word, int side)
    {
        var own = InForce(word, side);
        if (word.NotBelow is null || _vocabulary.Find(word.NotBelow) is not { } floorWord || InForce(floorWord, side) is not { IsKnown: true } floor)
            return own;
        if (!own.IsKnown)
            return FactValue.Between(floor.Low, word.Range?.High ?? double.PositiveInfinity);
        return own.Low >= floor.Low ? own : floor;
    }

    /// <summary>The answer as it counts on the day.</summary>
    /// <remarks>A refusal that has run out is no old value; it only means that nobody has asked since.</remarks>
    private FactValue InForce(Word word, int side) => InForce(word, _record.Find(word.Id, side));

    private FactValue InForce(Word word, Answer? answer)
    {
        if (answer is null)
            return FactValue.Missing;
        if (word.Lifetime.Covers(answer.On, _on, answer.Until) && !_growth.Ends(word, answer))
            return answer.Value;
        if (word.NamedStays && answer.Value.IsKnown && answer.On <= _on && (answer.Value.Bits & word.LastingBits) is var lasting and not 0)
            return FactValue.Of(lasting);
        return answer.Value.State == FactState.Refused ? FactValue.Missing : FactValue.Unknown(FactState.Expired);
    }
}
