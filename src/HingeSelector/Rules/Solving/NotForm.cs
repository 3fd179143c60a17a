namespace HingeSelector.Rules.Solving;

/// <summary>The part fails.</summary>
internal sealed class NotForm(Form part) : Form
{
    /// <summary>The part.</summary>
    public Form Part { get; } = part;
}
