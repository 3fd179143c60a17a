namespace HingeSelector.Rules.Solving;

/// <summary>At least one part holds.</summary>
internal sealed class AnyForm(IReadOnlyList<Form> parts) : Form
{
    /// <summary>The parts.</summary>
    public IReadOnlyList<Form> Parts { get; } = parts;
}
