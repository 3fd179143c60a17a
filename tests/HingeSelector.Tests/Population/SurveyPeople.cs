using System.Globalization;
using HingeSelector.Diagnostics;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;
using HingeSelector.Words;

namespace HingeSelector.Tests.Population;

/// <summary>
/// The people of the 2012 survey as athletes: bodies as measured; ranges, needs and days drawn from published spreads where there are
/// any and from stated guesses where there are none. Seeded: the same people every time.
/// </summary>
/// <remarks>
/// The shares of rare facts are guesses made so that every rule meets somebody; they are no claim about throwers. Who is drawn as under
/// 18 keeps the body of a small grown-up, with all segments measured: the survey says nothing about bodies that grow.
/// </remarks>
internal sealed partial class SurveyPeople
{
    /// <summary>The seed of the people that measured figures speak of.</summary>
    public const int Seed = 20261124;

    private const double HoursPerYear = 24 * 365.25;
    private const double Minors = 0.07;

    private readonly Vocabulary _vocabulary;
    private readonly DateOnly _on;
    private readonly Random _random;
    // Rare pairs of facts are drawn apart, so that adding one leaves everybody else as drawn.
    private readonly Random _pairs;

    private SurveyPeople(Vocabulary vocabulary, DateOnly on, int seed)
    {
        _vocabulary = vocabulary;
        _on = on;
        _random = new Random(seed);
        _pairs = new Random(~seed);
    }

    /// <summary>All people, or the first so many.</summary>
    public static IEnumerable<AthleteRecord> Draw(Vocabulary vocabulary, DateOnly on, int seed, int most = int.MaxValue)
    {
        var people = new SurveyPeople(vocabulary, on, seed);
        var lines = File.ReadLines(Path.Combine(RepositoryFiles.Root, "tests/data/ansur2/ansur2_dev.csv"));
        string[]? header = null;
        var drawn = 0;
        foreach (var line in lines)
        {
            var cells = line.Split(',');
            if (header is null)
            {
                header = cells;
                continue;
            }
            if (drawn++ >= most)
                yield break;
            yield return people.Person(header, cells);
        }
    }

    private AthleteRecord Person(string[] header, string[] cells)
    {
        string Cell(string name) => cells[Array.IndexOf(header, name)];
        double Metres(string name) => double.Parse(Cell(name), CultureInfo.InvariantCulture) / 1000;

        var answers = new Dictionary<AnswerKey, Answer>();
        var female = Cell("sex") == "F";
        var mass = double.Parse(Cell("weight_kg"), CultureInfo.InvariantCulture);
        var stature = Metres("stature");
        var minor = stature < 1.78 && Chance(Minors);
        Choose(answers, "sex", female ? "female" : "male");
        Put(answers, "age", (minor ? 12 + (6 * _random.NextDouble()) : double.Parse(Cell("age"), CultureInfo.InvariantCulture)) * HoursPerYear);
        // A few are taller or smaller than anybody in the survey, and a few would not be measured at all.
        if (!Chance(0.01))
            Put(answers, "stature", Chance(0.01) ? Pick(1.40, 2.12) : stature);
        if (!Chance(0.02))
            Put(answers, "mass", mass);
        Choose(answers, "limb-difference", Chance(0.01) ? "yes" : "no");
        if (minor || Chance(0.5))
        {
            // Differences of heights as in the reference table; the arm as acromion to bent elbow and elbow to grip, which is how the model takes it.
            Put(answers, "thigh-length", Metres("trochanterionheight") - Metres("lateralfemoralepicondyleheight"));
            Put(answers, "shank-length", Metres("lateralfemoralepicondyleheight") - Metres("lateralmalleolusheight"));
            Put(answers, "trunk-length", Metres("acromialheight") - Metres("trochanterionheight"));
            Put(answers, "arm-length", Metres("acromionradialelength") + Metres("radialestylionlength") + GripBeyondWrist);
        }
        if (minor)
            Minor(answers, stature);
        Who(answers, female, mass, minor);
        Ranges(answers, female);
        HeldHeight(answers);
        Day(answers);
        RarePairs(answers);
        return new AthleteRecord { Id = Cell("pid"), ScreenDate = _on, Answers = answers, Clearances = Clearances(answers) };
    }

    // Centre of the gripped rod beyond the wrist, by eye on hand lengths of 18 to 19 cm: a guess.
    private const double GripBeyondWrist = 0.075;

    private void Minor(Dictionary<AnswerKey, Answer> answers, double stature)
    {
        Choose(answers, "guardian-consent", Chance(0.97) ? "yes" : "no");
        Choose(answers, "qualified-adult-present", Chance(0.94) ? "yes" : "no");
        if (Chance(0.3))
            Put(answers, "stature-now", stature + Pick(0.0, 0.01, 0.02, 0.03));
    }

    private void Who(Dictionary<AnswerKey, Answer> answers, bool female, double mass, bool minor)
    {
        var (sport, roles) = Pick<(string, string[])>(
            ("baseball", ["starting-pitcher", "relief-pitcher", "position-player"]),
            ("softball", ["starting-pitcher", "position-player"]),
            ("javelin", ["javelin-thrower"]),
            ("cricket", ["fast-bowler", "slow-bowler"]),
            ("handball", ["back-court", "wing", "pivot", "goalkeeper"]));
        Choose(answers, "sport", sport);
        Choose(answers, "role", Pick(roles));
        Choose(answers, "throws-hard", Pick("most-days", "on-call", "set-days", "set-days", "set-days", "rarely"));
        Choose(answers, "throwing-side", Chance(0.8) ? "right" : "left");
        Choose(answers, "health-questionnaire", Chance(0.99) ? "clear" : Pick("asks-for-follow-up", "not-done"));
        Choose(answers, "let-go-drill", Chance(0.6) ? "yes" : "no");
        var years = minor ? 3 * _random.NextDouble() : Math.Clamp(Math.Exp(Normal(0.8, 0.9)), 0, 20);
        if (Chance(0.04))
            years = 0.3 * _random.NextDouble();
        Put(answers, "training-age", years * HoursPerYear);
        PutSet(answers, "history", History(female, minor));
        var taught = 0UL;
        for (var i = 0; i < _vocabulary["pulled-before"].Values.Count; i++)
            taught |= Chance(Math.Min(0.85, 0.1 + (years * 0.15))) ? 1UL << i : 0;
        PutSet(answers, "pulled-before", taught);
        Choose(answers, "open-referral", Chance(0.004) ? "yes" : "no");
        // Some come as strangers: nobody has said what they were taught.
        if (Chance(0.03))
            answers.Remove(new AnswerKey("training-age", 0));
        if (Chance(0.03))
            answers.Remove(new AnswerKey("pulled-before", 0));
        if (Chance(0.01))
        {
            answers.Remove(new AnswerKey("training-age", 0));
            answers.Remove(new AnswerKey("pulled-before", 0));
        }
        if (minor || !Chance(0.8))
            return;
        // Trained samples lift 2.3 +/- 0.3 x body mass (men) and 1.6 +/- 0.1 (women) (blatnik-2014, jones-2016); throwers less: a guess, with more spread.
        var multiple = Math.Clamp(Normal(female ? 1.25 : 1.6, 0.4) + (Math.Min(years, 8) * 0.05), 0.5, 3);
        Put(answers, "tested-1rm", Math.Max(20, mass * multiple));
        Choose(answers, "tested-1rm-variant", Pick("conventional", "conventional", "hex-low"));
        Choose(answers, "tested-1rm-straps", Chance(0.95) ? "no" : "yes");
    }

    // Fourteen in a hundred have something on file.
    private ulong History(bool female, bool minor)
    {
        if (!Chance(0.14))
            return 0;
        var values = _vocabulary["history"].RuleValues.ToList();
        string[] common = ["hamstring-strain-this-year", "groin-strain-this-year", "side-strain-this-year", "finger-pulley-injury", "shoulder-dislocation", "low-back-disc-injury"];
        var one = Chance(0.5) ? Pick(common) : Pick([.. values.Where(v => v != "pregnant-or-recently-given-birth" || (female && !minor))]);
        // One in ten does not remember the side.
        var side = _vocabulary["history"].ValueSides!.HasSides(values.IndexOf(one)) && !Chance(0.1) ? Pick(" left", " right") : "";
        return 1UL << _vocabulary["history"].Values.ToList().IndexOf(one + side);
    }

    // Most of those who need a letter have one; the rest have none, an old one or one that starts later.
    private List<Clearance> Clearances(Dictionary<AnswerKey, Answer> answers)
    {
        var history = answers[new AnswerKey("history", 0)].Value.Bits;
        if (history == 0 || Chance(0.1))
            return [];
        var about = _vocabulary["history"].Values.Where((_, i) => (history & (1UL << i)) != 0).ToList();
        var covers = _vocabulary.Clearance.Covers.Where(_ => Chance(0.85)).ToList();
        var from = Pick(-60, -60, -60, -60, -60, -60, -60, -60, -200, 10);
        return [new Clearance("physician", "somebody", _on.AddDays(from), _on.AddDays(from + 120), about, covers, Pick<double?>(null, null, null, 20, 60, 100), "staff", SourceSpan.None)];
    }

    private void Put(Dictionary<AnswerKey, Answer> answers, string word, double value, int side = 0)
        => answers[new AnswerKey(word, side)] = new Answer(FactValue.Number(value), _on, null, null, "", SourceSpan.None);

    private void PutSet(Dictionary<AnswerKey, Answer> answers, string word, ulong bits)
        => answers[new AnswerKey(word, 0)] = new Answer(FactValue.Of(bits), _on, null, null, "", SourceSpan.None);

    private void Choose(Dictionary<AnswerKey, Answer> answers, string word, string value)
        => PutSet(answers, word, 1UL << _vocabulary[word].Values.ToList().IndexOf(value));

    private bool Chance(double share) => _random.NextDouble() < share;

    private T Pick<T>(params T[] from) => from[_random.Next(from.Length)];

    private double Normal(double mean, double spread)
    {
        // Box and Muller's transform of two even draws.
        var radius = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble()));
        return mean + (spread * radius * Math.Cos(2 * Math.PI * _random.NextDouble()));
    }
}
