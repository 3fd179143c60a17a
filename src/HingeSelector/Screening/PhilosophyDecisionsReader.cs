using HingeSelector.Diagnostics;
using HingeSelector.Reading;

namespace HingeSelector.Screening;

/// <summary>Reads <c>philosophy-of-record</c> of a file of standing choices: who goes by which philosophy, since when, decided by whom.</summary>
public static class PhilosophyDecisionsReader
{
    /// <summary>Key of the list.</summary>
    public const string Key = "philosophy-of-record";

    /// <summary>Reads one file; the standing choices in it are read elsewhere.</summary>
    /// <param name="source">The file.</param>
    /// <param name="philosophies">Ids of the philosophies.</param>
    /// <param name="bag">Collects faults.</param>
    public static PhilosophyDecisions Read(SourceText source, IReadOnlyCollection<string> philosophies, DiagnosticBag bag)
    {
        // What is wrong with the file as a whole is told by the reader of the standing choices.
        if (MapReader.Open(YamlReader.Read(ByteOrderMark.Without(source), new DiagnosticBag()), "a file of standing choices", new DiagnosticBag()) is not { } map)
            return PhilosophyDecisions.None;
        var decisions = map.List(Key).Select(n => ReadOne(n, philosophies, bag)).OfType<PhilosophyDecision>().ToList();
        foreach (var twice in decisions.GroupBy(d => (d.Athlete, d.TrainingGroup, d.Since)).Where(g => g.Count() > 1))
            bag.Add(Problems.DecidedTwice(twice.Last().Span, twice.Key.Athlete ?? twice.Key.TrainingGroup!, Dates.Print(twice.Key.Since), twice.First().Span));
        return new PhilosophyDecisions(decisions);
    }

    private static PhilosophyDecision? ReadOne(YamlNode node, IReadOnlyCollection<string> philosophies, DiagnosticBag bag)
    {
        var map = MapReader.Open(node, "a philosophy of record", bag);
        if (map is null)
            return null;
        var (athlete, group) = (map.Scalar("id"), map.Scalar("training-group"));
        var philosophy = map.Required("philosophy");
        var since = map.Required("since") is { } text ? Dates.Any(Typed.From(text), bag) : null;
        var by = map.Required("decided-by");
        map.Finish();
        if (athlete is null == group is null)
            bag.Add(Problems.OneOfTwoKeys(map.Span, "A philosophy of record", "id", "training-group"));
        if (philosophy is not null && !philosophies.Contains(philosophy.Value))
            bag.Add(Problems.UnknownValue(philosophy.Span, philosophy.Value, "philosophy", [.. philosophies.Order(StringComparer.Ordinal)]));
        return philosophy is null || since is null || by is null || athlete is null == group is null
            ? null
            : new PhilosophyDecision(athlete?.Value.Trim(), group?.Value.Trim(), philosophy.Value, since.Value, by.Value.Trim(), (athlete ?? group)!.Span);
    }
}
