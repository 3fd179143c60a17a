namespace HingeSelector.Statics;

/// <summary>A body part's mass and where its centre lies.</summary>
/// <param name="Share">Part of body mass; of one limb where there are two.</param>
/// <param name="Centre">Place of the centre on the part's line, from its first end (0) to its second (1); may lie beyond.</param>
public readonly record struct MassShare(double Share, double Centre);
