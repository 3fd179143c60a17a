using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Candidates;

/// <summary>The whole fact table of an athlete: answers, what follows from them, and where body and training are known from.</summary>
public static class AthleteFacts
{
    /// <summary>Fills the table.</summary>
    /// <param name="book">The rule book; its model estimates the body.</param>
    /// <param name="athlete">The athlete.</param>
    /// <param name="on">Day of the decision.</param>
    /// <param name="room">The room; null when it is not known.</param>
    public static FactValue[] Gather(RuleBook book, AthleteRecord athlete, DateOnly on, Room? room)
    {
        var facts = FactTable.Build(athlete, book.Vocabulary, on, room);
        var body = AthleteBody.Estimate(facts, book.Vocabulary, book.Model);
        facts[book.Vocabulary["body-basis"].Slot] = BodyWords.Basis(body);
        facts[book.Vocabulary["training-on-file"].Slot] = TrainingWords.OnFile(facts, book.Vocabulary);
        return facts;
    }
}
