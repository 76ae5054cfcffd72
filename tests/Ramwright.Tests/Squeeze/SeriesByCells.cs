using Ramwright.Jobs;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>
/// Textbook cases of conduction put to the cells that the squeeze uses. A surface with one coefficient is a surface that does not radiate;
/// above 900 °C the properties are constant.
/// </summary>
internal static class SeriesByCells
{
    private const double k = 27.3, c = 650, rho = 7850, alpha = k / (rho * c);

    /// <summary>Wall (0), cylinder (1) or sphere (2) of half-thickness or radius R, one coefficient of convection.</summary>
    private static (HeatChain Chain, double[] State, TimeStepper Stepper) Body(int shape, double R, double h, double T0, double around, int n)
    {
        var chain = new HeatChain(n, new HotSurface(1e-12, h, around));
        double dr = R / n;
        for (int i = 0; i < n; i++)
        {
            double a = i * dr, b = a + dr;
            (double volume, double face) = shape switch
            {
                0 => (dr, 1),
                1 => (Math.PI * (b * b - a * a), 2 * Math.PI * b),
                _ => (4 * Math.PI / 3 * (b * b * b - a * a * a), 4 * Math.PI * b * b),
            };
            chain.Mass[i] = rho * volume;
            chain.HalfBefore[i] = chain.HalfAfter[i] = dr / 2;
            chain.Area[i] = i + 1 < n ? face : 0;
            chain.Bare[i] = i + 1 == n ? face : 0;
        }

        chain.Deep[n - 1] = dr / 2;
        var system = new CoolingChain(chain);
        var y = new double[system.Size + system.Sums];
        y.AsSpan(0, n).Fill(HotSteel.Enthalpy(T0));
        return (chain, y, new TimeStepper(system, 1e-7));
    }

    private static void Run((HeatChain Chain, double[] State, TimeStepper Stepper) body, ref double t, double until)
    {
        double first = 1e-4;
        body.Stepper.Run(body.State, ref t, until, ref first, 1e3, null, null);
        body.Chain.ReadTemperatures(body.State.AsSpan(0, body.Chain.Count));
    }

    /// <summary>The first root and its factor for the heart, measured between Fourier numbers 0.4 and 0.6.</summary>
    public static (double Zeta, double C) FirstTerm(int shape, double Bi)
    {
        // 1300 °C in surroundings of 1000 °C: constant properties all the way
        const double R = 0.02, T0 = 1300, around = 1000;
        var body = Body(shape, R, Bi * k / R, T0, around, 100);
        double t = 0, t1 = 0.6 * R * R / alpha, t2 = 0.9 * R * R / alpha;
        Run(body, ref t, t1);
        double one = Heart(body.Chain) - around;
        Run(body, ref t, t2);
        double two = Heart(body.Chain) - around;
        double zeta = Math.Sqrt(Math.Log(one / two) * R * R / (alpha * (t2 - t1)));
        return (zeta, one / (T0 - around) * Math.Exp(zeta * zeta * alpha * t1 / (R * R)));
    }

    // the first cell stands half a cell (or its share of a round one) off the middle: a parabola through two cells gives the middle
    private static double Heart(HeatChain chain) => chain.Temperature[0] + (chain.Temperature[0] - chain.Temperature[1]) / 8;

    /// <summary>A long cylinder after a time: heart, skin and mean.</summary>
    public static (double Heart, double Skin, double Mean) Cylinder(double d, double h, double T0, double around, double until)
    {
        var body = Body(1, d / 2, h, T0, around, 100);
        double t = 0;
        Run(body, ref t, until);
        double mean = 0, mass = 0, last = body.Chain.Temperature[^1], r = body.Chain.Deep[^1] / k;
        for (int i = 0; i < body.Chain.Count; i++)
        {
            mean += body.Chain.Mass[i] * body.Chain.Temperature[i];
            mass += body.Chain.Mass[i];
        }

        return (Heart(body.Chain), (last + around * h * r) / (1 + h * r), mean / mass);
    }

    /// <summary>How far the mean of a slab falls between two dies, K.</summary>
    public static double SlabBetweenDies(double height, double T0, double die, double h, double until)
    {
        var column = new HeatColumn(new HotSurface(), height, 1e-3);
        column.Below = column.Above = h;
        column.SetHeight(height, sides: 0);
        var system = new CoolingChain(column.Chain);
        var y = new double[system.Size + system.Sums];
        column.Start(y, T0, die);
        double before = HeatColumn.MeanTemperature(y), t = 0, first = 1e-5;
        new TimeStepper(system, 1e-6).Run(y, ref t, until, ref first, 1, null, null);
        return before - HeatColumn.MeanTemperature(y);
    }
}
