using HingeSelector.Diagnostics;
using HingeSelector.Rules.Conditions;

namespace HingeSelector.Rules.Firing;

/// <summary>Gets the engine's code loaded and ready while the rules are still being read.</summary>
public static class WarmUp
{
    /// <summary>Builds a network of two rules and throws it away: a process pays for the first rule of its life fifty times over.</summary>
    public static void Run()
    {
        var condition = new FindingCondition(0, true, "", SourceSpan.None);
        var mark = MarkCodes.Present(0);
        NetworkBuilder.Build(1,
        [
            new Definition("sets a mark", 1, SubjectKind.Athlete, 0, new Branch([condition], [], []), 0, [mark]),
            new Definition("waits for it", 0, SubjectKind.First, 1, new Branch([], [condition], [mark]), 1, []),
        ]);
    }
}
