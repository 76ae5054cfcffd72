using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>One bolt in a hole of the usual clearance; resistances with γ_M2 = 1.</summary>
/// <param name="Thread">Its thread.</param>
/// <param name="Class">Its class.</param>
/// <param name="ThreadSheared">Whether the shear plane crosses the thread; true unless made sure of.</param>
/// <remarks>
/// A class that EN 1993-1-8 does not have, 12.9 or an inch grade, is counted by its own tensile strength, no more than that
/// of 10.9, and with the lesser of the code's two shear factors.
/// </remarks>
public sealed record Bolt(ScrewThread Thread, PropertyClass Class, bool ThreadSheared = true)
{
    private const double MostFub = 1000e6, LesserAlphaV = 0.5, ShankAlphaV = 0.6;

    /// <summary>Shear, tension, bearing, punching.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "table 3.4");
    /// <summary>Preload.</summary>
    public static readonly Citation PreloadSource = new("EN 1993-1-8:2005", "3.9.1(2), eq. 3.7");

    /// <summary>Tensile strength it is counted with, Pa.</summary>
    public double Fub { get; } = Math.Min(Check.Positive(Class.Fub), MostFub);

    /// <summary>Nominal diameter, m.</summary>
    public double D => Thread.D;

    /// <summary>Usual hole, m: 1 mm over up to M14, 2 mm up to M24, 3 mm above.</summary>
    /// <remarks>EN 1090-2, table 11.</remarks>
    public double UsualHole => ScrewThread.UsualHole(D);

    /// <summary>Shear resistance of one plane, N.</summary>
    public double Shear(Working? w = null)
    {
        double alphaV = ThreadSheared ? Class.AlphaV ?? LesserAlphaV : ShankAlphaV, A = ThreadSheared ? Thread.As : Math.PI / 4 * D * D, F = alphaV * Fub * A;
        w?.Step("F_vR", "shear resistance of one plane", "α_v f_ub A", F, Dimension.Force, Source,
            ("α_v", alphaV, Dimension.Number), ("f_ub", Fub, Dimension.Stress), ("A", A, Dimension.Area));
        return F;
    }

    /// <summary>Tension resistance, N.</summary>
    public double Tension(Working? w = null)
    {
        double F = 0.9 * Fub * Thread.As;
        w?.Step("F_tR", "tension resistance", "0.9 f_ub A_s", F, Dimension.Force, Source,
            ("f_ub", Fub, Dimension.Stress), ("A_s", Thread.As, Dimension.Area));
        return F;
    }

    /// <summary>Bearing resistance in a plate, N.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="w">Where to write it down.</param>
    /// <remarks>The edge that is nearer in the direction of the force counts for e₁; where the force turns, give the smallest on all sides.</remarks>
    public double Bearing(BoltedPlate plate, Working? w = null)
    {
        double d0 = plate.Hole;
        double alphaD = Math.Min(plate.E1 / (3 * d0), plate.P1 is { } p1 ? p1 / (3 * d0) - 0.25 : double.PositiveInfinity);
        double alphaB = Math.Min(Math.Min(alphaD, Fub / plate.Fu), 1);
        double k1 = Math.Min(Math.Min(2.8 * plate.E2 / d0 - 1.7, plate.P2 is { } p2 ? 1.4 * p2 / d0 - 1.7 : double.PositiveInfinity), 2.5);
        if (!(k1 > 0 && alphaB > 0))
            throw new ArgumentException("the hole is too near an edge or its neighbour", nameof(plate));
        double F = k1 * alphaB * plate.Fu * D * plate.T;
        if (w is not null)
        {
            if (plate.P1 is { } q1)
            {
                w.Step("α_b", "for distances along the force", "min(e_1 / (3 d_0), p_1 / (3 d_0) - 1 / 4, f_ub / f_u, 1)", alphaB, Dimension.Number, Source,
                    ("e_1", plate.E1, Dimension.Length), ("d_0", d0, Dimension.Length), ("p_1", q1, Dimension.Length),
                    ("f_ub", Fub, Dimension.Stress), ("f_u", plate.Fu, Dimension.Stress));
            }
            else
            {
                w.Step("α_b", "for distances along the force", "min(e_1 / (3 d_0), f_ub / f_u, 1)", alphaB, Dimension.Number, Source,
                    ("e_1", plate.E1, Dimension.Length), ("d_0", d0, Dimension.Length),
                    ("f_ub", Fub, Dimension.Stress), ("f_u", plate.Fu, Dimension.Stress));
            }

            if (plate.P2 is { } q2)
            {
                w.Step("k_1", "for distances across the force", "min(2.8 e_2 / d_0 - 1.7, 1.4 p_2 / d_0 - 1.7, 2.5)", k1, Dimension.Number, Source,
                    ("e_2", plate.E2, Dimension.Length), ("p_2", q2, Dimension.Length), ("d_0", d0, Dimension.Length));
            }
            else
            {
                w.Step("k_1", "for distances across the force", "min(2.8 e_2 / d_0 - 1.7, 2.5)", k1, Dimension.Number, Source,
                    ("e_2", plate.E2, Dimension.Length), ("d_0", d0, Dimension.Length));
            }

            w.Step("F_bR", "bearing resistance", "k_1 α_b f_u d t", F, Dimension.Force, Source,
                ("k_1", k1, Dimension.Number), ("α_b", alphaB, Dimension.Number), ("f_u", plate.Fu, Dimension.Stress),
                ("d", D, Dimension.Length), ("t", plate.T, Dimension.Length));
        }

        return F;
    }

    /// <summary>Resistance to pulling head or nut through a plate, N.</summary>
    /// <param name="dm">Mean of the width across flats and corners of head or nut, the smaller, m.</param>
    /// <param name="t">Plate under it, m.</param>
    /// <param name="fu">Its tensile strength, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Punching(double dm, double t, double fu, Working? w = null)
    {
        double B = 0.6 * Math.PI * Check.Positive(dm) * Check.Positive(t) * Check.Positive(fu);
        w?.Step("B_pR", "resistance to punching through the plate", "0.6 π d_m t_p f_u", B, Dimension.Force, Source,
            ("d_m", dm, Dimension.Length), ("t_p", t, Dimension.Length), ("f_u", fu, Dimension.Stress));
        return B;
    }

    /// <summary>Preload of a slip-resistant joint F_p,C = 0.7 f_ub A_s, N; classes 8.8 and 10.9 only.</summary>
    /// <exception cref="InvalidOperationException">A class that the code does not preload.</exception>
    public double CodePreload() => Class.Name is "8.8" or "10.9"
        ? 0.7 * Fub * Thread.As
        : throw new InvalidOperationException($"class {Class.Name} may not be preloaded to the code; 8.8 or 10.9");
}

/// <summary>A plate that bolts bear on.</summary>
/// <param name="T">Thickness, m.</param>
/// <param name="Fu">Tensile strength, Pa.</param>
/// <param name="Hole">Hole d₀, m.</param>
/// <param name="E1">From the centre of the end hole to the edge, along the force, m.</param>
/// <param name="E2">From the centre of a hole to the edge, across the force, m.</param>
/// <param name="P1">Between holes along the force, m; null for a single row.</param>
/// <param name="P2">Between holes across the force, m; null for a single line.</param>
public sealed record BoltedPlate(double T, double Fu, double Hole, double E1, double E2, double? P1 = null, double? P2 = null)
{
    /// <summary>Least distances.</summary>
    public static readonly Citation SpacingSource = new("EN 1993-1-8:2005", "3.5, table 3.3");

    /// <summary>Thickness, m.</summary>
    public double T { get; init; } = Check.Positive(T);
    /// <summary>Tensile strength, Pa.</summary>
    public double Fu { get; init; } = Check.Positive(Fu);
    /// <summary>Hole, m.</summary>
    public double Hole { get; init; } = Check.Positive(Hole);
    /// <summary>End distance, m.</summary>
    public double E1 { get; init; } = Check.Positive(E1);
    /// <summary>Edge distance, m.</summary>
    public double E2 { get; init; } = Check.Positive(E2);
    /// <summary>Pitch, m.</summary>
    public double? P1 { get; init; } = P1 is { } p1 ? Check.Positive(p1, nameof(P1)) : null;
    /// <summary>Gauge, m.</summary>
    public double? P2 { get; init; } = P2 is { } p2 ? Check.Positive(p2, nameof(P2)) : null;

    /// <summary>Least end and edge distance, m.</summary>
    public static double LeastEdge(double hole) => 1.2 * Check.Positive(hole);
    /// <summary>Least pitch along the force, m.</summary>
    public static double LeastPitch(double hole) => 2.2 * Check.Positive(hole);
    /// <summary>Least gauge across the force, m.</summary>
    public static double LeastGauge(double hole) => 2.4 * Check.Positive(hole);

    /// <summary>What is too close, in words; empty when the layout is allowed.</summary>
    public IReadOnlyList<string> TooClose()
    {
        var faults = new List<string>();
        Look("end distance e1", E1, LeastEdge(Hole));
        Look("edge distance e2", E2, LeastEdge(Hole));
        Look("pitch p1", P1, LeastPitch(Hole));
        Look("gauge p2", P2, LeastGauge(Hole));
        return faults;

        void Look(string what, double? given, double least)
        {
            if (given < least * (1 - 1e-9))
                faults.Add($"{what} is {given * 1e3:0.#} mm, at least {least * 1e3:0.#} mm is needed");
        }
    }
}
