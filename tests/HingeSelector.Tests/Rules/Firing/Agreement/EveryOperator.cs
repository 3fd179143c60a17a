using HingeSelector.Rules;

namespace HingeSelector.Tests.Rules.Firing.Agreement;

/// <summary>A small rule book that uses every operator of the language, findings that rest on the absence of others included.</summary>
internal static class EveryOperator
{
    private const string Findings = """
        findings:
          - {finding: short-behind, label: a, means: a}
          - {finding: weak-grip, label: b, means: b}
          - {finding: at-ease, label: c, means: c}
          - {finding: tired, label: d, means: d}
          - {finding: fresh, label: e, means: e}
          - {finding: nobody-reads-it, label: f, means: f}
          - {finding: either-trouble, label: g, means: g}
          - {finding: no-trouble, label: h, means: h}
        rules:
          - rule: finds-short-behind
            when: {'straight-leg-raise, worse': below 65 deg}
            then: [finding: short-behind]
            {rest}
          - rule: finds-short-behind-otherwise
            when: {'hip-flexion, throwing': at most 95 deg, 'hip-flexion, gap': below 10 deg}
            then: [finding: short-behind]
            {rest}
          - rule: finds-weak-grip
            when: {'grip-strength, better': from 10 to 40 kg, sex: is male}
            then: [finding: weak-grip]
            {rest}
          - rule: finds-tired
            when: {poor-sleep-or-heavy-fatigue: is yes}
            then: [finding: tired, finding: nobody-reads-it]
            {rest}
          - rule: finds-fresh
            when: {tired: is absent, throwing-today: is not hard}
            then: [finding: fresh]
            {rest}
          - rule: finds-at-ease
            when: {short-behind: is absent, weak-grip: is absent, fresh: is present}
            then: [finding: at-ease]
            {rest}
          - rule: finds-either-trouble
            when:
              any of:
                - {short-behind: is present, age: at least 16 years}
                - {weak-grip: is present}
                - {tired: is present, season-phase: is in-season or post-season}
            then: [finding: either-trouble]
            {rest}
          - rule: finds-no-trouble
            when:
              none of:
                - {either-trouble: is present}
                - {weak-grip: is present, sport: is cricket}
            then: [finding: no-trouble]
            {rest}
          - rule: finds-no-trouble-otherwise
            when: {at-ease: is present, history: is empty}
            then: [finding: no-trouble]
            {rest}
        """;

    private const string Athlete = """
        rules:
          - rule: pain-anywhere
            when: {any pain-worst: above 8 points}
            then: [caution: a]
            {rest}
          - rule: pain-in-one-of-two
            when: {'wrist-pain-worst, worse or elbow-pain-worst, worse': between 2 and 5 points}
            then: [caution: a]
            {rest}
          - rule: history-holds
            when: {history: includes hernia or eye-operation}
            then: [caution: a]
            {rest}
          - rule: history-lacks
            when: {history: does not include hernia, 'history, throwing': includes elbow-operation or knee-operation, 'not-cleared, spinal-load': is not empty, 'letter, valid': is empty}
            then: [caution: a]
            {rest}
          - rule: exact-number
            when: {soreness-after-throwing: exactly 0 points}
            then: [caution: a]
            {rest}
          - rule: findings-in-branches
            when:
              age: below 30 years
              any of:
                - {short-behind: is absent, 'hip-flexion, other': above 100 deg}
                - any of:
                    - {tired: is absent}
                    - {fresh: is present}
                - none of:
                    - {at-ease: is present}
                    - {no-trouble: is absent, sex: is female}
            then: [caution: a]
            {rest}
          - rule: trouble-or-none
            when:
              none of:
                - {no-trouble: is present, either-trouble: is absent}
            then: [caution: a]
            {rest}
        """;

    private const string Candidates = """
        rules:
          - rule: all-that-permit-height
            when: {permits: includes bar-height}
            then: [points: +1 for room]
            {rest}
          - rule: first-with-athlete
            when: {'hip-spare, standard': below 0 deg, short-behind: is present, age: at least 18 years, load-in-hands: is full}
            then: [exclude: a]
            {rest}
          - rule: first-with-absence
            when: {'trunk-angle, standard': at least 20 deg, weak-grip: is absent, variant: is not sumo}
            then: [points: +1 for fit]
            {rest}
          - rule: mixed-branches
            when:
              any of:
                - {kit-there: is yes, tired: is absent}
                - {'posture, standard': is solved or unreachable, either-trouble: is present, sex: is male}
                - {new-to-athlete: is yes, 'straight-leg-raise, worse': above 70 deg}
            then: [points: -1 for skill]
            {rest}
          - rule: mixed-without-findings
            when:
              none of:
                - {kit-there: is no, sport: is baseball}
                - {'fits, standard': is no}
            then: [points: +1 for skill]
            {rest}
          - rule: second-plain
            when: {'hip-spare, as set up': between 0 and 5 deg}
            then: [points: -1 for fit]
            {rest}
          - rule: second-with-both
            when: {'raise, as set up': above 5 cm, 'start-height, standard': at most 30 cm, no-trouble: is present}
            then: [cue: {say: a, asks: [brace]}]
            {rest}
          - rule: second-negated
            when:
              stance: is not wide
              none of:
                - {'knee-bend, as set up': at least 100 deg, short-behind: is present}
                - {'fits, as set up': is no, at-ease: is absent}
            then: [caution: a]
            {rest}
        """;

    private const string Rest = """
        because: b
            grade: practice
            disputed: no
            sources: []
        """;

    /// <summary>The topic files.</summary>
    public static (string Path, string Text)[] Topics => [("findings/small.yaml", Fill(Findings)), ("room/athlete.yaml", Fill(Athlete)), ("fit/candidates.yaml", Fill(Candidates))];

    /// <summary>The whole folder.</summary>
    public static RuleFiles Files => RulesFolder.WithTopics(Topics);

    /// <summary>The whole folder with one piece of text exchanged.</summary>
    public static RuleFiles With(string old, string exchanged)
        => Topics.Count(t => t.Text.Contains(old, StringComparison.Ordinal)) == 1
            ? RulesFolder.WithTopics([.. Topics.Select(t => (t.Path, t.Text.Replace(old, exchanged, StringComparison.Ordinal)))])
            : throw new ArgumentException($"'{old}' must stand in exactly one file.");

    private static string Fill(string text) => text.Replace("{rest}", Rest, StringComparison.Ordinal);
}
