using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A bolt's place in the plane of a joint.</summary>
/// <param name="Y">Across, m.</param>
/// <param name="Z">Up, m.</param>
public readonly record struct BoltPlace(double Y, double Z);

/// <summary>Equal bolts through one plane, under a member's actions at the origin of their places.</summary>
/// <remarks>
/// Elastic: the plates are rigid, every bolt equally stiff, the group turns about its centroid. In-plane force and torque share out as shear; pull and bending
/// share out as tension. Where a plate presses on its neighbour the true turning point lies nearer the pressed edge, which is kinder to
/// the bolts than the centroid assumed here. Prying of thin end plates is not computed: give a factor, or make the plate at least as thick as the
/// bolt. Preload is not counted on for strength. Immutable.
/// </remarks>
public sealed class BoltGroup
{
    /// <summary>Elastic sharing.</summary>
    public static readonly Citation SharingSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-12, eccentric loading");

    /// <summary>Slip of faces that preloaded bolts hold together.</summary>
    public static readonly Citation SlipSource = new("EN 1993-1-8:2005", "3.9.1, eq. 3.6");
    /// <summary>γ_M3,ser.</summary>
    public const double SlipFactor = 1.1;

    private readonly double _yc, _zc, _yy, _zz, _yz;

    /// <summary>Takes the bolts.</summary>
    /// <param name="bolt">Each of them.</param>
    /// <param name="places">Where they are; at least one.</param>
    /// <param name="shearPlanes">How many planes of each bolt are sheared: 1 or 2.</param>
    public BoltGroup(Bolt bolt, IReadOnlyList<BoltPlace> places, int shearPlanes = 1)
    {
        ArgumentNullException.ThrowIfNull(bolt);
        ArgumentNullException.ThrowIfNull(places);
        if (places.Count == 0)
            throw new ArgumentException("a bolt group needs at least one bolt", nameof(places));
        if (shearPlanes is not (1 or 2))
            throw new ArgumentOutOfRangeException(nameof(shearPlanes), shearPlanes, "must be 1 or 2");
        (Bolt, Places, ShearPlanes) = (bolt, [.. places], shearPlanes);
        foreach (BoltPlace p in Places)
        {
            _yc += Check.Finite(p.Y) / Places.Count;
            _zc += Check.Finite(p.Z) / Places.Count;
        }

        foreach (BoltPlace p in Places)
        {
            _yy += (p.Y - _yc) * (p.Y - _yc);
            _zz += (p.Z - _zc) * (p.Z - _zc);
            _yz += (p.Y - _yc) * (p.Z - _zc);
        }
    }

    /// <summary>A grid of bolts, centred on the origin.</summary>
    /// <param name="bolt">Each of them.</param>
    /// <param name="across">How many along y.</param>
    /// <param name="up">How many along z.</param>
    /// <param name="pitchY">Between them along y, m.</param>
    /// <param name="pitchZ">Between them along z, m.</param>
    /// <param name="shearPlanes">How many planes of each bolt are sheared.</param>
    public static BoltGroup Grid(Bolt bolt, int across, int up, double pitchY, double pitchZ, int shearPlanes = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(across, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(up, 1);
        Check.NotNegative(pitchY);
        Check.NotNegative(pitchZ);
        return new BoltGroup(bolt, [.. from i in Enumerable.Range(0, across)
                                       from j in Enumerable.Range(0, up)
                                       select new BoltPlace((i - (across - 1) / 2.0) * pitchY, (j - (up - 1) / 2.0) * pitchZ)], shearPlanes);
    }

    /// <summary>Each bolt.</summary>
    public Bolt Bolt { get; }
    /// <summary>Their places.</summary>
    public IReadOnlyList<BoltPlace> Places { get; }
    /// <summary>Planes sheared in each.</summary>
    public int ShearPlanes { get; }
    /// <summary>Sum of squared distances from the centroid, m².</summary>
    public double Polar => _yy + _zz;

    /// <summary>Force in each bolt: across its axis, all planes together, N, and along it, tension positive, N.</summary>
    /// <param name="a">Actions at the origin.</param>
    /// <exception cref="ArgumentException">The bolts cannot hold a moment: all in one point or in one line.</exception>
    public IReadOnlyList<(double Shear, double Pull)> Forces(Actions a) =>
        [.. Places.Select(p => { var f = At(p, Share(a)); return (Math.Sqrt(f.Fy * f.Fy + f.Fz * f.Fz), f.Fx); })];

    /// <summary>Pull on the worst bolt, N, tension positive.</summary>
    /// <param name="a">Actions at the origin.</param>
    /// <param name="w">Where to write it down.</param>
    public double MostPulled(Actions a, Working? w = null)
    {
        (BoltPlace p, double Ft) = Worst(a, f => f.Fx);
        ShowPull(a, p, Ft, w);
        return Ft;
    }

    /// <summary>Ram force at which the worst bolt shears.</summary>
    /// <param name="a">Actions per newton at the ram, at the origin of the places.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing shears the bolts.</returns>
    public Limit? Shear(Actions a, PartialFactors factors, Working? w = null)
    {
        (BoltPlace p, double Fv) = Worst(a, f => Math.Sqrt(f.Fy * f.Fy + f.Fz * f.Fz));
        if (Fv < 1 / Limit.Farthest)
            return null;
        ShowShear(a, p, Fv, w);
        double FvR = Bolt.Shear(w), u = Fv / (ShearPlanes * FvR);
        w?.Step("u", "share of the shear resistance used by one newton", "F_v / (n_s F_vR)", u, Dimension.Number, Bolt.Source,
            ("F_v", Fv, Dimension.Force), ("n_s", ShearPlanes, Dimension.Count), ("F_vR", FvR, Dimension.Force));
        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Ram force at which the most loaded bolt's faces slip: F_s,Rk = n μ F_p,C; a service limit, without a factor on the load.</summary>
    /// <param name="a">Actions per newton at the ram, in the group's plane.</param>
    /// <param name="mu">Slip factor μ of the faces: 0.2 as rolled, 0.3 wire-brushed, 0.5 blasted (EN 1090-2, table 17).</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="InvalidOperationException">A class that the code does not preload.</exception>
    /// <remarks>Holes of the usual clearance, k_s = 1; no pull on the bolts. Safe to: over γ_M3,ser = 1.1.</remarks>
    public Limit? Slips(Actions a, double mu, Working? w = null)
    {
        double preload = Bolt.CodePreload();
        (BoltPlace p, double Fv) = Worst(a, f => Math.Sqrt(f.Fy * f.Fy + f.Fz * f.Fz));
        if (Fv < 1 / Limit.Farthest)
            return null;
        ShowShear(a, p, Fv, w);
        w?.Step("F_pC", "preload of the code", "0.7 f_ub A_s", preload, Dimension.Force, Bolt.PreloadSource,
            ("f_ub", Bolt.Fub, Dimension.Stress), ("A_s", Bolt.Thread.As, Dimension.Area));
        double u = Fv / (ShearPlanes * Check.Positive(mu) * preload);
        w?.Step("u", "share of the slip resistance used by one newton", "F_v / (n μ F_pC)", u, Dimension.Number, SlipSource,
            ("F_v", Fv, Dimension.Force), ("n", ShearPlanes, Dimension.Count), ("μ", mu, Dimension.Number), ("F_pC", preload, Dimension.Force));
        return Limit.FromUse(u, SlipFactor, 1, w);
    }

    /// <summary>Ram force at which the plate gives way at the worst bolt.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="plate">The plate; it takes the whole force of each bolt.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing shears the bolts.</returns>
    public Limit? Bearing(Actions a, BoltedPlate plate, PartialFactors factors, Working? w = null)
    {
        (BoltPlace p, double Fv) = Worst(a, f => Math.Sqrt(f.Fy * f.Fy + f.Fz * f.Fz));
        if (Fv < 1 / Limit.Farthest)
            return null;
        ShowShear(a, p, Fv, w);
        double FbR = Bolt.Bearing(plate, w), u = Fv / FbR;
        w?.Step("u", "share of the bearing resistance used by one newton", "F_v / F_bR", u, Dimension.Number, Bolt.Source,
            ("F_v", Fv, Dimension.Force), ("F_bR", FbR, Dimension.Force));
        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Ram force at which the worst bolt breaks in tension.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="prying">Factor on the pull for prying of a thin plate, 1 or more.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where no bolt is pulled.</returns>
    public Limit? Tension(Actions a, PartialFactors factors, double prying = 1, Working? w = null) =>
        Pulled(a, Bolt.Tension, "F_tR", "tension", factors, prying, w);

    /// <summary>Ram force at which the worst head or nut is pulled through a plate.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="dm">Mean width of head or nut, m; about 1.6 d.</param>
    /// <param name="t">Plate, m.</param>
    /// <param name="fu">Its tensile strength, Pa.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="prying">Factor on the pull, 1 or more.</param>
    /// <param name="w">Where to write it down.</param>
    public Limit? Punching(
        Actions a, double dm, double t, double fu, PartialFactors factors, double prying = 1, Working? w = null) =>
        Pulled(a, v => Bolt.Punching(dm, t, fu, v), "B_pR", "punching", factors, prying, w);

    /// <summary>Ram force at which shear and tension together break the worst bolt.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="prying">Factor on the pull, 1 or more.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts. Tension by itself is a limit of its own.</returns>
    public Limit? Combined(Actions a, PartialFactors factors, double prying = 1, Working? w = null)
    {
        Check.AtLeast(prying, 1);
        double FvR = Bolt.Shear(), FtR = Bolt.Tension();
        (BoltPlace p, double u) = Worst(a, f =>
            Math.Sqrt(f.Fy * f.Fy + f.Fz * f.Fz) / (ShearPlanes * FvR) + prying * Math.Max(0, f.Fx) / (1.4 * FtR));
        if (u < 1 / Limit.Farthest)
            return null;
        if (w is not null)
        {
            (double Fx, double Fy, double Fz) = At(p, Share(a));
            double Fv = Math.Sqrt(Fy * Fy + Fz * Fz);
            ShowShear(a, p, Fv, w);
            ShowPull(a, p, Fx, w);
            Bolt.Shear(w);
            Bolt.Tension(w);
            w.Step("u", "share of shear and tension resistance used by one newton", "F_v / (n_s F_vR) + k_p max(F_t, 0) / (1.4 F_tR)", u,
                Dimension.Number, Bolt.Source,
                ("F_v", Fv, Dimension.Force), ("n_s", ShearPlanes, Dimension.Count), ("F_vR", FvR, Dimension.Force),
                ("k_p", prying, Dimension.Number), ("F_t", Fx, Dimension.Force), ("F_tR", FtR, Dimension.Force));
        }

        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Shear on the worst bolt, all its planes together, N.</summary>
    /// <param name="a">Actions at the origin of the places.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentException">The bolts cannot hold a moment.</exception>
    public double WorstShear(Actions a, Working? w = null)
    {
        (BoltPlace p, double Fv) = Worst(a, f => Math.Sqrt(f.Fy * f.Fy + f.Fz * f.Fz));
        ShowShear(a, p, Fv, w);
        return Fv;
    }

    /// <summary>Pull on the worst bolt, N; below zero where none is pulled.</summary>
    /// <inheritdoc cref="WorstShear"/>
    public double WorstPull(Actions a, Working? w = null)
    {
        (BoltPlace p, double Ft) = Worst(a, f => f.Fx);
        ShowPull(a, p, Ft, w);
        return Ft;
    }

    private Limit? Pulled(
        Actions a, Func<Working?, double> resistance, string symbol, string what, PartialFactors factors, double prying, Working? w)
    {
        Check.AtLeast(prying, 1);
        (BoltPlace p, double Ft) = Worst(a, f => f.Fx);
        if (Ft < 1 / Limit.Farthest)
            return null;
        ShowPull(a, p, Ft, w);
        double R = resistance(w), u = prying * Ft / R;
        w?.Step("u", $"share of the {what} resistance used by one newton", $"k_p F_t / {symbol}", u, Dimension.Number, Bolt.Source,
            ("k_p", prying, Dimension.Number), ("F_t", Ft, Dimension.Force), (symbol, R, Dimension.Force));
        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    // Mean force, torque over Σr², and the two slopes of the pull.
    private readonly record struct Shared(double Fx, double Fy, double Fz, double Twist, double SlopeY, double SlopeZ);

    private Shared Share(Actions a)
    {
        Acting.Finite(a);
        int n = Places.Count;
        // Moments about the centroid of the bolts.
        double T = a.T - _yc * a.Vz + _zc * a.Vy, My = a.My - _zc * a.N, Mz = a.Mz + _yc * a.N;
        double J = _yy + _zz, det = _yy * _zz - _yz * _yz;
        // What is this small beside the rest is rounding.
        double small = 1e-9 * (Math.Sqrt(J / n) * Math.Abs(a.N) + Math.Abs(My) + Math.Abs(Mz)) +
            1e-12 * (Math.Abs(a.N) + Math.Abs(a.Vy) + Math.Abs(a.Vz) + Math.Abs(T));
        double twist = J > 0 ? T / J : Math.Abs(T) > small ? throw CannotHold() : 0;
        double slopeY, slopeZ;
        if (J > 0 && det > 1e-12 * J * J)
        {
            // Σ F z = My and Σ F y = −Mz with F = slopeY y + slopeZ z.
            slopeZ = (My * _yy + Mz * _yz) / det;
            slopeY = (-Mz * _zz - My * _yz) / det;
        }
        else if (J > 0)
        {
            // One line of bolts: only the moment about an axis square to the line can be held.
            double length = Math.Sqrt(J), ey = Math.Sqrt(_yy) / length, ez = (_yz < 0 ? -1 : 1) * Math.Sqrt(_zz) / length;
            double held = My * ez - Mz * ey, lost = My * ey + Mz * ez;
            if (Math.Abs(lost) > small)
                throw CannotHold();
            (slopeY, slopeZ) = (held / J * ey, held / J * ez);
        }
        else
        {
            if (Math.Abs(My) + Math.Abs(Mz) > small)
                throw CannotHold();
            (slopeY, slopeZ) = (0, 0);
        }

        return new Shared(a.N / n, a.Vy / n, a.Vz / n, twist, slopeY, slopeZ);
    }

    private static ArgumentException CannotHold() => new("bolts in one point or one line cannot hold this moment; add a row beside them");

    private (double Fx, double Fy, double Fz) At(BoltPlace p, Shared s)
    {
        double y = p.Y - _yc, z = p.Z - _zc;
        return (s.Fx + s.SlopeY * y + s.SlopeZ * z, s.Fy - s.Twist * z, s.Fz + s.Twist * y);
    }

    private (BoltPlace Place, double Value) Worst(Actions a, Func<(double Fx, double Fy, double Fz), double> measure)
    {
        Shared s = Share(a);
        (BoltPlace, double) worst = (Places[0], double.NegativeInfinity);
        foreach (BoltPlace p in Places)
        {
            double value = measure(At(p, s));
            if (value > worst.Item2)
                worst = (p, value);
        }

        return worst;
    }

    private void ShowShear(Actions a, BoltPlace p, double Fv, Working? w)
    {
        if (w is null)
            return;
        double T = a.T - _yc * a.Vz + _zc * a.Vy, J = Math.Max(Polar, double.Epsilon);
        w.Step("T_c", "torque about the centroid of the bolts, per newton", "T - y_c V_z + z_c V_y", T, Dimension.Moment, SharingSource,
            ("T", a.T, Dimension.Moment), ("y_c", _yc, Dimension.Length), ("V_z", a.Vz, Dimension.Force),
            ("z_c", _zc, Dimension.Length), ("V_y", a.Vy, Dimension.Force));
        if (Polar > 0)
        {
            w.Step("F_v", "shear on the worst bolt, per newton", "√((V_y / n - T_c z / J)² + (V_z / n + T_c y / J)²)", Fv, Dimension.Force, SharingSource,
                ("V_y", a.Vy, Dimension.Force), ("V_z", a.Vz, Dimension.Force), ("n", Places.Count, Dimension.Count), ("T_c", T, Dimension.Moment),
                ("y", p.Y - _yc, Dimension.Length), ("z", p.Z - _zc, Dimension.Length), ("J", J, Dimension.Area));
        }
        else
        {
            w.Step("F_v", "shear on each bolt, per newton", "√(V_y² + V_z²) / n", Fv, Dimension.Force, SharingSource,
                ("V_y", a.Vy, Dimension.Force), ("V_z", a.Vz, Dimension.Force), ("n", Places.Count, Dimension.Count));
        }
    }

    private void ShowPull(Actions a, BoltPlace p, double Ft, Working? w)
    {
        if (w is null)
            return;
        Shared s = Share(a);
        w.Step("F_t", "pull on the worst bolt, per newton", "N / n + c_y y + c_z z", Ft, Dimension.Force, SharingSource,
            ("N", a.N, Dimension.Force), ("n", Places.Count, Dimension.Count),
            ("c_y", s.SlopeY, Dimension.ForcePerLength), ("y", p.Y - _yc, Dimension.Length),
            ("c_z", s.SlopeZ, Dimension.ForcePerLength), ("z", p.Z - _zc, Dimension.Length));
    }
}
