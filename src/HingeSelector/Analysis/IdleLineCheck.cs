using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Conditions;
using HingeSelector.Rules.Solving;
using HingeSelector.Words;

namespace HingeSelector.Analysis;

/// <summary>HS3102 and HS3123: lines that every answer meets, and branches that none can meet.</summary>
internal static class IdleLineCheck
{
    /// <summary>Looks at every line of every rule that can fire.</summary>
    public static void Run(CheckedBook book, DiagnosticBag bag)
    {
        foreach (var rule in book.Living)
        {
            foreach (var condition in rule.Conditions.Where(AsksTheAthlete))
            {
                if (book.Solver.FindComplete(new Goal(book.Space.Of(condition), Need.NotTrue)) is null)
                    bag.Add(Problems.ExcludesNobody(condition.Span, rule.Id, condition.Text));
            }
            foreach (var choice in rule.Conditions.OfType<AnyCondition>())
                CheckBranches(book, rule, choice, bag);
        }
    }

    // What is true of all variants today, or of none, may change with the next one that is added.
    private static bool AsksTheAthlete(Condition condition)
        => condition.Findings.Any() || condition.Reads.Any(r => r.Word.About != WordAbout.Variant && r.Word.Id != "variant");

    private static void CheckBranches(CheckedBook book, Rule rule, AnyCondition choice, DiagnosticBag bag)
    {
        var others = rule.Conditions.Where(c => !ReferenceEquals(c, choice)).Select(c => new Goal(book.Space.Of(c), Need.True)).ToList();
        // Parts in one place come from one line about several words; there only the line as a whole was meant.
        foreach (var branch in choice.Parts.Where(p => p.Span != choice.Span && AsksTheAthlete(p)))
        {
            if (book.Solver.Find([.. others, new Goal(book.Space.Of(branch), Need.True)]) is null)
                bag.Add(Problems.DeadBranch(branch.Span, rule.Id, branch.Text));
        }
    }
}
