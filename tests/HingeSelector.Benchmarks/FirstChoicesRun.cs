using System.Globalization;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>first-choices [N] [FILE]</c>: who is first how often over the people of the survey, in each philosophy, and which rules fire for nobody or for everybody.</summary>
/// <remarks>FILE gets a line a person: outcome, the first three with their points, findings. A rule about candidates is counted per athlete and candidate, over the candidates whose own words meet its conditions.</remarks>
internal static class FirstChoicesRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : int.MaxValue;
        var book = RepositoryFiles.Book;
        var rooms = TrainingRooms.All();
        var selector = new Selector(book, new Network(book));
        var philosophies = book.Philosophies.Values.OrderBy(p => p.Id, StringComparer.Ordinal).ToList();
        var first = philosophies.Select(_ => new int[book.Variants.Count]).ToList();
        var outcomes = new SortedDictionary<Outcome, int>();
        var fired = new int[book.Rules.Count];
        var ties = new int[philosophies.Count];
        var (ranked, people) = (0, 0);
        using var lines = args.Length > 1 ? new StreamWriter(args[1]) : null;
        foreach (var athlete in SurveyPeople.Draw(book.Vocabulary, _day, 20261124, most))
        {
            for (var p = 0; p < philosophies.Count; p++)
            {
                var answer = selector.Choose(new Question(athlete, rooms[people % rooms.Count], null, philosophies[p], _day));
                if (p == 0)
                {
                    outcomes[answer.Outcome] = outcomes.GetValueOrDefault(answer.Outcome) + 1;
                    ranked += answer.Ranked.Count > 0 ? 1 : 0;
                    lines?.WriteLine($"{athlete.Id}\t{answer.Outcome}\t{string.Join(" ", answer.Ranked.Take(3).Select(r => $"{r.Candidate.Variant.Id} {r.Score} [{string.Join(",", r.Points)}]"))}\t{string.Join(",", answer.Findings)}");
                    foreach (var firing in answer.Fired)
                        fired[firing.Rule]++;
                }
                if (answer.Ranked.Count == 0)
                    continue;
                first[p][answer.Ranked[0].Candidate.Variant.Index]++;
                ties[p] += answer.Ranked[0].TiedWithFirst ? 1 : 0;
            }
            people++;
        }
        Console.WriteLine($"{people} people, {100.0 * ranked / people:0.0} % ranked; {string.Join(", ", outcomes.Select(o => $"{o.Key} {o.Value}"))}");
        Console.WriteLine($"{"first in %",-20} {string.Join(" ", philosophies.Select(p => $"{p.Id,17}"))}");
        foreach (var variant in book.Variants.OrderByDescending(v => first[0][v.Index]))
            Console.WriteLine($"{variant.Id,-20} {string.Join(" ", first.Select(f => $"{100.0 * f[variant.Index] / Math.Max(1, ranked),17:0.0}"))}{(variant.NeverFirst is null ? "" : "  never first, says its file")}");
        Console.WriteLine($"{"tied in front",-20} {string.Join(" ", ties.Select(t => $"{100.0 * t / Math.Max(1, ranked),17:0.0}"))}");
        Print("fires for nobody", book.Rules.Where(r => fired[r.Index] == 0));
        Print("fires for everybody", book.Rules.Where(r => !AsksOfVariantOnly(r) && fired[r.Index] == Subjects(r) * people));
        Print("asks of the variant only", book.Rules.Where(AsksOfVariantOnly));
        Print("fires for fewer than 1 in 1000", book.Rules.Where(r => fired[r.Index] > 0 && fired[r.Index] < Subjects(r) * people / 1000.0));
        Print("fires for more than 9 in 10", book.Rules.Where(r => !AsksOfVariantOnly(r) && fired[r.Index] > Subjects(r) * people * 0.9 && fired[r.Index] < Subjects(r) * people));
        return 0;
    }

    private static bool AsksOfVariantOnly(Rule rule) => rule.PerCandidate && rule.OpenConditions.Count == 0;

    private static int Subjects(Rule rule) => rule.PerCandidate ? System.Numerics.BitOperations.PopCount(rule.Variants) : 1;

    private static void Print(string title, IEnumerable<Rule> rules)
    {
        var ids = rules.Select(r => r.Id).ToList();
        Console.WriteLine($"{title} ({ids.Count}): {string.Join(", ", ids)}");
    }
}
