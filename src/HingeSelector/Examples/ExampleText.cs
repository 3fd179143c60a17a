using HingeSelector.Rules.Conditions;

namespace HingeSelector.Examples;

/// <summary>The words of examples.</summary>
public static class ExampleText
{
    /// <summary>What a rule does.</summary>
    public static string Say(Truth truth) => truth switch
    {
        Truth.True => "fires",
        Truth.False => "does not fire",
        _ => "is open",
    };

    /// <summary>What a condition does.</summary>
    public static string SayOfCondition(Truth truth) => truth switch
    {
        Truth.True => "holds",
        Truth.False => "fails",
        _ => "is open",
    };
}
