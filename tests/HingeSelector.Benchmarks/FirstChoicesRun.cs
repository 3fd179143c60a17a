using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Evaluating;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary>Who is first how often over the people of the survey, and which rules fire for nobody or for everybody.</summary>
internal static class FirstChoicesRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], System.Globalization.CultureInfo.InvariantCulture) : int.MaxValue;
        var philosophy = args.Length > 1 ? args[1] : "balanced";
        var book = RepositoryFiles.Book;
        var rooms = new[] { "content/demo/room.yaml", "content/demo/room.yaml", "content/demo/room-without-blocks.yaml" }
            .Select(p => RoomReader.Read(RepositoryFiles.Source(p), new DiagnosticBag())).ToList();
        var selector = new Selector(book, new LoopEvaluator(book));
        var first = new Dictionary<string, int>();
        var outcomes = new Dictionary<Outcome, int>();
        var fired = new int[book.Rules.Count];
        var (ranked, people, tied) = (0, 0, 0);
        foreach (var athlete in SurveyPeople.Draw(book.Vocabulary, _day, 20261124, most))
        {
            var answer = selector.Choose(new Question(athlete, rooms[people % rooms.Count], null, book.Philosophies[philosophy], _day));
            people++;
            outcomes[answer.Outcome] = outcomes.GetValueOrDefault(answer.Outcome) + 1;
            foreach (var rule in answer.Fired.Select(f => f.Rule).Distinct())
                fired[rule]++;
            if (answer.Ranked.Count == 0)
                continue;
            ranked++;
            tied += answer.Ranked[0].TiedWithFirst ? 1 : 0;
            first[answer.Ranked[0].Candidate.Variant.Id] = first.GetValueOrDefault(answer.Ranked[0].Candidate.Variant.Id) + 1;
        }
        Console.WriteLine($"{people} people, {ranked} ranked, {tied} with a tie in front; philosophy {philosophy}; {string.Join(", ", outcomes.Select(o => $"{o.Key} {o.Value}"))}");
        foreach (var variant in book.Variants.OrderByDescending(v => first.GetValueOrDefault(v.Id)))
            Console.WriteLine($"{variant.Id,-20} {first.GetValueOrDefault(variant.Id),6} {100.0 * first.GetValueOrDefault(variant.Id) / Math.Max(1, ranked),6:0.0} %");
        var stops = book.Rules.Where(r => r.Conclusions.Any(c => c is StopConclusion { Level: not StopLevel.Today })).Select(r => r.Index).ToHashSet();
        Console.WriteLine("never fires here: " + string.Join(", ", book.Rules.Where(r => fired[r.Index] == 0 && !stops.Contains(r.Index)).Select(r => r.Id)));
        Console.WriteLine("fires for everyone: " + string.Join(", ", book.Rules.Where(r => fired[r.Index] == people).Select(r => r.Id)));
        return 0;
    }
}
