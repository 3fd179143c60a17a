using System.Globalization;
using HingeSelector.Candidates;
using HingeSelector.Diagnostics;
using HingeSelector.Posture;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Tests.Population;
using HingeSelector.Tests.Support;

namespace HingeSelector.Benchmarks;

/// <summary>
/// For how many people of the survey each variant starts above its standard height when the joints decide, with the parameter set beside
/// it: the default, and each leading parameter at both ends of its range. Ranges of motion are drawn, so the shares say how the model
/// behaves and not how people are.
/// </summary>
internal static class PopulationRun
{
    private static readonly DateOnly _day = new(2026, 11, 24);
    private static readonly string[] _leading = ["reach-allowance", "trunk-chord-factor", "lumbar-share", "hamstring-slope"];

    public static int Run(string[] args)
    {
        var most = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : int.MaxValue;
        var book = RepositoryFiles.Book;
        var room = RoomReader.Read(RepositoryFiles.Source("content/demo/room.yaml"), new DiagnosticBag());
        var people = SurveyPeople.Draw(book.Vocabulary, _day, SurveyPeople.Seed, most).ToList();
        var variants = book.Variants.Where(v => v.Posture is not null).ToList();
        Console.WriteLine($"{people.Count} people; share with a first try above the standard height / without any fitting height, in %");
        Console.WriteLine($"{"parameters",-34}" + string.Concat(variants.Select(v => $"{v.Id[..Math.Min(12, v.Id.Length)],14}")));
        Print("default", book, people, room, variants);
        foreach (var id in _leading)
        {
            var range = book.Model.Parameters.RangeOf(id);
            foreach (var value in new[] { range.Low, range.High })
            {
                var other = book with { Model = book.Model with { Parameters = book.Model.Parameters.With(id, value) } };
                Print(string.Create(CultureInfo.InvariantCulture, $"{id} {value:0.###}"), other, people, room, variants);
            }
        }
        return 0;
    }

    private static void Print(string name, RuleBook book, List<AthleteRecord> people, Room? room, List<Knowledge.Variant> variants)
    {
        var raised = new int[book.Variants.Count];
        var without = new int[book.Variants.Count];
        var known = 0;
        var wishes = new SetUpWishes { LowestThatFits = true };
        foreach (var athlete in people)
        {
            var builder = new CandidateBuilder(book, FactTable.Build(athlete, book.Vocabulary, _day, room), room);
            if (builder.Body is not Body.KnownBody)
                continue;
            known++;
            foreach (var candidate in variants.Select(v => builder.WithChoice(builder.Standard(v), wishes)))
            {
                raised[candidate.Variant.Index] += candidate.Choice!.Reasons.Contains(ChoiceReason.RaisedAboveStandard) ? 1 : 0;
                without[candidate.Variant.Index] += candidate.Choice.Reasons.Contains(ChoiceReason.NothingFits) ? 1 : 0;
            }
        }
        Console.WriteLine($"{name,-34}" + string.Concat(variants.Select(v => string.Create(CultureInfo.InvariantCulture, $"{100.0 * raised[v.Index] / known,8:0.0} /{100.0 * without[v.Index] / known,4:0.0}"))));
    }
}
