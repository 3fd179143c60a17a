namespace HingeSelector.Rules.Solving;

/// <summary>A question about one family: in which of its states it holds, and in which it fails.</summary>
/// <param name="family">The family.</param>
/// <param name="holds">States in which it holds.</param>
/// <param name="fails">States in which it fails; in all others it is open.</param>
internal sealed class LeafForm(Family family, Bits holds, Bits fails) : Form
{
    private readonly Bits _notHolds = Bits.Where(family.Count, s => !holds.Has(s));
    private readonly Bits _notFails = Bits.Where(family.Count, s => !fails.Has(s));

    /// <summary>The family.</summary>
    public Family Family { get; } = family;

    /// <summary>States that meet a need.</summary>
    public Bits States(Need need) => need switch
    {
        Need.True => holds,
        Need.False => fails,
        Need.NotTrue => _notHolds,
        _ => _notFails,
    };
}
