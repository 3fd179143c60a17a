using System.Numerics;
using HingeSelector.Diagnostics;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Gathers what one file or row says about one athlete and turns it into a record.</summary>
/// <remarks>Screens in YAML and rows of a roster differ only in how they are written; everything that judges them is here.</remarks>
internal sealed class RecordDraft(Vocabulary vocabulary, DateOnly on, DiagnosticBag bag)
{
    private readonly Dictionary<AnswerKey, GivenAnswer> _given = [];
    private readonly List<BlanketAnswer> _blankets = [];
    private readonly List<Clearance> _clearances = [];
    private readonly List<GivenHeld> _held = [];

    /// <summary>Head of the athlete section.</summary>
    public SectionHead Athlete { get; } = new();

    /// <summary>Head of the screen section.</summary>
    public SectionHead Screen { get; } = new();

    /// <summary>Head of the day section.</summary>
    public SectionHead Day { get; } = new();

    /// <summary>How this kind of file names the place of the screen's date, for a message.</summary>
    public string WhereScreenDate { get; init; } = "Add a line 'date: 2026-11-24' under 'screen:'.";

    /// <summary>How this kind of file names the place of the day's date, for a message.</summary>
    public string WhereDayDate { get; init; } = "Write the day of asking as 'date:' under 'day:'.";

    /// <summary>The head of a section.</summary>
    public SectionHead Head(WordAbout about) => about switch
    {
        WordAbout.Athlete => Athlete,
        WordAbout.Screen => Screen,
        _ => Day,
    };

    /// <summary>Takes an answer; not measured is the same as absent.</summary>
    public void Add(GivenAnswer answer)
    {
        var key = new AnswerKey(answer.Word.Id, answer.Side);
        if (answer.Value.State == FactState.NotMeasured)
            return;
        if (_given.TryGetValue(key, out var first))
            bag.Add(Problems.AnsweredTwice(answer.Key, answer.Word.Id, first.Key));
        else
            _given.Add(key, answer);
    }

    /// <summary>Takes a blanket answer; null is nothing said.</summary>
    public void Add(BlanketAnswer? blanket)
    {
        if (blanket is not null)
            _blankets.Add(blanket);
    }

    /// <summary>Takes a clearance; null is a faulty one.</summary>
    public void Add(Clearance? clearance)
    {
        if (clearance is not null)
            _clearances.Add(clearance);
    }

    /// <summary>Takes one of several held heights; null is a faulty one.</summary>
    public void Add(GivenHeld? held)
    {
        if (held is not null)
            _held.Add(held);
    }

    /// <summary>Checks the whole and makes the record. The caller discards it when there were faults.</summary>
    public AthleteRecord Finish(string id)
    {
        RangeCheck.Check(_given.Values, bag);
        foreach (var held in _held)
            RangeCheck.Check(held.Answers, bag);
        TakeHeldTogether();
        RequireScreenDate();
        var day = DayDate();
        var answers = new Dictionary<AnswerKey, Answer>();
        foreach (var (key, given) in _given)
            answers.Add(key, AnswerOf(given, day));
        foreach (var blanket in _blankets)
            Spread(blanket, blanket.Date ?? day, answers);
        ClearanceCheck.Check(_clearances, answers.GetValueOrDefault(new AnswerKey(ClearanceTerms.About, 0)), vocabulary.Find(ClearanceTerms.About), bag);
        return new AthleteRecord
        {
            Id = id,
            Name = answers.GetValueOrDefault(new AnswerKey("name", 0)) is { Value.IsKnown: true } name ? name.Typed : null,
            ScreenDate = Screen.Date,
            Answers = answers,
            Clearances = _clearances,
            HeldHeights = [.. _held.OrderBy(h => h.Variant).Select(h => new HeldEntry(h.Variant, h.Answers.ToDictionary(a => a.Word.Id, a => AnswerOf(a, day))))],
        };
    }

    private Answer AnswerOf(GivenAnswer given, DateOnly day)
    {
        var date = given.Extras.On ?? SectionDate(given.Word.About, day);
        return new Answer(given.Value, date, given.Extras.Until, given.Extras.By ?? Head(given.Word.About).By, given.Typed.Text.Trim(), given.Typed.Span);
    }

    /// <summary>
    /// A single held height beside a list is one more of the list; without a single one the first of the list stands for it,
    /// so that what asks whether anything was seen at the bar need not know of lists.
    /// </summary>
    private void TakeHeldTogether()
    {
        if (_held.Count == 0)
            return;
        if (_given.GetValueOrDefault(new AnswerKey(HeldWords.Variant, 0)) is { Value.IsKnown: true } seenIn)
        {
            var words = HeldWords.Parts.Select(p => p.Word).Prepend(HeldWords.Height);
            _held.Add(new GivenHeld(BitOperations.TrailingZeroCount(seenIn.Value.Bits), [.. words.Select(w => _given.GetValueOrDefault(new AnswerKey(w, 0))).OfType<GivenAnswer>()], seenIn.Key));
        }
        var pulls = vocabulary[HeldWords.Variant].Values;
        foreach (var twice in _held.GroupBy(h => h.Variant).SelectMany(g => g.Skip(1)))
            bag.Add(Problems.HeldTwice(twice.Span, pulls[twice.Variant]));
        var first = _held.MinBy(h => h.Variant)!;
        if (_given.ContainsKey(new AnswerKey(HeldWords.Height, 0)) || _given.ContainsKey(new AnswerKey(HeldWords.Variant, 0)))
            return;
        var pull = new Typed(pulls[first.Variant], true, first.Span);
        Add(new GivenAnswer(vocabulary[HeldWords.Variant], 0, FactValue.Choice(first.Variant), pull, null, first.Span) { Extras = first.Answers[0].Extras });
        foreach (var answer in first.Answers)
            _given.TryAdd(new AnswerKey(answer.Word.Id, 0), answer);
    }

    /// <summary>Answers without a date cannot grow old, so a screen needs one.</summary>
    private void RequireScreenDate()
    {
        if (Screen.Date is not null || Screen.Faulty)
            return;
        var undated = _given.Values.FirstOrDefault(g => g.Word.About == WordAbout.Screen && g.Extras.On is null);
        if (undated is not null)
            bag.Add(Problems.ScreenWithoutDate(undated.Key, WhereScreenDate));
    }

    /// <summary>
    /// The day of the day's answers. Without a date of its own it is the latest date that the file itself names, so that
    /// an old file opened today never passes for today's answers; only a file without any date is taken as today's.
    /// </summary>
    private DateOnly DayDate()
    {
        if (Day.Date is { } said)
            return said;
        var dates = _blankets.Select(b => b.Date)
            .Concat(_given.Values.Where(g => g.Word.About == WordAbout.Day).Select(g => g.Extras.On))
            .OfType<DateOnly>().ToList();
        var day = dates.Count > 0 ? dates.Max() : Screen.Date ?? Athlete.Date ?? on;
        var undated = _given.Values.FirstOrDefault(g => g.Word.About == WordAbout.Day && g.Extras.On is null);
        if (day != on && undated is not null && !Day.Faulty)
            bag.Add(Problems.DayDateTaken(undated.Key, Dates.Print(day), Dates.Print(on), WhereDayDate));
        return day;
    }

    private DateOnly SectionDate(WordAbout about, DateOnly day) => about switch
    {
        WordAbout.Athlete => Athlete.Date ?? Screen.Date ?? day,
        WordAbout.Screen => Screen.Date ?? on,
        _ => day,
    };

    /// <summary>Gives the blanket's answer to the words that were in force on its day and have no answer of their own.</summary>
    private void Spread(BlanketAnswer blanket, DateOnly date, Dictionary<AnswerKey, Answer> answers)
    {
        foreach (var word in vocabulary.InGroup(blanket.Group.Id).Where(w => w.InForceFrom <= date))
        {
            var value = blanket.Refused
                ? FactValue.Unknown(FactState.Refused)
                : AnswerText.Read(word, new Typed(blanket.Group.Means!, true, blanket.Typed.Span), bag);
            if (value is null)
                continue;
            for (var side = 0; side <= (word.Sided ? 1 : 0); side++)
                answers.TryAdd(new AnswerKey(word.Id, side), new Answer(value.Value, date, null, blanket.By ?? Day.By, blanket.Typed.Text.Trim(), blanket.Typed.Span));
        }
    }
}
