using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>What the give of the oil costs on the way up, and what it does on the way down.</summary>
/// <param name="Volume">Oil that is pressed together, and comes back, m³.</param>
/// <param name="LostTravel">Way the ram would go for that oil, m.</param>
/// <param name="Energy">Energy in it, J.</param>
/// <param name="LeastTime">Time in which the line carries it off without running too fast, s; null where no line is known.</param>
public sealed record LettingOff(double Volume, double LostTravel, double Energy, double? LeastTime)
{
    /// <summary>Time in which a hand or a solenoid opens a valve, s.</summary>
    public const double ValveOpens = 0.1;

    /// <summary>When pressure is let off slowly.</summary>
    public static readonly Citation Source = Citation.Practice("a valve that opens faster than the line can carry the oil off shocks line and seals; a spool opens in about 0.1 s");

    /// <summary>Whether a valve that is simply thrown open shocks the line.</summary>
    public bool Slowly => LeastTime > ValveOpens;

    /// <summary>Weighs it.</summary>
    /// <param name="dV">Oil pressed together, m³, 0 or more.</param>
    /// <param name="A">Area the ram moves in, m², above zero.</param>
    /// <param name="E">Energy in it, J, 0 or more.</param>
    /// <param name="lines">The lines; it leaves through the return lines, or where there are none through the pressure lines.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LettingOff Of(double dV, double A, double E, IReadOnlyList<RigLine> lines, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Check.NotNegative(dV);
        Check.Positive(A);
        Check.NotNegative(E);
        double lost = dV / A;
        w?.Step("s_c", "way the ram would go for the oil pressed together", "ΔV/A", lost, Dimension.Length, RamSpeed.Continuity,
            ("ΔV", dV, Dimension.Volume), ("A", A, Dimension.Area));
        if ((Narrowest(lines, LineDuty.Return) ?? Narrowest(lines, LineDuty.Pressure)) is not { } line)
            return new LettingOff(dV, lost, E, null);
        double u = VelocityBand.Of(line.Duty).Most, a = CylinderAreas.Circle(line.Bore), t = dV / (u * a);
        w?.Step("t", "least time to let it off through " + line.Name, "ΔV/(u a)", t, Dimension.Time, VelocityBand.Source,
            ("ΔV", dV, Dimension.Volume), ("u", u, Dimension.Speed), ("a", a, Dimension.Area));
        return new LettingOff(dV, lost, E, t);
    }

    private static RigLine? Narrowest(IReadOnlyList<RigLine> lines, LineDuty duty) =>
        lines.Where(l => l.Duty == duty).MinBy(l => l.Bore);
}
