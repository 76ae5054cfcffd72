using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>How far a guard that stops the press stands from the dies.</summary>
/// <param name="What">Which guard.</param>
/// <param name="S">Least distance, m.</param>
/// <param name="Work">Writes the working.</param>
public sealed record SafetyDistance(string What, double S, Action<Working> Work)
{
    /// <summary>The formula.</summary>
    public static readonly Citation Source = new("EN ISO 13855:2010", "5.1 eq. 1, S = K T + C");

    /// <summary>Constants of two-hand controls.</summary>
    public static readonly Citation TwoHandSource = new("EN ISO 13855:2010", "clause 8", Standing.FromMemory);

    /// <summary>Distances of the press's guard; none where it has no guard that stops it.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of what they are called by.</param>
    public static IReadOnlyList<SafetyDistance> Of(PressCheck check, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Rig.Guard switch
        {
            RigTwoHandControl g => [new($"two-hand control{(g.Shrouded ? ", shrouded" : "")}", TwoHand(g.StopTime, g.Shrouded), w => TwoHand(g.StopTime, g.Shrouded, w))],
            RigLightCurtain g => [new($"light curtain, {Readout.Text(g.Resolution, Dimension.Length, units)}", Curtain(g.StopTime, g.Resolution), w => Curtain(g.StopTime, g.Resolution, w))],
            RigLightBeams g => [new(g.Beams == 1 ? "single light beam" : $"{g.Beams} light beams", Beams(g.StopTime, g.Beams), w => Beams(g.StopTime, g.Beams, w))],
            _ => [],
        };
    }

    /// <summary>Two-hand control.</summary>
    /// <param name="T">From letting go to the ram standing still, s.</param>
    /// <param name="shrouded">Whether covers keep a hand from reaching on while the button is held.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m; never below 0.1 m.</returns>
    public static double TwoHand(double T, bool shrouded = false, Working? w = null)
    {
        Check.Positive(T);
        double C = shrouded ? 0 : 0.25, S = Math.Max(0.1, 1.6 * T + C);
        w?.Step("S", "least distance of the buttons", "max(0.1, 1.6 T + C)", S, Dimension.Length, TwoHandSource, ("T", T, Dimension.Time), ("C", C, Dimension.Length));
        return S;
    }

    /// <summary>Light curtain that sees a hand or finger, 40 mm or finer, walked or reached into at right angles.</summary>
    /// <param name="T">From the beam broken to the ram standing still, s.</param>
    /// <param name="d">Resolution, m, 14 mm to 40 mm; finer counts as 14 mm.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m; never below 0.1 m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A resolution coarser than 40 mm: that is a row of beams.</exception>
    public static double Curtain(double T, double d, Working? w = null)
    {
        Check.Positive(T);
        if (!(d is > 0 and <= 0.040))
            Check.Refuse(nameof(d), d, "40 mm or finer");
        double C = 8 * Math.Max(0, d - 0.014), near = Math.Max(0.1, 2.0 * T + C);
        w?.Step("C", "how far a hand gets in before it is seen", "8 max(0, d − 0.014)", C, Dimension.Length, Source, ("d", d, Dimension.Length));
        w?.Step("S", "least distance by the speed of a hand", "max(0.1, 2 T + C)", near, Dimension.Length, Source, ("T", T, Dimension.Time), ("C", C, Dimension.Length));
        if (near <= 0.5)
            return near;
        double far = Math.Max(0.5, 1.6 * T + C);
        w?.Step("S", "beyond 500 mm, by the speed of walking", "max(0.5, 1.6 T + C)", far, Dimension.Length, Source, ("T", T, Dimension.Time), ("C", C, Dimension.Length));
        return far;
    }

    /// <summary>Single beams that see a body.</summary>
    /// <param name="T">From the beam broken to the ram standing still, s.</param>
    /// <param name="beams">How many, 1 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m.</returns>
    public static double Beams(double T, int beams, Working? w = null)
    {
        Check.Positive(T);
        double C = beams > 1 ? 0.85 : 1.2, S = 1.6 * T + C;
        w?.Step("S", "least distance of the beams", "1.6 T + C", S, Dimension.Length, Source, ("T", T, Dimension.Time), ("C", C, Dimension.Length));
        return S;
    }
}
