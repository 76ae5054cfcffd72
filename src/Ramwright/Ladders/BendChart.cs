using Ramwright.Jobs;
using Ramwright.Presses;

namespace Ramwright.Ladders;

/// <summary>One place in a bending chart.</summary>
/// <param name="Thickness">Of the plate, m.</param>
/// <param name="Opening">Of the V, m.</param>
/// <param name="PerMetre">Likely force for a metre of bend, N/m.</param>
/// <param name="Longest">Longest bend the press makes there, m: at what it is safe to and has the force for, the steel at its strongest; the die's own length at most.</param>
/// <param name="Suits">Whether the V suits the plate: 5 to 20 times its thickness.</param>
public sealed record BendChartPlace(double Thickness, double Opening, double PerMetre, double Longest, bool Suits);

/// <summary>What a press bends in its owner's V-dies: a chart for the wall.</summary>
public static class BendChart
{
    private static readonly double[] Plates = [2e-3, 3e-3, 4e-3, 5e-3, 6e-3, 8e-3, 10e-3, 12e-3];

    /// <summary>The chart for a job's steel and dies; where no dies are named, those of the rule.</summary>
    /// <param name="job">The job.</param>
    /// <param name="force">What the press is safe to and has, N.</param>
    public static IReadOnlyList<BendChartPlace> Of(RigVBend job, double force)
    {
        ArgumentNullException.ThrowIfNull(job);
        var places = new List<BendChartPlace>();
        foreach (double t in Plates)
        {
            if (job.Dies.Count == 0)
                places.Add(Place(job, t, VBending.OpeningFor(t), null, force));
            foreach (RigVeeDie die in job.Dies)
                places.Add(Place(job, t, die.Opening, die.Length, force));
        }

        return places;
    }

    private static BendChartPlace Place(RigVBend job, double t, double V, double? length, double force)
    {
        double likely = BendDemand.PerMetre(job.Steel, t, V);
        double most = VBending.OehlerForce(WorkStrength.Tensile(job.Steel).High, t, 1, V);
        return new BendChartPlace(t, V, likely, Math.Min(force / most, length ?? double.MaxValue), V / t is >= 5 and <= 20);
    }
}
