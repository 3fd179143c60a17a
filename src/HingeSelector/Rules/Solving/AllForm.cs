namespace HingeSelector.Rules.Solving;

/// <summary>Every part holds.</summary>
internal sealed class AllForm(IReadOnlyList<Form> parts) : Form
{
    /// <summary>The parts.</summary>
    public IReadOnlyList<Form> Parts { get; } = parts;
}
