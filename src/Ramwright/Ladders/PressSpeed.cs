using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>How fast the ram goes at a force: the pump's curve against load and lines, kept as a table. Immutable; safe from many threads.</summary>
public sealed class PressSpeed
{
    private const int Steps = 32;

    private readonly double[] _loads, _speeds;

    private PressSpeed(double[] loads, double[] speeds) => (_loads, _speeds) = (loads, speeds);

    /// <summary>For a press.</summary>
    public static PressSpeed Of(Rig rig, PowerReport power)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(power);
        RamMotion motion = RamMotion.Of(rig.Cylinder, rig.Lines, rig.Oil, power);
        var loads = new double[Steps + 2];
        var speeds = new double[Steps + 2];
        for (int i = 0; i <= Steps + 1; i++)
        {
            // a pump that stops at its relief keeps its speed to the last: one more place just below
            double share = i < Steps ? (double)i / Steps : i == Steps ? 0.998 : 1;
            loads[i] = power.TrueForce * share;
            speeds[i] = i > Steps ? 0 : Math.Max(0, motion.Push(loads[i]).Speed);
            if (i > 0)
                speeds[i] = Math.Min(speeds[i], speeds[i - 1]);
        }

        return new PressSpeed(loads, speeds);
    }

    /// <summary>Speed of the ram, m/s; 0 where it stalls.</summary>
    /// <param name="force">N, 0 or more.</param>
    public double At(double force)
    {
        Check.NotNegative(force);
        if (force >= _loads[^1])
            return 0;
        int i = Array.BinarySearch(_loads, force);
        if (i >= 0)
            return _speeds[i];
        i = ~i;
        return _speeds[i - 1] + (_speeds[i] - _speeds[i - 1]) * (force - _loads[i - 1]) / (_loads[i] - _loads[i - 1]);
    }
}
