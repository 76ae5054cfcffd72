namespace Ramwright.Fabrication.Nesting;

/// <summary>Numbers drawn by a seed, the same on every machine: splitmix64.</summary>
/// <remarks>G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.</remarks>
internal sealed class SeededDraw(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A whole number from 0, below <paramref name="below"/>.</summary>
    public int Below(int below) => (int)(Next() % (ulong)below);

    /// <summary>A number from 0, below 1.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A seed for other draws.</summary>
    public ulong Draw() => Next();

    private ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        ulong z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
