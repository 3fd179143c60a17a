using HingeSelector.Rules.Checking;

namespace HingeSelector.Editing;

/// <summary>The text of a new rule, with marked places for its author to fill.</summary>
public static class RuleSkeleton
{
    /// <summary>The text of a file that holds the rule and nothing else.</summary>
    /// <param name="id">Id of the rule.</param>
    public static string Of(string id) => $"""
        # Fill the places in capital letters, then run: hinge-selector rules check
        rules:
          - rule: {id}
            # Every line must hold: a word (and a reading), then what must be true of it.
            when:
              '{UnfilledPlaces.Mark}a word such as straight-leg-raise, worse': {UnfilledPlaces.Mark}what must hold, such as below 65 deg
            # Or: finding, stop, exclude, request, points, cue, withhold cues that ask.
            then:
              - caution: {UnfilledPlaces.Mark}what to beware of, in one sentence
            # The page of the rule: what a coach reads when asking why.
            because: {UnfilledPlaces.Mark}the reason, in words that a coach would say
            # trial, laboratory, mechanics, consensus or practice; all but mechanics and practice need a source.
            grade: practice
            disputed: no
            sources: []
            # A rule that reads a word of the candidate also says which variant, such as for: conventional
            tries:
              - given: {UnfilledPlaces.Mark}facts for which it fires, as the rules beside this one give them
                expect: fires
              - given: {UnfilledPlaces.Mark}facts just past the limit, for which it does not fire
                expect: does not fire

        """;
}
