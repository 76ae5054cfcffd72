using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Power;

/// <summary>
/// Force and speed of the push against the pressure in the cylinder, from no load to the true force: finely enough to be drawn, with
/// two points close together where a stage is unloaded.
/// </summary>
public static class PushCurve
{
    private const int Steps = 40;
    // a fall of the speed by more than this share of the fastest is looked at more closely
    private const double Steep = 0.06;
    private const double Finest = 0.002;

    /// <summary>Works the curve out.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="oil">The oil.</param>
    /// <param name="report">What was found for them.</param>
    /// <returns>By load, rising; the first at no load, the last at the true force.</returns>
    /// <exception cref="InvalidOperationException">A flow did not settle.</exception>
    public static IReadOnlyList<SpeedAtLoad> Of(RigCylinder cylinder, IReadOnlyList<RigLine> lines, RigOil oil, PowerReport report)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(oil);
        ArgumentNullException.ThrowIfNull(report);
        double most = report.TrueForce;
        Check.NotNegative(most, nameof(report));
        RamMotion motion = RamMotion.Of(cylinder, lines, oil, report);
        var points = new List<SpeedAtLoad> { motion.Push(0) };
        double fastest = points[0].Speed;
        for (int i = 1; i <= Steps && most > 0; i++)
            Between(points[^1], motion.Push(most * i / Steps));
        return points;

        void Between(SpeedAtLoad from, SpeedAtLoad to)
        {
            if (from.Speed - to.Speed > Steep * fastest && to.Load - from.Load > Finest * most)
            {
                SpeedAtLoad middle = motion.Push((from.Load + to.Load) / 2);
                Between(from, middle);
                Between(middle, to);
                return;
            }

            points.Add(to);
        }
    }
}
