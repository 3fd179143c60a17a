using HingeSelector.Diagnostics;
using HingeSelector.Quantities;
using HingeSelector.Words;

namespace HingeSelector.Screening;

/// <summary>Holds every number against what can be right and what is usual, and names the likely slip.</summary>
internal static class RangeCheck
{
    /// <summary>Comparisons forgive what conversion between units leaves behind.</summary>
    private const double Tolerance = 1e-9;

    private static readonly Dictionary<string, string> _unitNames = new(StringComparer.Ordinal)
    {
        ["cm"] = "centimetres",
        ["m"] = "metres",
        ["mm"] = "millimetres",
        ["in"] = "inches",
        ["ft"] = "feet",
        ["kg"] = "kilograms",
        ["lb"] = "pounds",
    };

    /// <summary>Checks the answers of one athlete together: a swap is seen only from both sides.</summary>
    public static void Check(IReadOnlyCollection<GivenAnswer> answers, DiagnosticBag bag)
    {
        foreach (var answer in answers.Where(a => a.Word.Kind == WordKind.Number && a.Value.IsKnown))
        {
            var word = answer.Word;
            if (Outside(answer.Value.Low, word.Range))
                Report(Problems.OutOfRange, answer, word.Range!.Value, answers, bag);
            else if (Outside(answer.Value.Low, word.Usual))
                Report(Problems.Unusual, answer, word.Usual!.Value, answers, bag);
        }
    }

    private static void Report(Func<SourceSpan, string, string, string, string, Diagnostic> problem, GivenAnswer answer, (double Low, double High) range, IReadOnlyCollection<GivenAnswer> all, DiagnosticBag bag)
    {
        var word = answer.Word;
        var diagnostic = problem(answer.Typed.Span, Name(answer), word.Print(answer.Value.Low), word.Print(range.Low), word.Print(range.High));
        var hint = Swap(answer, all) ?? OtherUnit(answer) ?? Decimal(answer);
        bag.Add(hint is null ? diagnostic : diagnostic with { Hint = hint });
    }

    private static string Name(GivenAnswer answer) => answer.Word.Sided ? $"{answer.Word.Id} {Sides.Names[answer.Side]}" : answer.Word.Id;

    /// <summary>Two bare numbers that would each be usual in the other's place.</summary>
    private static string? Swap(GivenAnswer answer, IReadOnlyCollection<GivenAnswer> all)
    {
        if (answer.BareNumber is not { } number)
            return null;
        foreach (var other in all)
        {
            if (other.Word == answer.Word || other.BareNumber is not { } otherNumber || !Unusual(other))
                continue;
            if (Usual(other.Word, number * Factor(other)) && Usual(answer.Word, otherNumber * Factor(answer)))
                return $"It looks as if '{answer.Word.Id}' and '{other.Word.Id}' were exchanged.";
        }
        return null;
    }

    /// <summary>A bare number that would be usual in another unit.</summary>
    private static string? OtherUnit(GivenAnswer answer)
    {
        if (answer.BareNumber is not { } number)
            return null;
        foreach (var unit in Unit.All.Where(u => u.Dimension == answer.Word.Dimension && u.Symbol != answer.Assumed?.Symbol))
        {
            if (!Usual(answer.Word, number * unit.Factor))
                continue;
            var text = $"{QuantityText.Print(number, null)} {unit.Symbol}";
            return $"If {_unitNames.GetValueOrDefault(unit.Symbol, unit.Symbol)} were meant, write '{text}' ({answer.Word.Print(number * unit.Factor)}).";
        }
        return null;
    }

    /// <summary>A number that would be usual with its decimal point one place on.</summary>
    private static string? Decimal(GivenAnswer answer)
    {
        var value = answer.Value.Low;
        return Usual(answer.Word, value / 10) && value > 0
            ? $"If a decimal point is missing, {answer.Word.Print(value / 10)} was meant."
            : null;
    }

    private static double Factor(GivenAnswer answer) => answer.Assumed?.Factor ?? 1;

    private static bool Unusual(GivenAnswer answer) => Outside(answer.Value.Low, answer.Word.Range) || Outside(answer.Value.Low, answer.Word.Usual);

    private static bool Usual(Word word, double value) => (word.Usual ?? word.Range) is { } range && !Outside(value, range);

    private static bool Outside(double value, (double Low, double High)? range)
        => range is { } r && (value < r.Low - Tolerance || value > r.High + Tolerance);
}
