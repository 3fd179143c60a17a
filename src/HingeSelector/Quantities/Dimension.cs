namespace HingeSelector.Quantities;

/// <summary>What a number measures. Two numbers can be compared only when their dimensions are equal.</summary>
public enum Dimension
{
    /// <summary>A bare count or ratio; written without a unit.</summary>
    None,

    /// <summary>Angle; held in degrees.</summary>
    Angle,

    /// <summary>Length; held in metres.</summary>
    Length,

    /// <summary>Mass; held in kilograms.</summary>
    Mass,

    /// <summary>Elapsed time; held in hours.</summary>
    Time,

    /// <summary>A rating on a 0 to 10 scale; held in points.</summary>
    Rating,

    /// <summary>A multiple of the athlete's own body mass; held as that multiple.</summary>
    BodyMassMultiple,

    /// <summary>A share; held in percent.</summary>
    Share,
}
