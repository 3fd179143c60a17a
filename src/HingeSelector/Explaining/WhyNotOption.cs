using HingeSelector.Knowledge;

namespace HingeSelector.Explaining;

/// <summary>Why one option is not the first choice.</summary>
/// <param name="Variant">The option.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Gap">Weighted points behind the first; null unless it is ranked.</param>
/// <param name="Causes">At most three, the nearest first; never empty but for the first choice.</param>
/// <param name="More">Causes that are not told.</param>
public sealed record WhyNotOption(Variant Variant, OptionPlace Place, int? Gap, IReadOnlyList<Cause> Causes, int More);
