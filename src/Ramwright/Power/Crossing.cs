namespace Ramwright.Power;

/// <summary>A function that never rises.</summary>
internal interface IFalling
{
    double At(double x);
}

/// <summary>Where a falling function, which may jump, crosses zero.</summary>
internal static class Crossing
{
    private const int Most = 200;

    /// <summary>Narrows a bracket: false position of the Illinois kind, every third step a bisection so that jumps cannot hold it up.</summary>
    /// <param name="f">The function.</param>
    /// <param name="lo">Where it is above zero, in and out.</param>
    /// <param name="hi">Where it is below zero, in and out.</param>
    /// <exception cref="InvalidOperationException">The bracket did not close within 200 steps.</exception>
    public static void Narrow<T>(in T f, ref double lo, ref double hi)
        where T : struct, IFalling
    {
        double whole = hi, flo = f.At(lo), fhi = f.At(hi);
        int side = 0;
        for (int i = 1; i <= Most; i++)
        {
            if (hi - lo <= 1e-12 * hi + 1e-15 * whole)
                return;
            double x = i % 3 == 0 ? 0.5 * (lo + hi) : lo + (hi - lo) * flo / (flo - fhi);
            if (!(x > lo && x < hi))
                x = 0.5 * (lo + hi);
            double fx = f.At(x);
            if (fx == 0)
            {
                lo = hi = x;
                return;
            }

            if (fx > 0)
            {
                lo = x;
                flo = fx;
                if (side == 1)
                    fhi /= 2;
                side = 1;
            }
            else
            {
                hi = x;
                fhi = fx;
                if (side == -1)
                    flo /= 2;
                side = -1;
            }
        }

        throw new InvalidOperationException($"The flow did not settle within {Most} steps: between {lo} and {hi} m³/s.");
    }
}
