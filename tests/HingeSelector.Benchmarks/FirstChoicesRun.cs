using System.Globalization;
using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>first-choices [N] [FILE]</c>: who is first how often over the people of the survey, in each philosophy, and which rules fire for nobody or for everybody.</summary>
/// <remarks>FILE gets a line a person: outcome, the first three with their points, findings.</remarks>
internal static class FirstChoicesRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : int.MaxValue;
        var book = RepositoryFiles.Book;
        var philosophies = book.Philosophies.Values.OrderBy(p => p.Id, StringComparer.Ordinal).ToList();
        var choices = new FirstChoices(book, new Network(book), philosophies, _day);
        using var lines = args.Length > 1 ? new StreamWriter(args[1]) : null;
        foreach (var athlete in SurveyPeople.Draw(book.Vocabulary, _day, SurveyPeople.Seed, most))
        {
            var answer = choices.Ask(athlete);
            lines?.WriteLine($"{athlete.Id}\t{answer.Outcome}\t{string.Join(" ", answer.Ranked.Take(3).Select(r => $"{r.Candidate.Variant.Id} {r.Score} [{string.Join(",", r.Points)}]"))}\t{string.Join(",", answer.Findings)}");
        }
        Console.WriteLine($"{choices.People} people, {100.0 * choices.Ranked / choices.People:0.0} % ranked; {string.Join(", ", choices.Outcomes.Select(o => $"{o.Key} {o.Value}"))}");
        Console.WriteLine($"{"first in %",-20} {string.Join(" ", philosophies.Select(p => $"{p.Id,17}"))}");
        foreach (var variant in book.Variants.OrderByDescending(v => choices.First(0, v.Index)))
            Console.WriteLine($"{variant.Id,-20} {string.Join(" ", philosophies.Select((_, p) => $"{choices.First(p, variant.Index),17:0.0}"))}{(variant.NeverFirst is null ? "" : "  never first, says its file")}");
        Console.WriteLine($"{"tied in front",-20} {string.Join(" ", philosophies.Select((_, p) => $"{choices.Tied(p),17:0.0}"))}");
        Print("fires for nobody", choices.ForNobody);
        Print("fires for everybody", choices.ForEverybody);
        Print("asks of the variant only", book.Rules.Where(FirstChoices.AsksOfVariantOnly));
        Print("fires for fewer than 1 in 1000", book.Rules.Where(r => choices.Share(r) is > 0 and < 0.001));
        Print("fires for more than 9 in 10", book.Rules.Where(r => !FirstChoices.AsksOfVariantOnly(r) && choices.Share(r) is > 0.9 and < 1));
        return 0;
    }

    private static void Print(string title, IEnumerable<Rule> rules)
    {
        var ids = rules.Select(r => r.Id).ToList();
        Console.WriteLine($"{title} ({ids.Count}): {string.Join(", ", ids)}");
    }
}
