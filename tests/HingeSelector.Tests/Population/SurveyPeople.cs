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
internal sealed class SurveyPeople
{
    private const double HoursPerYear = 24 * 365.25;

    private readonly Vocabulary _vocabulary;
    private readonly DateOnly _on;
    private readonly Random _random;

    private SurveyPeople(Vocabulary vocabulary, DateOnly on, int seed)
    {
        _vocabulary = vocabulary;
        _on = on;
        _random = new Random(seed);
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
        double Millimetres(string name) => double.Parse(Cell(name), CultureInfo.InvariantCulture) / 1000;

        var answers = new Dictionary<AnswerKey, Answer>();
        var female = Cell("sex") == "F";
        var mass = double.Parse(Cell("weight_kg"), CultureInfo.InvariantCulture);
        Choose(answers, "sex", female ? "female" : "male");
        Put(answers, "age", double.Parse(Cell("age"), CultureInfo.InvariantCulture) * HoursPerYear);
        Put(answers, "stature", Millimetres("stature"));
        Put(answers, "mass", mass);
        if (Chance(0.5))
        {
            // Differences of heights as in the reference table: thigh, shank, trunk; arm as acromion to grip less the bent elbow's overlap.
            Put(answers, "thigh-length", Millimetres("trochanterionheight") - Millimetres("lateralfemoralepicondyleheight"));
            Put(answers, "shank-length", Millimetres("lateralfemoralepicondyleheight") - Millimetres("lateralmalleolusheight"));
            Put(answers, "trunk-length", Millimetres("acromialheight") - Millimetres("trochanterionheight"));
            Put(answers, "arm-length", Millimetres("acromionradialelength") + Millimetres("radialestylionlength") + Millimetres("forearmcenterofgriplength") - Millimetres("radialestylionlength"));
        }
        Who(answers, female, mass);
        Ranges(answers, female);
        Day(answers);
        return new AthleteRecord { Id = Cell("pid"), ScreenDate = _on, Answers = answers };
    }

    private void Who(Dictionary<AnswerKey, Answer> answers, bool female, double mass)
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
        Choose(answers, "limb-difference", "no");
        Choose(answers, "health-questionnaire", "clear");
        Choose(answers, "let-go-drill", Chance(0.6) ? "yes" : "no");
        var years = Math.Clamp(Math.Exp(Normal(0.8, 0.9)), 0, 20);
        Put(answers, "training-age", years * HoursPerYear);
        PutSet(answers, "history", 0);
        var taught = 0UL;
        for (var i = 0; i < _vocabulary["pulled-before"].Values.Count; i++)
            taught |= Chance(Math.Min(0.85, 0.1 + (years * 0.15))) ? 1UL << i : 0;
        PutSet(answers, "pulled-before", taught);
        if (!Chance(0.8))
            return;
        // Trained samples lift 2.3 +/- 0.3 x body mass (men) and 1.6 +/- 0.1 (women) (blatnik-2014, jones-2016); throwers less: a guess, with more spread.
        var multiple = Math.Clamp(Normal(female ? 1.25 : 1.6, 0.4) + (Math.Min(years, 8) * 0.05), 0.5, 3);
        Put(answers, "tested-1rm", Math.Max(20, mass * multiple));
        Choose(answers, "tested-1rm-variant", "conventional");
        Choose(answers, "tested-1rm-straps", "no");
    }

    private void Ranges(Dictionary<AnswerKey, Answer> answers, bool female)
    {
        // youdas-2005: means 76 and 69 deg from memory, eight degrees between the sexes; gajdosik-1993 spread 6.7, widened for athletes.
        BothSides(answers, "straight-leg-raise", female ? 77 : 69, 11, 3, 25, 125);
        Choose(answers, "straight-leg-raise-pelvis-held", Chance(0.85) ? "yes" : "no");
        // soucie-2011: 134 and 130 deg, from memory; spread after elson-2008 (80 to 140).
        BothSides(answers, "hip-flexion", female ? 126 : 122, 10, 3, 65, 155);
        Choose(answers, "hip-flexion-pelvis-held", Chance(0.85) ? "yes" : "no");
        if (Chance(0.8))
            BothSides(answers, "hip-abduction", female ? 46 : 42, 8, 3, 10, 80);
        // kouyoumdjian-2012 seated 40.6 and 37.9 deg; mcculloch: spread about 8.
        BothSides(answers, "hip-external-rotation", 40, 8, 3, 10, 80);
        BothSides(answers, "hip-internal-rotation", 35, 8, 3, 2, 70);
        BothSides(answers, "knee-to-wall", 0.105, 0.03, 0.008, 0.005, 0.2);
        BothSides(answers, "thoracic-rotation", 50, 9, 4, 15, 90);
        Put(answers, "thoracic-extension", Math.Clamp(Normal(22, 8), -10, 50));
        BothSides(answers, "shoulder-flexion", 172, 8, 3, 120, 190);
        // schilling-2019: 54 and 94 deg on the throwing side, spread 10.9 and 9.1.
        BothSides(answers, "shoulder-external-rotation", 94, 9, 4, 50, 150);
        BothSides(answers, "shoulder-internal-rotation", 56, 11, 4, 15, 100);
        Put(answers, "shoulder-flexion-baseline", Math.Clamp(Normal(174, 7), 130, 195));
        Put(answers, "hours-since-hard-throwing", Pick(12.0, 30, 60, 100));
        Choose(answers, "scapula-control", Pick("steady", "steady", "steady", "subtle-change", "obvious-change"));
        Choose(answers, "hinge-control", Pick("keeps", "keeps", "keeps", "keeps", "unsure", "loses"));
        // dodds-2014 medians 51 and 31 kg.
        BothSides(answers, "grip-strength", female ? 33 : 52, female ? 5 : 8, 2, 10, 90);
        Choose(answers, "gives-first", Pick("nothing", "nothing", "low-back-shape", "upper-back-shape", "grip", "legs", "hips-rise-first"));
    }

    private void Day(Dictionary<AnswerKey, Answer> answers)
    {
        foreach (var word in _vocabulary.InGroup("stop-questions"))
            Choose(answers, word.Id, "no");
        foreach (var word in _vocabulary.InGroup("pain"))
        {
            Put(answers, word.Id, 0);
            if (word.Sided)
                Put(answers, word.Id, 0, Sides.Right);
        }
        if (Chance(0.2))
            SomePain(answers);
        Put(answers, "soreness-after-throwing", Pick(0.0, 0, 1, 2, 3, 5));
        Choose(answers, "soreness-clears-in-warm-up", Chance(0.85) ? "yes" : "no");
        Choose(answers, "pain-worse-than-yesterday", "no");
        Choose(answers, "over-throwing-limit", "no");
        Choose(answers, "poor-sleep-or-heavy-fatigue", Chance(0.05) ? "yes" : "no");
        Choose(answers, "season-phase", Pick("off-season", "pre-season", "in-season", "post-season"));
        var throwing = Pick("none", "light", "moderate", "hard");
        Choose(answers, "throwing-today", throwing);
        Choose(answers, "throwing-order", throwing == "none" ? "none" : Pick("before-the-lift", "after-the-lift"));
        Put(answers, "hours-to-hard-throwing", Pick(6.0, 20, 30, 50, 80, 120, 400));
        Put(answers, "days-to-competition", 24 * Pick(1.0, 2, 3, 5, 8, 30, 120));
        Put(answers, "days-to-testing", 24 * Pick(1.0, 10, 30, 90, 200));
        Put(answers, "disc-diameter", Chance(0.93) ? 0.45 : 0.30);
        Put(answers, "sole-thickness", Pick(0, 0.01, 0.01, 0.02, 0.03));
        Choose(answers, "footwear", Pick("flat-shoes", "flat-shoes", "running-shoes", "barefoot-or-socks"));
    }

    private void SomePain(Dictionary<AnswerKey, Answer> answers)
    {
        var word = Pick([.. _vocabulary.InGroup("pain-worst")]);
        Put(answers, word.Id, Pick(1.0, 1, 2, 2, 3, 4), word.Sided ? _random.Next(2) : 0);
    }

    private void BothSides(Dictionary<AnswerKey, Answer> answers, string word, double mean, double spread, double apart, double low, double high)
    {
        var own = Normal(mean, spread);
        Put(answers, word, Math.Clamp(own + Normal(0, apart / 2), low, high), Sides.Left);
        Put(answers, word, Math.Clamp(own + Normal(0, apart / 2), low, high), Sides.Right);
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
