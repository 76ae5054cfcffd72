namespace Ramwright.Measuring;

/// <summary>Random numbers that are the same on every machine and at every run: xoshiro256++ seeded by splitmix64.</summary>
/// <remarks>After the public-domain generators of D. Blackman and S. Vigna (2019). Not for secrets.</remarks>
public sealed class SeededDraws
{
    private ulong _a, _b, _c, _d;
    private double _spare;
    private bool _hasSpare;

    /// <summary>Starts a row of numbers.</summary>
    /// <param name="seed">Rows of different seeds have nothing to do with one another.</param>
    public SeededDraws(ulong seed)
    {
        _a = Split(ref seed);
        _b = Split(ref seed);
        _c = Split(ref seed);
        _d = Split(ref seed);
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Bits()
    {
        ulong result = ulong.RotateLeft(_a + _d, 23) + _a, t = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = ulong.RotateLeft(_d, 45);
        return result;
    }

    /// <summary>Evenly spread above 0 and below 1.</summary>
    public double Even() => ((Bits() >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>Normally spread, mean 0 and standard deviation 1 (polar method).</summary>
    public double Normal()
    {
        if (_hasSpare)
        {
            _hasSpare = false;
            return _spare;
        }

        double x, y, s;
        do
        {
            x = 2 * Even() - 1;
            y = 2 * Even() - 1;
            s = x * x + y * y;
        }
        while (s is >= 1 or 0);
        double by = Math.Sqrt(-2 * Math.Log(s) / s);
        _spare = y * by;
        _hasSpare = true;
        return x * by;
    }

    /// <summary>Student's distribution with ν degrees of freedom: a normal over the root of a chi-squared of its own.</summary>
    /// <param name="nu">Degrees of freedom, above zero.</param>
    public double Student(double nu) => Normal() / Math.Sqrt(2 * Gamma(nu / 2) / nu);

    /// <summary>Gamma distribution of shape k and scale 1 (Marsaglia and Tsang, 2000).</summary>
    private double Gamma(double k)
    {
        if (k < 1)
            return Gamma(k + 1) * Math.Pow(Even(), 1 / k);
        double d = k - 1.0 / 3, c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            double x = Normal(), v = 1 + c * x;
            if (v <= 0)
                continue;
            v = v * v * v;
            if (Math.Log(Even()) < 0.5 * x * x + d - d * v + d * Math.Log(v))
                return d * v;
        }
    }

    private static ulong Split(ref ulong state)
    {
        ulong z = state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
