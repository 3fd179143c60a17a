using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary><c>demo [ID ...] [PHILOSOPHY]</c>: what each athlete of the demo club gets, with points, set-up and every reason; for tuning the rules.</summary>
internal static class DemoRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var book = RepositoryFiles.Book;
        var bag = new DiagnosticBag();
        var roster = RosterReader.Read(RepositoryFiles.Source("content/demo/club.csv"), book.Vocabulary, _day, bag);
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), bag);
        var standing = StandingReader.Read(RepositoryFiles.Source("content/demo/standing.yaml"), [.. book.Variants.Select(v => v.Id)], _day, bag)!;
        var philosophy = book.Philosophies[args.FirstOrDefault(book.Philosophies.ContainsKey) ?? "balanced"];
        var selector = new Selector(book, new Network(book));
        var asked = args.Where(a => !book.Philosophies.ContainsKey(a)).ToHashSet(StringComparer.Ordinal);
        Console.WriteLine("points: " + string.Join(" ", book.Criteria.Select(c => c.Id)));
        foreach (var athlete in roster.Good.Where(a => asked.Count == 0 || asked.Contains(a.Id)))
            Print(book, selector.Choose(new Question(athlete, room, standing.GetValueOrDefault(athlete.Id), philosophy, _day)), asked.Count > 0);
        return 0;
    }

    private static void Print(RuleBook book, Recommendation answer, bool withReasons)
    {
        Console.WriteLine($"== {answer.Athlete.Id} {answer.Outcome}; {string.Join(", ", answer.Stops.Select(s => $"{s.Level} {s.Trace.Rule.Id}"))}");
        Console.WriteLine($"   findings: {string.Join(", ", answer.Findings)}");
        foreach (var ranked in answer.Ranked)
        {
            var choice = ranked.Candidate.Choice;
            var height = choice is null ? "" : $" {QuantityText.Print(choice.FirstTry.HandHeight.Metres, Unit.Find("cm"))} {choice.Fit} spare {choice.Margins?.HipFlexion?.Value.Degrees:0}";
            Console.WriteLine($"   {ranked.Place,2}{(ranked.TiedWithFirst ? "t" : " ")} {ranked.Candidate.Variant.Id,-19} {ranked.Score,4} [{string.Join(" ", ranked.Points.Select(p => $"{p,2}"))}]{height}; {string.Join(", ", ranked.Wishes.Words.Select(w => $"{w.Key} {w.Value}"))}{(ranked.IsStanding ? " STANDING" : "")}");
            if (withReasons)
                Console.WriteLine("        " + string.Join(", ", ranked.Reasons.GroupBy(r => r.Criterion).OrderBy(g => g.Key).Select(g => $"{book.Criteria[g.Key].Id}: {string.Join(" ", g.Select(r => $"{r.Points:+0;-0} {r.Trace.Rule.Id}"))}")));
        }
        foreach (var exclusion in answer.Excluded)
            Console.WriteLine($"      out {exclusion.Variant.Id}: {string.Join(", ", exclusion.Reasons.Select(r => r.Trace.Rule.Id).Distinct())}");
        foreach (var remark in answer.Remarks)
            Console.WriteLine($"      remark: {remark}");
        if (!withReasons)
            return;
        foreach (var (text, trace) in answer.Cautions)
            Console.WriteLine($"      caution {trace.Rule.Id}: {text}");
        foreach (var (text, trace) in answer.Ranked.Take(1).SelectMany(r => r.Cautions))
            Console.WriteLine($"      caution of the first, {trace?.Rule.Id ?? "variant file"}: {text}");
        foreach (var (say, trace) in answer.Ranked.Take(1).SelectMany(r => r.Cues))
            Console.WriteLine($"      cue {trace.Rule.Id}: {say}");
    }
}
