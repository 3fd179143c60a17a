namespace HingeSelector.Rules.Firing;

/// <summary>A question that the network asks of a mark: is it the one?</summary>
/// <param name="Code">Which mark is wanted.</param>
internal sealed record MarkTest(int Code)
{
    /// <summary>Whether it is.</summary>
    public bool Is(Mark mark) => mark.Code == Code;
}
