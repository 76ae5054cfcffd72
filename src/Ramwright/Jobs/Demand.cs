using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What a job asks of the ram. SI; every number is finite.</summary>
public sealed record Demand
{
    /// <summary>What pushes back.</summary>
    public required IResistance Resistance { get; init; }
    /// <summary>Mean temperature of the work at the touch, °C; 20 for cold work.</summary>
    public double Temperature { get; init; } = 20;
    /// <summary>Height of the work at the touch, m.</summary>
    public required double WorkHeight { get; init; }
    /// <summary>Force against travel, from the touch to the end; the best guess. At least two points, travel rising.</summary>
    public required IReadOnlyList<ForceAt> Curve { get; init; }
    /// <summary>The greatest force, low to high, N.</summary>
    public required Band Peak { get; init; }
    /// <summary>What makes low and high differ, as a clause.</summary>
    public required string Spread { get; init; }
    /// <summary>Remarks on how far it can be leaned on: where a formula was held at the end of its range and the like.</summary>
    public IReadOnlyList<Remark> Flags { get; init; } = [];

    /// <summary>What else there is to know.</summary>
    public IReadOnlyList<Fact> Facts { get; init; } = [];
    /// <summary>What can hurt.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
    /// <summary>By how much the force drops all at once where the work gives way, low to high, N; null where it does not.</summary>
    public Band? LetsGo { get; init; }
    /// <summary>What the tradesman calls it, to follow "this press can" or "cannot": <c>squeeze round 30 to 15 mm</c>.</summary>
    public required string Doing { get; init; }
    /// <summary>A word on the force, in the trade's way, where it needs one.</summary>
    public string Where { get; init; } = "";

    /// <summary>How far the ram goes from the touch, m.</summary>
    public double Travel => Curve[^1].Travel;

    /// <summary>Work done on the work, J: the area under the curve.</summary>
    public double Energy
    {
        get
        {
            double sum = 0;
            for (int i = 1; i < Curve.Count; i++)
                sum += (Curve[i].Travel - Curve[i - 1].Travel) * (Curve[i].Force + Curve[i - 1].Force) / 2;
            return sum;
        }
    }

    /// <summary>Where the force is greatest.</summary>
    public ForceAt PeakAt
    {
        get
        {
            ForceAt most = Curve[0];
            foreach (ForceAt point in Curve)
            {
                if (point.Force > most.Force)
                    most = point;
            }

            return most;
        }
    }

    /// <summary>Samples a resistance whose force does not depend on speed or heat.</summary>
    /// <param name="resistance">What pushes back.</param>
    /// <param name="count">How many parts, at least 1.</param>
    public static IReadOnlyList<ForceAt> Sampled(IResistance resistance, int count = 40) => Sampled(resistance, _ => 0, 20, count);

    /// <summary>Samples a resistance.</summary>
    /// <param name="resistance">What pushes back.</param>
    /// <param name="speedAt">Speed of the ram at a force, m/s: 0 where the press stalls.</param>
    /// <param name="temperature">Mean temperature of the work, °C.</param>
    /// <param name="count">How many parts, at least 1.</param>
    public static IReadOnlyList<ForceAt> Sampled(IResistance resistance, Func<double, double> speedAt, double temperature, int count = 40)
    {
        ArgumentNullException.ThrowIfNull(resistance);
        ArgumentNullException.ThrowIfNull(speedAt);
        var curve = new ForceAt[count + 1];
        for (int i = 0; i <= count; i++)
        {
            double x = resistance.Travel * i / count;
            curve[i] = new ForceAt(x, Balance(resistance, x, speedAt, temperature));
        }

        return curve;
    }

    // The faster the ram the harder the work, and the harder the work the slower the ram: one force fits both.
    private static double Balance(IResistance resistance, double x, Func<double, double> speedAt, double temperature)
    {
        double low = resistance.Force(x, 0, temperature), high = resistance.Force(x, speedAt(0), temperature);
        for (int i = 0; i < 60 && high - low > 1e-9 * high; i++)
        {
            double F = (low + high) / 2;
            if (resistance.Force(x, speedAt(F), temperature) > F)
                low = F;
            else
                high = F;
        }

        return (low + high) / 2;
    }
}
