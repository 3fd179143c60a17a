using System.Text.RegularExpressions;
using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Screening;
using HingeSelector.Words;

namespace HingeSelector.Explaining;

/// <summary>Reads changes such as <c>hip-flexion left=110 deg</c> with the faults and hints of a screen.</summary>
internal sealed partial class WhatIfReader(RuleBook book, Question question, DiagnosticBag bag)
{
    private const string Both = "both";

    private static readonly string[] _sides = ["left", "right", Both];

    private readonly FactValue[] _facts = Candidates.AthleteFacts.Gather(book, question.Athlete, question.On, question.Room);
    private readonly List<GivenAnswer> _given = [];

    /// <summary>Reads every change; faults are in the bag.</summary>
    public IReadOnlyList<WhatIfChange> Read(IReadOnlyList<string> texts)
    {
        var changes = new List<WhatIfChange>();
        for (var i = 0; i < texts.Count; i++)
        {
            if (Read(new SourceText($"argument-{i + 1}", texts[i]), texts[i]) is not { } change)
                continue;
            if (changes.Any(c => c.Word == change.Word && (c.Side == change.Side || c.Side == Both || change.Side == Both)))
                bag.Add(Problems.WhatIfTwice(change.Span, change.Word.Id));
            changes.Add(change);
        }
        RangeCheck.Check(_given, bag);
        return changes;
    }

    private WhatIfChange? Read(SourceText source, string text)
    {
        var match = Form().Match(text);
        if (!match.Success)
        {
            bag.Add(Problems.BadWhatIf(new SourceSpan(source, 0, 0, text.Length), text));
            return null;
        }
        var (name, side) = (match.Groups["word"], match.Groups["side"]);
        var at = new SourceSpan(source, 0, name.Index, name.Length);
        if (Find(name.Value, at) is not { } word || SideOf(word, side, at, source) is not { } sideName)
            return null;
        var typed = new Typed(match.Groups["value"].Value, false, new SourceSpan(source, 0, match.Groups["value"].Index, Math.Max(1, match.Groups["value"].Length)));
        if (AnswerText.Read(word, typed, bag) is not { } value)
            return null;
        if (word.IsMeasured)
            _given.Add(new GivenAnswer(word, sideName == _sides[1] ? 1 : 0, value, typed, word.Unit, at));
        return new WhatIfChange(word, word.Sided ? sideName : null, value, Now(word, sideName), word.Print(value), typed.Span) { Before = Before(word, sideName) };
    }

    private Word? Find(string name, SourceSpan at)
    {
        var word = book.Vocabulary.Find(name);
        if (word is { IsMeasured: true, Kind: not (WordKind.Text or WordKind.Date) })
            return word;
        if (word is { About: WordAbout.Room } && name != "room-can-raise-a-bar")
        {
            if (question.Room is not null)
                return word;
            bag.Add(Problems.WhatIfWithoutRoom(at, name));
            return null;
        }
        bag.Add(word is null
            ? Problems.UnknownWord(at, name, [.. book.Vocabulary.Words.Where(w => w.IsMeasured || w.About == WordAbout.Room).Select(w => w.Id)])
            : Problems.NotTyped(at, name, word.IsMeasured ? "changes no answer" : AnswerText.WhyNotTyped(word)));
        return null;
    }

    // Empty stands for a word without sides.
    private string? SideOf(Word word, Group side, SourceSpan at, SourceText source)
    {
        if (!word.Sided)
        {
            if (!side.Success)
                return "";
            bag.Add(Problems.NoSidesExpected(new SourceSpan(source, 0, side.Index, side.Length), word.Id));
            return null;
        }
        if (!side.Success)
        {
            bag.Add(Problems.SidesExpected(at, word.Id) with { Hint = $"Write '{word.Id} left=...', '{word.Id} right=...' or '{word.Id} both=...'." });
            return null;
        }
        if (_sides.Contains(side.Value))
            return side.Value;
        bag.Add(Problems.BadReading(new SourceSpan(source, 0, side.Index, side.Length), word.Id, side.Value, _sides));
        return null;
    }

    private FactValue[] Before(Word word, string side) => side switch
    {
        Both => [_facts[word.Slot], _facts[word.Slot + 1]],
        _ => [_facts[word.Slot + (side == _sides[1] ? 1 : 0)]],
    };

    private string Now(Word word, string side) => side switch
    {
        Both => $"left {word.Print(_facts[word.Slot])}, right {word.Print(_facts[word.Slot + 1])}",
        _ => word.Print(_facts[word.Slot + (side == _sides[1] ? 1 : 0)]),
    };

    [GeneratedRegex(@"^\s*(?<word>[^=,.\s]+)(?:[,.\s]\s*(?<side>[^=,.\s]+))?\s*=\s*(?<value>.*?)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
