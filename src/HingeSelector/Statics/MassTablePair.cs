using HingeSelector.Body;

namespace HingeSelector.Statics;

/// <summary>A published mass table for both sexes.</summary>
/// <param name="Id">Its name in <c>rules/model.yaml</c>.</param>
/// <param name="Female">Women; the same as men where the source has no women.</param>
/// <param name="Male">Men.</param>
public sealed record MassTablePair(string Id, MassTable Female, MassTable Male)
{
    /// <summary>The table for an athlete; the men's when sex is not given (the larger sample of both sources).</summary>
    public MassTable For(Sex sex) => sex == Sex.Female ? Female : Male;
}
