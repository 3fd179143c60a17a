using HingeSelector.Examples;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;
using HingeSelector.Tests.Rules.Firing.Agreement;

namespace HingeSelector.Tests.Rules.Tries;

/// <summary>Rule books of a rule or two, over the shipped vocabulary and variants.</summary>
internal static class SmallRules
{
    public const string Path = "local/one.yaml";

    /// <summary>The files with one rule of the given conditions and tries; each is given as lines without indentation.</summary>
    public static RuleFiles Files(string when, string tries)
        => RulesFolder.WithTopics((Path, $"""
            # An invented rule for a test.
            rules:
              - rule: one
                when:
            {Indented(when, 6)}
                then:
                  - caution: Nothing but a test.
                because: An invented rule for this test.
                grade: practice
                tries:
            {Indented(tries, 6)}
            """ + "\n"));

    public static RuleBook Book(string when, string tries) => RuleBookReader.Read(Files(when, tries));

    public static IReadOnlyList<RuleCases> Cases(RuleBook book) => RuleCases.Sound(book);

    private static string Indented(string text, int blanks)
        => string.Join('\n', text.Trim('\n').Split('\n').Select(l => new string(' ', blanks) + l));
}
