using HingeSelector.Cli.Frame;
using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;

namespace HingeSelector.Cli.Choosing;

/// <summary>Reads the files of <c>choose</c>. Faults of all files are collected, so that one run shows them all.</summary>
internal sealed class ChooseInput
{
    private readonly RuleBook _book;
    private readonly ChooseRequest _request;
    private readonly Philosophy _philosophy;
    private readonly DiagnosticBag _bag = new();
    private readonly Room? _room;
    private readonly IReadOnlyDictionary<string, StandingChoice>? _standing;
    private readonly PhilosophyDecisions _decisions = PhilosophyDecisions.None;

    /// <summary>Reads everything.</summary>
    /// <exception cref="UsageException">The philosophy, variant or athlete of the command line does not exist.</exception>
    /// <exception cref="FaultyInputException">A file is faulty, or nobody on the roster could be read.</exception>
    public ChooseInput(ChooseRequest request, RuleBook book, Surroundings around)
    {
        (_book, _request) = (book, request);
        _philosophy = Philosophies.Named(book, request.Philosophy);
        Why = request.Typed.Why is { } why ? VariantOf(why) : null;
        _room = request.Typed.Room is { } room ? RoomReader.Read(TextFiles.Read(room, around), _bag) : null;
        if (request.Typed.Standing is { } standing)
        {
            var source = TextFiles.Read(standing, around);
            _standing = StandingReader.Read(source, [.. book.Variants.Select(v => v.Id)], request.On, _bag);
            _decisions = PhilosophyDecisionsReader.Read(source, [.. book.Philosophies.Keys], _bag);
        }
        var filesAreBad = _bag.HasErrors;
        Athletes = request.Typed.Screen is { } screen ? ReadScreen(TextFiles.Read(screen, around)) : ReadRoster(TextFiles.Read(request.Typed.Roster!, around));
        if (filesAreBad || (_bag.HasErrors && (Athletes.Count == 0 || request.Typed.Screen is not null)))
            throw new FaultyInputException(ExitCode.BadInput, _bag.Sorted);
        PickAthlete();
    }

    /// <summary>Who is answered.</summary>
    public IReadOnlyList<AthleteRecord> Athletes { get; private set; }

    /// <summary>The variant to explain; null without --why.</summary>
    public Variant? Why { get; }

    /// <summary>Rows of the roster that could not be read.</summary>
    public int BadRows { get; private set; }

    /// <summary>Every fault and warning.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics => _bag.Sorted;

    /// <summary>The question about one athlete.</summary>
    public Question About(AthleteRecord athlete)
    {
        // What the command line asks for goes before what is of record.
        var decision = _request.Typed.Philosophy is null ? _decisions.InForce(athlete, _request.On) : null;
        return new Question(athlete, _room, _standing?.GetValueOrDefault(athlete.Id), decision is null ? _philosophy : _book.Philosophies[decision.Philosophy], _request.On, decision);
    }

    private Variant VariantOf(string id)
        => _book.Variants.FirstOrDefault(v => v.Id == id) ?? throw new UsageException($"There is no variant '{id}'.", Slip.DidYouMeanOneOf(id, [.. _book.Variants.Select(v => v.Id)]));

    private IReadOnlyList<AthleteRecord> ReadScreen(SourceText source)
        => ScreenReader.Read(source, _book.Vocabulary, _request.On, _bag) is { } record ? [record] : [];

    private IReadOnlyList<AthleteRecord> ReadRoster(SourceText source)
    {
        var result = RosterReader.Read(source, _book.Vocabulary, _request.On, _bag);
        BadRows = result.BadRows.Count;
        var known = result.Good.Select(a => a.Id).Concat(result.BadRows.Select(r => r.Id).OfType<string>()).ToHashSet(StringComparer.Ordinal);
        foreach (var choice in (_standing?.Values ?? []).Where(c => result.HeaderRead && !known.Contains(c.Athlete)))
            _bag.Add(Problems.UnknownAthlete(choice.Span, choice.Athlete));
        if (result.HeaderRead)
            ReportDecidedForNobody(known, result.Good.Select(PhilosophyDecisions.GroupOf).OfType<string>().ToHashSet(StringComparer.Ordinal));
        return result.Good;
    }

    private void ReportDecidedForNobody(IReadOnlyCollection<string> athletes, IReadOnlyCollection<string> groups)
    {
        foreach (var decision in _decisions.All)
        {
            if (decision.Athlete is { } id && !athletes.Contains(id))
                _bag.Add(Problems.DecidedForNobody(decision.Span, "athlete", id, athletes));
            if (decision.TrainingGroup is { } group && !groups.Contains(group))
                _bag.Add(Problems.DecidedForNobody(decision.Span, "training group", group, groups));
        }
    }

    private void PickAthlete()
    {
        if (_request.Typed.Athlete is not { } id)
            return;
        var found = Athletes.FirstOrDefault(a => a.Id == id);
        if (found is not null)
        {
            Athletes = [found];
            return;
        }
        // Someone whose row is faulty is not a slip of the command line.
        throw BadRows > 0 && Slip.DidYouMean(id, [.. Athletes.Select(a => a.Id)]) is null
            ? new FaultyInputException(ExitCode.BadInput, _bag.Sorted)
            : new UsageException($"No athlete '{id}' is on this roster.", Slip.DidYouMeanOneOf(id, [.. Athletes.Select(a => a.Id)]));
    }
}
