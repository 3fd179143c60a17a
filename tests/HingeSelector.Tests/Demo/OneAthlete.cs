using HingeSelector.Diagnostics;
using HingeSelector.Recommending;
using HingeSelector.Rules;
using HingeSelector.Rules.Firing;
using HingeSelector.Screening;
using HingeSelector.Tests.Support;

namespace HingeSelector.Tests.Demo;

/// <summary>An invented adult whose screen can be changed line by line; every answer comes from the real engine.</summary>
internal static class OneAthlete
{
    public static DateOnly Day { get; } = new(2026, 11, 24);

    private const string Screen = """
        date: 2026-11-24
        sex: male
        age: 24 years
        stature: 184 cm
        mass: 88 kg
        sport: javelin
        role: javelin-thrower
        throws-hard: set-days
        throwing-side: right
        training-age: 4 years
        pulled-before: conventional + sumo + medium-stance + hex-low + hex-high + romanian + block-start + wide-grip + staggered-stance
        let-go-drill: yes
        limb-difference: no
        tested-1rm: 140 kg
        tested-1rm-variant: conventional
        tested-1rm-straps: no
        history: none
        health-questionnaire: clear
        thigh-length: 43 cm
        shank-length: 44 cm
        trunk-length: 56 cm
        arm-length: 71 cm
        straight-leg-raise: {left: 82 deg, right: 84 deg}
        straight-leg-raise-pelvis-held: yes
        hip-flexion: {left: 124 deg, right: 126 deg}
        hip-flexion-pelvis-held: yes
        hip-abduction: {left: 45 deg, right: 46 deg}
        hip-external-rotation: {left: 45 deg, right: 44 deg}
        hip-internal-rotation: {left: 35 deg, right: 34 deg}
        knee-to-wall: {left: 11 cm, right: 11 cm}
        thoracic-extension: 22 deg
        thoracic-rotation: {left: 50 deg, right: 52 deg}
        shoulder-flexion: {left: 175 deg, right: 174 deg}
        shoulder-external-rotation: {left: 95 deg, right: 102 deg}
        shoulder-internal-rotation: {left: 62 deg, right: 54 deg}
        shoulder-flexion-baseline: 175 deg
        shoulder-external-rotation-baseline: 102 deg
        shoulder-internal-rotation-baseline: 55 deg
        hours-since-hard-throwing: 72 hours
        scapula-control: steady
        hinge-control: keeps
        grip-strength: {left: 52 kg, right: 54 kg}
        gives-first: nothing
        stop-questions: all no, asked by R. Idris on 2026-11-24
        pain: none, asked by R. Idris on 2026-11-24
        soreness-after-throwing: 1 points
        soreness-clears-in-warm-up: yes
        pain-worse-than-yesterday: no
        over-throwing-limit: no
        poor-sleep-or-heavy-fatigue: no
        season-phase: off-season
        throwing-today: none
        throwing-order: none
        hours-to-hard-throwing: 200 hours
        days-to-competition: 60 days
        days-to-testing: 40 days
        disc-diameter: 45 cm
        sole-thickness: 1 cm
        footwear: flat-shoes

        """;

    private static readonly Lazy<Network> _network = new(() => new Network(RepositoryFiles.Book));

    /// <summary>The answer with some lines changed or added.</summary>
    /// <param name="lines">Lines as in a screen file; a line replaces the one with the same key; "key:" alone removes it.</param>
    public static Recommendation Ask(params string[] lines) => AskIn("content/demo/room.yaml", null, lines);

    /// <summary>The answer in a given room, with a standing choice.</summary>
    public static Recommendation AskIn(string? room, StandingChoice? standing, params string[] lines)
        => AskBy(RepositoryFiles.Book, room, standing, lines);

    /// <summary>The answer by given rules.</summary>
    public static Recommendation AskBy(RuleBook book, string? room, StandingChoice? standing, params string[] lines)
    {
        var bag = new DiagnosticBag();
        var athlete = ScreenReader.Read(new SourceText("athlete.yaml", Edit(lines)), book.Vocabulary, Day, bag);
        bag.HasErrors.ShouldBeFalse(DiagnosticPrinter.Print(bag.Sorted));
        var kit = room is null ? null : RoomReader.Read(RepositoryFiles.Source(room), bag);
        var network = ReferenceEquals(book, RepositoryFiles.Book) ? _network.Value : new Network(book);
        return new Selector(book, network).Choose(new Question(athlete!, kit, standing, book.Philosophies["balanced"], Day));
    }

    /// <summary>A candidate that is ranked.</summary>
    public static RankedCandidate Ranked(this Recommendation answer, string variant)
        => answer.Ranked.FirstOrDefault(r => r.Candidate.Variant.Id == variant) ?? throw new ShouldAssertException($"{variant} is not ranked: {string.Join("; ", answer.Excluded.Where(e => e.Variant.Id == variant).SelectMany(e => e.Reasons).Select(r => r.Why))}");

    /// <summary>Whether a variant is out.</summary>
    public static bool IsOut(this Recommendation answer, string variant) => answer.Excluded.Any(e => e.Variant.Id == variant);

    /// <summary>Points of a ranked candidate in a criterion.</summary>
    public static int Points(this Recommendation answer, string variant, string criterion)
        => answer.Ranked(variant).Points[RepositoryFiles.Book.Criteria.First(c => c.Id == criterion).Index];

    /// <summary>Points of every ranked candidate in a criterion.</summary>
    public static IReadOnlyList<(string Variant, int Points)> AllPoints(this Recommendation answer, string criterion)
        => [.. answer.Ranked.Select(r => (r.Candidate.Variant.Id, r.Points[RepositoryFiles.Book.Criteria.First(c => c.Id == criterion).Index])).Order()];

    /// <summary>Height of the hands in centimetres.</summary>
    public static double Height(this Recommendation answer, string variant) => answer.Ranked(variant).Candidate.Choice!.FirstTry.HandHeight.Centimetres;

    /// <summary>Spare hip flexion in degrees.</summary>
    public static double HipSpare(this Recommendation answer, string variant) => answer.Ranked(variant).Candidate.Choice!.Margins!.HipFlexion!.Value.Value.Degrees;

    private static string Edit(string[] lines)
    {
        var screen = Screen.Split('\n').ToList();
        foreach (var line in lines)
        {
            var key = line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)];
            var place = screen.FindIndex(l => l.StartsWith(key, StringComparison.Ordinal));
            if (place >= 0)
                screen.RemoveAt(place);
            if (line != key)
                screen.Insert(Math.Max(place, 0), line);
        }
        return string.Join('\n', screen);
    }
}
