using HingeSelector.Cli.Frame;
using HingeSelector.Comparing;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Cli.Comparing;

/// <summary>Reads a roster with the words of one rule book or another.</summary>
internal sealed class SquadFiles
{
    private readonly SquadOptions _options;
    private readonly SourceText _roster;
    private readonly SourceText? _standing;
    private readonly Room? _room;
    private readonly DiagnosticBag _bag = new();

    /// <summary>Opens the files.</summary>
    /// <exception cref="FaultyInputException">One cannot be opened, or the room is faulty.</exception>
    public SquadFiles(SquadOptions options, Surroundings around)
    {
        _options = options;
        _room = options.Room is { } room ? RoomReader.Read(TextFiles.Read(room, around), _bag) : null;
        _standing = options.Standing is { } standing ? TextFiles.Read(standing, around) : null;
        _roster = TextFiles.Read(options.Roster, around);
    }

    /// <summary>Every fault and warning so far.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics => _bag.Sorted;

    /// <summary>How many rows could not be read, with the words that could read fewest.</summary>
    public int BadRows { get; private set; }

    /// <summary>One side: a rule book, and the squad by its words.</summary>
    /// <param name="book">The rules.</param>
    /// <param name="sameWords">The squad as read with the same words; null to read it.</param>
    /// <param name="other">The words of the other version; columns that only they know are passed over.</param>
    /// <param name="philosophy">The philosophy asked for; null for the one of record.</param>
    /// <exception cref="FaultyInputException">Nobody could be read, or a file beside the roster is faulty.</exception>
    public Side Side(RuleBook book, Squad? sameWords, Vocabulary? other, string? philosophy)
    {
        var bag = new DiagnosticBag();
        var (side, badRows) = Read(book, sameWords, other, philosophy, bag);
        foreach (var fault in bag.Sorted)
            _bag.Add(fault);
        if (side.Squad.Athletes.Count == 0 || (_bag.HasErrors && BadRows + badRows == 0))
            throw new FaultyInputException(ExitCode.BadInput, _bag.Sorted);
        BadRows = Math.Max(BadRows, badRows);
        return side;
    }

    /// <summary>A side of rules that no file holds as they are, such as one edit made alone: what its words cannot read is left out. May be called side by side.</summary>
    public Side Trial(RuleBook book, Squad? sameWords, Vocabulary? other, string? philosophy) => Read(book, sameWords, other, philosophy, new DiagnosticBag()).Side;

    private (Side Side, int BadRows) Read(RuleBook book, Squad? sameWords, Vocabulary? other, string? philosophy, DiagnosticBag bag)
    {
        var standing = _standing is null ? null : StandingReader.Read(_standing, [.. book.Variants.Select(v => v.Id)], _options.On, bag);
        var decisions = _standing is null ? PhilosophyDecisions.None : PhilosophyDecisionsReader.Read(_standing, [.. book.Philosophies.Keys], bag);
        var roster = sameWords is null ? RosterReader.Read(_roster, book.Vocabulary, _options.On, bag, other) : null;
        Question About(AthleteRecord athlete)
        {
            var decision = philosophy is null ? decisions.InForce(athlete, _options.On) : null;
            return new Question(athlete, _room, standing?.GetValueOrDefault(athlete.Id), book.Philosophies[decision?.Philosophy ?? philosophy ?? Philosophies.Default], _options.On, decision);
        }
        return (new Side(book, new Squad(sameWords?.Athletes ?? roster!.Good, About), EngineOfRecord.For), roster?.BadRows.Count ?? 0);
    }
}
