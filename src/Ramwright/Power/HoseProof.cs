using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>What a hose must stand for its rated working pressure.</summary>
public static class HoseProof
{
    /// <summary>The factors.</summary>
    public static readonly Citation Source = new("EN 853", "minimum burst 4 times, proof 2 times the working pressure");

    /// <summary>Least burst pressure over rated working pressure.</summary>
    public const double Burst = 4;

    /// <summary>Proof pressure over rated working pressure.</summary>
    public const double Proof = 2;

    /// <summary>Whether a hose may carry a pressure, surges included.</summary>
    /// <param name="rating">Rated working pressure, Pa, above zero.</param>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static bool Carries(double rating, double p)
    {
        Check.Positive(rating);
        Check.NotNegative(p);
        return p <= rating;
    }
}
