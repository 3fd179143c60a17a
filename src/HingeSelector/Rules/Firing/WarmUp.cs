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
            new Definition("sets a mark", 1, SubjectKind.Undecided, new Branch([condition], []), [new Concluded(0, 0)], [mark]),
            new Definition("waits for it", 0, SubjectKind.First, new Branch([condition], [mark]), [new Concluded(1, 1)], []),
        ]);
    }
}
