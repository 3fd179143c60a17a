using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Tests.Screening;

/// <summary>Short ways to read a text and to look into a table.</summary>
internal static class Screens
{
    public static AthleteRecord Read(string yaml, DateOnly? on = null)
    {
        var bag = new DiagnosticBag();
        var record = ScreenReader.Read(new SourceText("p01.yaml", yaml), Repository.Vocabulary, on ?? Repository.DemoDay, bag);
        DiagnosticPrinter.Print(bag.Sorted.Where(d => d.Severity == Severity.Error)).ShouldBeEmpty();
        return record.ShouldNotBeNull();
    }

    public static IReadOnlyList<Diagnostic> Faults(string yaml)
    {
        var bag = new DiagnosticBag();
        ScreenReader.Read(new SourceText("p01.yaml", yaml), Repository.Vocabulary, Repository.DemoDay, bag);
        return bag.Sorted;
    }

    public static RosterResult Roster(string csv, out IReadOnlyList<Diagnostic> faults)
    {
        var bag = new DiagnosticBag();
        var result = RosterReader.Read(new SourceText("club.csv", csv), Repository.Vocabulary, Repository.DemoDay, bag);
        faults = bag.Sorted;
        return result;
    }

    public static FactValue[] Table(string yaml, DateOnly? on = null, Room? room = null)
        => FactTable.Build(Read(yaml, on), Repository.Vocabulary, on ?? Repository.DemoDay, room);

    public static FactValue At(this FactValue[] table, string word, string? reading = null)
        => table[Vocabulary.Reading(Repository.Vocabulary[word], reading)!.Slot];

    public static string Show(this FactValue[] table, string word, string? reading = null)
        => Repository.Vocabulary[word].Print(table.At(word, reading));

    public static string Day(int daysFromDemo)
        => Repository.DemoDay.AddDays(daysFromDemo).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
