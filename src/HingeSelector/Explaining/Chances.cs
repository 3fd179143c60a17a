namespace HingeSelector.Explaining;

/// <summary>Seeded chances: the same numbers on every machine and in every version of the framework.</summary>
/// <remarks>The generator is splitmix64 (Steele, Lea and Flood 2014), which is fast and good enough for counting.</remarks>
internal struct Chances(ulong seed)
{
    private ulong _state = seed;
    private double? _spare;

    /// <summary>Evenly spread from 0, included, to 1, not included.</summary>
    public double Even()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Normal with mean 0 and standard deviation 1, by Box and Muller's transform of two even draws.</summary>
    public double Normal()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }
        var radius = Math.Sqrt(-2 * Math.Log(1 - Even()));
        var angle = 2 * Math.PI * Even();
        _spare = radius * Math.Sin(angle);
        return radius * Math.Cos(angle);
    }
}
