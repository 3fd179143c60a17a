using System.Globalization;
using HingeSelector.Posture;
using HingeSelector.Recommending;
using HingeSelector.Rules;

namespace HingeSelector.Rendering;

/// <summary>Writes answers as a table: one row a candidate, excluded ones and athletes without a ranking included.</summary>
/// <remarks>Units stand in the header, as in a roster.</remarks>
public sealed class CsvAnswer
{
    private static readonly string[] _head =
    [
        "id", "name", "on", "outcome", "stop", "see", "unanswered", "status", "place", "tied with first", "variant", "label", "block variant", "score",
    ];

    private static readonly string[] _tail =
    [
        "hand height (cm)", "made by", "height fits from (cm)", "height fits to (cm)", "grip (cm)", "grip fits from (cm)", "grip fits to (cm)", "outside rings (cm)",
        "stance (cm)", "turn-out (deg)", "hands", "straps", "footwear", "lowering", "load", "repetitions", "speed", "fit", "spare hip bend (deg)",
        "held height (cm)", "held less computed (cm)", "reason for", "reason against", "cue", "out because", "rules hash", "philosophy", "tool version",
    ];

    private readonly TextWriter _output;
    private readonly RuleBook _book;
    private readonly SetUpText _words;

    /// <summary>Begins a table.</summary>
    public CsvAnswer(TextWriter output, RuleBook book)
    {
        _output = output;
        _book = book;
        _words = new SetUpText(book);
        Row([.. _head, .. book.Criteria.Select(c => $"points {c.Id}"), .. _tail]);
    }

    /// <summary>Adds the rows of one athlete.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="top">How many candidates at most.</param>
    public void Add(Recommendation answer, int top)
    {
        foreach (var ranked in answer.Ranked.Take(top))
            Row([.. Who(answer), .. Ranked(answer, ranked), .. Behind(ranked), "", .. Stamp(answer.Stamp)]);
        var empty = Enumerable.Repeat("", _book.Criteria.Count + _tail.Length - 4);
        foreach (var out_ in answer.Excluded)
            Row([.. Who(answer), "excluded", "", "", out_.Variant.Id, Text(out_.Variant.Label), "", "", .. empty, Text(out_.Reasons[0].Why), .. Stamp(answer.Stamp)]);
        if (answer.Ranked.Count + answer.Excluded.Count == 0)
            Row([.. Who(answer), "none", "", "", "", "", "", "", .. empty, "", .. Stamp(answer.Stamp)]);
    }

    /// <summary>A text that no spreadsheet takes for a formula.</summary>
    public static string Text(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return "";
        return text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
    }

    private static IEnumerable<string> Who(Recommendation answer) =>
    [
        Text(answer.Athlete.Id), Text(answer.Athlete.Name), StampText.Date(answer.Stamp.On), OutcomeText.Word(answer.Outcome),
        Text(string.Join(" ", answer.Stops.Select(s => s.Say))), Text(string.Join(" ", answer.Stops.Select(s => s.See).Distinct())), string.Join(" + ", answer.Unanswered.Select(q => q.Word)),
    ];

    private IEnumerable<string> Ranked(Recommendation answer, RankedCandidate ranked) =>
    [
        "ranked", Number(ranked.Place), YesNo(ranked.TiedWithFirst), ranked.Candidate.Variant.Id, Text(ranked.Candidate.Variant.Label), YesNo(ranked.IsStanding), Number(ranked.Score),
        .. ranked.Points.Select(Number),
        .. Place(answer, ranked),
    ];

    private IEnumerable<string> Place(Recommendation answer, RankedCandidate ranked)
    {
        var (candidate, choice) = (ranked.Candidate, ranked.Candidate.Choice);
        var held = HeldSeen.In(_book, answer, candidate);
        return
        [
            Cm(choice?.Heights.FirstTry.Metres), choice is null ? "" : Text(candidate.Heights?.MadeBy(choice.Heights.FirstTry.Metres)), Cm(choice?.Heights.Fitting?.From.Metres), Cm(choice?.Heights.Fitting?.To.Metres),
            Cm(choice?.Grips.FirstTry.Metres), Cm(choice?.Grips.Fitting?.From.Metres), Cm(choice?.Grips.Fitting?.To.Metres),
            choice is not null && VariantFacts.OnStraightBar(_book, candidate.Variant) ? Cm(_words.OutsideRing(choice.FirstTry.Grip).Metres) : "",
            Cm(choice?.FirstTry.Stance.Metres), Decimal(choice?.FirstTry.TurnOut.Degrees), VariantFacts.Of(_book, candidate.Variant, "grip"),
            _words.StrapsWord(ranked), ranked.Wishes.Word("footwear"), ranked.Wishes.Word("lowering"), ranked.Wishes.Word("load"), ranked.Wishes.Word("repetitions"), ranked.Wishes.Word("speed"),
            choice?.Fit switch { Fit.Fits => "yes", Fit.DoesNotFit => "no", _ => "" }, Decimal(choice?.Margins?.HipFlexion?.Value.Degrees),
            Cm(held?.Height), Cm(held?.LessComputed),
        ];
    }

    private static IEnumerable<string> Behind(RankedCandidate ranked) =>
    [
        Text(ranked.Reasons.FirstOrDefault(r => r.Points > 0)?.Trace.Rule.Because),
        Text(ranked.Reasons.FirstOrDefault(r => r.Points < 0)?.Trace.Rule.Because),
        Text(ranked.Cues.Count > 0 ? ranked.Cues[0].Say : ""),
    ];

    private static IEnumerable<string> Stamp(Stamp stamp) => [stamp.Rules, stamp.Philosophy, stamp.Tool];

    private void Row(IEnumerable<string> cells) => _output.Write(string.Join(',', cells.Select(Quoted)) + "\r\n");

    private static string Quoted(string cell)
        => cell.AsSpan().ContainsAny(",\"\r\n") ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;

    private static string YesNo(bool yes) => yes ? "yes" : "no";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Cm(double? metres) => Decimal(metres * 100);

    private static string Decimal(double? number) => number is { } n ? (Math.Round(n, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture) : "";
}
