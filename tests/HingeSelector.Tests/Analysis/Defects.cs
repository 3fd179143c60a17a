namespace HingeSelector.Tests.Analysis;

/// <summary>The table of planted faults.</summary>
internal static class Defects
{
    public static IReadOnlyList<Defect> All { get; } =
    [
        // reading
        Defect.OfFile("a tab", "HS1002", "rules:\n\t- rule: a\n"),
        Defect.OfFile("a misspelt key", "HS1010", "rules:\n" + Defect.Rule("a-rule | limb-difference: is yes | caution: Look.").Replace("sources:", "sorces:", StringComparison.Ordinal)),
        Defect.OfFile("a reason left out", "HS1011", "rules:\n" + Defect.Rule("a-rule | limb-difference: is yes | caution: Look.").Replace("    because: Planted.\n", "", StringComparison.Ordinal)),

        // words, values, units
        Defect.OfRules("a misspelt word", "HS2001", "a-rule | limb-diference: is yes | caution: Look."),
        Defect.OfRules("a misspelt value", "HS2002", "a-rule | season-phase: is in-seasn | caution: Look."),
        Defect.OfRules("a number without its unit", "HS2003", "a-rule | age: below 16 | caution: Look."),
        Defect.OfRules("a number that nobody shows", "HS2004", "a-rule | stature: below 300 cm | caution: Look."),
        Defect.OfRules("an id twice", "HS2006", "find-beginner | limb-difference: is yes | caution: Look."),
        Defect.OfFile("a misspelt source", "HS2007", "rules:\n" + Defect.Rule("a-rule | limb-difference: is yes | caution: Look.").Replace("[]", "[neto-2051]", StringComparison.Ordinal)),
        Defect.OfRules("a side left out", "HS2009", "a-rule | hip-flexion: below 90 deg | caution: Look."),
        Defect.OfRules("a choice asked like a number", "HS2010", "a-rule | sex: below 3 | caution: Look."),
        Defect.OfRules("a range upside down", "HS2011", "a-rule | age: from 18 to 16 years | caution: Look."),

        // the logic of one rule
        Defect.OfRules("a finding that is not declared", "HS3001", "a-rule | limb-difference: is yes | finding: short-hamstring"),
        Defect.OfFile("findings in a circle", "HS3002", "findings:\n  - {finding: rested, label: Rested, means: Rested.}\n  - {finding: tired, label: Tired, means: Tired.}\nrules:\n"
            + Defect.Rule("find-rested | tired: is absent | finding: rested") + Defect.Rule("find-tired | rested: is absent | finding: tired")),
        Defect.OfRules("a stop for one pull", "HS3003", "a-rule | spinal-load: is high | stop: {level: refer, answers: clinician, see: A physician, say: Wait.}"),
        Defect.OfRules("a request that waits for its result", "HS3004", "a-rule | 'raise, as set up: above 3 cm' | request: {load: light}".Replace("'", "", StringComparison.Ordinal)),
        Defect.OfRules("a misspelt criterion", "HS3005", "a-rule | limb-difference: is yes | points: +1 for rom"),
        Defect.OfRules("a fact that speaks for and against", "HS3006", "a-rule | limb-difference: is yes | points: +1 for room", "b-rule | limb-difference: is yes; sex: is male | points: -1 for room"),
        Defect.OfFile("a grade without a source", "HS3007", "rules:\n" + Defect.Rule("a-rule | limb-difference: is yes | caution: Look.").Replace("practice", "trial", StringComparison.Ordinal)),
        Defect.OfFile("an example that comes out otherwise", "HS3008", "rules:\n" + Defect.Rule("a-rule | limb-difference: is yes | caution: Look.") + "    tries:\n      - given: {limb-difference: no}\n        expect: fires\n"),
        Defect.OfRules("properties that no pull has", "HS3009", "a-rule | load-in-hands: is none; grip-share: is high | caution: Look."),
        Defect.OfFile("a finding that nothing concludes", "HS3013", "findings:\n  - {finding: sore-arm, label: Sore arm, means: Sore.}\n"),

        // rules that can never fire
        Defect.OfRules("the worse side above the better one", "HS3101", "a-rule | hip-flexion, worse: above 120 deg; hip-flexion, better: below 100 deg | caution: Look."),
        Defect.OfRules("a gap that the range leaves no room for", "HS3101", "a-rule | hip-flexion, worse: above 140 deg; hip-flexion, gap: above 30 deg | caution: Look."),
        Defect.OfRules("neither the throwing side nor the other is the worse one", "HS3101", "a-rule | hip-flexion, worse: below 90 deg; hip-flexion, throwing: at least 90 deg; hip-flexion, other: at least 90 deg | caution: Look."),
        Defect.OfRules("a worst pain below the pain at rest", "HS3101", "a-rule | low-back-pain-at-rest: above 3 points; low-back-pain-worst: below 3 points | caution: Look."),
        Defect.OfRules("one value of a choice asked for and ruled out", "HS3101", "a-rule | season-phase: is in-season; none of: [{season-phase: is in-season or post-season}] | caution: Look."),
        Defect.OfRules("a finding that cannot be there with its own cause gone", "HS3101", "a-rule | beginner: is present; training-age: at least 2 years | caution: Look."),
        Defect.OfFile("a finding that is never found", "HS3101", "findings:\n  - {finding: odd, label: Odd, means: Odd.}\nrules:\n"
            + Defect.Rule("find-odd | age: below 16 years; guardian-consent: is yes; none of: [{age: below 18 years}] | finding: odd") + Defect.Rule("b-rule | odd: is present | caution: Look.")),

        // rules against rules
        Defect.OfRules("a line that leaves nobody out", "HS3102", "a-rule | age: at least 8 years; limb-difference: is yes | caution: Look."),
        Defect.OfRules("a rule that another one covers", "HS3103", "a-rule | age: below 18 years; sex: is male | caution: Look here.", "b-rule | age: below 20 years | caution: Look here."),
        Defect.OfRules("a rule written twice", "HS3103", "a-rule | limb-difference: is yes | caution: Look here.", "b-rule | none of: [{limb-difference: is no}]; limb-difference: is yes | caution: Look here."),
        Defect.OfRules("a request that is always overruled", "HS3104", "a-rule | limb-difference: is yes; permits: includes load | request: {load: light}", "b-rule | limb-difference: is yes; sex: is male; permits: includes load | request: {load: lower}"),
        Defect.OfRules("points for a pull that is out", "HS3105", "a-rule | limb-difference: is yes; variant: is sumo | exclude: Out.", "b-rule | limb-difference: is yes; sex: is female; stance: is wide | points: +1 for room"),
        Defect.OfRules("points under a stop", "HS3105", "b-rule | fever-or-illness: is yes; spinal-load: is high | points: +1 for room"),
        Defect.OfRules("a cue that is always withheld", "HS3106", "a-rule | limb-difference: is yes | withhold cues that ask: brace", "b-rule | limb-difference: is yes; sex: is male | 'cue: {say: Get tight here., asks: [brace]}'".Replace("'", "", StringComparison.Ordinal)),
        Defect.OfRules("nothing is left", "HS3107", "a-rule | role: is goalkeeper | exclude: Out."),
        Defect.OfChange("nobody speaks of a pull", "HS3109", "arm-and-shoulder-position/hang.yaml", "      - points: +1 for arm-and-shoulder-position\n    because: The hands are nearly under", "      - caution: Look.\n    because: The hands are nearly under"),
        Defect.OfRules("a branch that can never hold", "HS3123", "a-rule | age: at least 18 years; any of: [{age: below 16 years}, {limb-difference: is yes}] | caution: Look."),

        // evidence
        Defect.OfFile("a grade that the source does not carry", "HS3110", "rules:\n" + Defect.Rule("a-rule | limb-difference: is yes | caution: Look.").Replace("practice", "trial", StringComparison.Ordinal).Replace("[]", "[army-survey-2012]", StringComparison.Ordinal)),
        Defect.OfChange("a parameter graded above its source", "HS3110", "model.yaml", "    grade: practice\n", "    grade: trial\n"),
        Defect.OfChange("a source that nothing cites", "HS3111", "sources.yaml", "  - source: soucie-2011\n", "  - {source: nobody-2026, cite: Nobody (2026), kind: trial, read: memory}\n  - source: soucie-2011\n"),
        Defect.OfChange("a retracted source", "HS3120", "sources.yaml", "  - source: elbow-ligament-protocols\n", "  - source: elbow-ligament-protocols\n    status: retracted\n"),
        Defect.OfChange("a source that a later one replaces", "HS3121", "sources.yaml", "  - source: elbow-ligament-protocols\n", "  - source: elbow-ligament-protocols\n    status: superseded\n"),

        // what nobody reads, what nobody can do, what nobody warns of
        Defect.OfChange("a fact that nothing reads", "HS3112", "vocabulary.yaml", "  - {fact: limb-difference,", "  - {fact: left-handed, label: Left-handed, about: athlete, kind: yes-no, lifetime: always, protocol: athlete}\n  - {fact: limb-difference,"),
        Defect.OfFile("a finding that nothing reads", "HS3113", "findings:\n  - {finding: odd, label: Odd, means: Odd.}\nrules:\n" + Defect.Rule("find-odd | limb-difference: is yes | finding: odd")),
        Defect.OfRules("straps where none can be used", "HS3114", "a-rule | limb-difference: is yes; variant: is hip-thrust | request: {straps: none}"),
        Defect.OfRules("a stop of today without an option", "HS3115", "a-rule | role: is goalkeeper | stop: {level: today, see: The coach, say: Wait.}"),
        Defect.OfRules("a cue that names nothing", "HS3116", "a-rule | limb-difference: is yes | cue: {say: Look ahead., asks: []}"),
        Defect.OfRules("a cue withheld that nobody gives", "HS3117", "a-rule | limb-difference: is yes | withhold cues that ask: arch"),
        Defect.OfRules("speed without a caution", "HS3118", "a-rule | role: is wing; permits: includes load | request: {speed: faster}"),
        new("points after an injury without a caution", "HS3119", f => Defect.Changed(Defect.Changed(f, "cautions/history.yaml", "      history: is not empty", "      history: includes hernia"), "cautions/history.yaml", "{history: [groin-strain-this-year]}", "{history: [hernia]}")
            .With(Defect.File, "rules:\n" + Defect.Rule("a-rule | history: includes groin-strain-this-year; variant: is hex-high | points: +1 for room"))),
        Defect.OfChange("an acceptance of nothing", "HS3122", "accepted.yaml", "    of: [first-working-weight]", "    of: [first-working-weight, limb-difference]"),
    ];
}
