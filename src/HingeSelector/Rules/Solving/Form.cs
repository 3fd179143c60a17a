namespace HingeSelector.Rules.Solving;

/// <summary>A condition in the form that the solver works on: findings written out through their rules, sets taken apart into their items.</summary>
internal abstract class Form
{
    /// <summary>Something that always holds.</summary>
    public static Form Holds { get; } = new AllForm([]);
}
