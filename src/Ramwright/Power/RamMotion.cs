using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>
/// The ram on its pump, lines and oil: how fast it goes against a load and back. The pump's curve meets the load's pressure
/// plus what the lines lose. Immutable; may be shared between threads.
/// </summary>
/// <remarks>
/// Valves, couplers and the weight of the ram are left out. Where the pressure at the pump would make an unloading valve
/// chatter, the large stage is taken as unloaded: the slower case.
/// </remarks>
public sealed class RamMotion
{
    /// <summary>How speed is found.</summary>
    public static readonly Citation Balance = Citation.Mechanics("the pump's curve meets the pressure of load, seals, spring and lines; by iteration");

    private readonly RigCylinder _cylinder;
    private readonly CylinderAreas _areas;
    private readonly PumpCurve _curve;
    private readonly LineSet _supply;
    private readonly LineSet _back;
    private readonly double _spring;

    /// <summary>The motion that a report was made with.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="oil">The oil.</param>
    /// <param name="report">What was found for them.</param>
    public static RamMotion Of(RigCylinder cylinder, IReadOnlyList<RigLine> lines, RigOil oil, PowerReport report)
    {
        ArgumentNullException.ThrowIfNull(oil);
        ArgumentNullException.ThrowIfNull(report);
        return new RamMotion(cylinder, report.Areas, RamForce.Spring(cylinder), report.Curve, lines, report.Viscosity, oil.Grade.Density);
    }

    /// <summary>Puts the parts together.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="areas">Its areas.</param>
    /// <param name="S">Return spring at full stroke, N, 0 or more: counted over the whole stroke.</param>
    /// <param name="curve">The pump's curve.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="nu">Kinematic viscosity of the oil, m²/s, above zero.</param>
    /// <param name="rho">Density of the oil, kg/m³, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public RamMotion(
        RigCylinder cylinder, CylinderAreas areas, double S, PumpCurve curve, IReadOnlyList<RigLine> lines, double nu, double rho)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(lines);
        Check.Positive(areas.Push, "Push");
        Check.Loss(cylinder.SealFriction, "SealFriction");
        Check.Positive(cylinder.Stroke, "Stroke");
        Check.NotNegative(S);
        Check.Positive(nu);
        Check.Positive(rho);
        foreach (RigLine line in lines)
        {
            Check.Positive(line.Bore, "Bore");
            Check.NotNegative(line.Length, "Length");
        }

        _cylinder = cylinder;
        _areas = areas;
        _spring = S;
        _curve = curve;
        _supply = new LineSet(lines, LineDuty.Pressure, nu, rho);
        _back = new LineSet(lines, LineDuty.Return, nu, rho);
    }

    /// <summary>Oil in the pressure lines, m³.</summary>
    public double SupplyVolume => _supply.Volume;

    /// <summary>Speed of the push against a load.</summary>
    /// <param name="F">Load at the ram, N, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative load, or no number.</exception>
    /// <exception cref="InvalidOperationException">The flow did not settle.</exception>
    public SpeedAtLoad Push(double F, Working? w = null)
    {
        Check.NotNegative(F);
        if (Regenerates(F))
            return PushWithBoth(F, w);
        double A = _areas.Push, a = _cylinder.PullsByOil ? _areas.Pull : 0, mu = _cylinder.SealFriction;
        var meets = new PumpMeets(_curve, _supply, _back, (F + _spring) / (A * (1 - mu)), a / A, a / (A * (1 - mu)));
        double Q = meets.Settle();
        double dp = _supply.Loss(Q), p_b = a > 0 ? _back.Loss(Q * a / A) : 0;
        double p_c = (F + _spring + p_b * a) / (A * (1 - mu));
        double p_p = p_c + dp;
        if (w is not null)
        {
            w.Take("Q", "flow at which the pump's curve meets load and lines", Q, Dimension.Flow, Balance);
            w.Take("p_b", "pressure on the other side, from the return lines", p_b, Dimension.Pressure, LineFlow.ReynoldsSource);
            w.Step("p_c", "pressure in the cylinder", "(F + S + p_b a)/(A (1 − μ))", p_c, Dimension.Pressure, RamForce.PressureOnArea,
                ("F", F, Dimension.Force), ("S", _spring, Dimension.Force), ("p_b", p_b, Dimension.Pressure), ("a", a, Dimension.Area),
                ("A", A, Dimension.Area), ("μ", mu, Dimension.Ratio));
            w.Step("p_p", "pressure at the pump", "p_c + Δp", p_p, Dimension.Pressure, Balance,
                ("p_c", p_c, Dimension.Pressure), ("Δp", dp, Dimension.Pressure));
        }

        double v = RamSpeed.Of(Q, A, w);
        return new SpeedAtLoad(F, p_c, p_p, Q, v, dp, p_b, _curve is ElectricPumpCurve pack && pack.Overloads(p_p));
    }

    private bool Regenerates(double F) => _cylinder is { PullsByOil: true, Regeneration: Regeneration.Always }
        || (F == 0 && _cylinder is { PullsByOil: true, Regeneration: Regeneration.Approach });

    /// <summary>
    /// The push of a regenerative circuit. The ring's oil comes through the return lines to the valve, joins the pump's there, and both
    /// go through the pressure lines into the bore.
    /// </summary>
    private SpeedAtLoad PushWithBoth(double F, Working? w)
    {
        double A = _areas.Push, a = _areas.Pull, A_r = _areas.Regenerative, mu = _cylinder.SealFriction;
        double lever = a / (A_r * (1 - mu));
        var meets = new PumpMeets(_curve, _supply, _back, (F + _spring) / (A_r * (1 - mu)), a / A_r, lever, A / A_r, lever);
        double Q = meets.Settle();
        double dp = _supply.Loss(Q * A / A_r), p_b = _back.Loss(Q * a / A_r);
        double p_c = (F + _spring + (dp + p_b) * a) / (A_r * (1 - mu)), p_p = p_c + dp;
        if (w is not null)
        {
            w.Take("Q", "flow at which the pump's curve meets load and lines", Q, Dimension.Flow, Balance);
            w.Step("A_r", "area the pump has to fill, the ring's oil joining its own", "A − a", A_r, Dimension.Area, RamForce.Regeneration,
                ("A", A, Dimension.Area), ("a", a, Dimension.Area));
            w.Take("Δp", "pressure lost by both flows on the way to the bore", dp, Dimension.Pressure, LineFlow.ReynoldsSource);
            w.Take("p_b", "pressure lost by the ring's oil on its way to the valve", p_b, Dimension.Pressure, LineFlow.ReynoldsSource);
            w.Step("p_c", "pressure in the bore", "(F + S + (Δp + p_b) a)/(A_r (1 − μ))", p_c, Dimension.Pressure, RamForce.Regeneration,
                ("F", F, Dimension.Force), ("S", _spring, Dimension.Force), ("Δp", dp, Dimension.Pressure), ("p_b", p_b, Dimension.Pressure),
                ("a", a, Dimension.Area), ("A_r", A_r, Dimension.Area), ("μ", mu, Dimension.Ratio));
            w.Step("p_p", "pressure at the pump", "p_c + Δp", p_p, Dimension.Pressure, Balance,
                ("p_c", p_c, Dimension.Pressure), ("Δp", dp, Dimension.Pressure));
        }

        double v = RamSpeed.Of(Q, A_r, w);
        return new SpeedAtLoad(F, p_c, p_p, Q, v, dp, p_b, _curve is ElectricPumpCurve pack && pack.Overloads(p_p));
    }

    /// <summary>
    /// Speed of the return by oil, with nothing on the ram. The file does not say on which side of the valve a line stands, so
    /// both ways are tried, the oil coming back through the pressure lines or through the return lines, and the slower is given.
    /// </summary>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pressures: the ring's as the cylinder's, the full bore's as the back pressure. Null where no oil pulls.</returns>
    /// <exception cref="InvalidOperationException">The flow did not settle.</exception>
    public SpeedAtLoad? ReturnByOil(Working? w = null)
    {
        if (!_cylinder.PullsByOil || !(_areas.Pull > 0))
            return null;
        SpeedAtLoad swapped = Pull(_back, _supply, null), straight = Pull(_supply, _back, null);
        return swapped.Speed <= straight.Speed ? Pull(_back, _supply, w) : Pull(_supply, _back, w);
    }

    /// <summary>
    /// Time of the return by a spring that drives the oil back through the pressure lines.
    /// </summary>
    /// <param name="w">Where to show the working.</param>
    /// <returns>s, the valve and the tank left out; null where there is no preloaded spring or no line to reckon with.</returns>
    /// <exception cref="InvalidOperationException">The flow did not settle.</exception>
    public double? ReturnBySpring(Working? w = null)
    {
        double F0 = _cylinder.SpringPreload, k = _cylinder.SpringRate, s = _cylinder.Stroke, A = _areas.Push;
        if (_cylinder.PullsByOil || !(F0 > 0) || _supply.IsEmpty)
            return null;
        double r = _supply.LaminarResistance;
        if (!(r > 0))
            return null;
        double t;
        if (k * s <= 1e-9 * F0)
        {
            t = A * s / SpringFlow(F0, r);
        }
        else
        {
            // Over u = ln S the integrand A S/(k Q) is nearly constant, so that few points do: Simpson's rule on four intervals.
            double span = Math.Log((F0 + k * s) / F0), sum = 0;
            for (int i = 0; i <= 4; i++)
            {
                double S = F0 * Math.Exp(span * i / 4);
                sum += (i is 0 or 4 ? 1 : i % 2 == 1 ? 4 : 2) * A * S / (k * SpringFlow(S, r));
            }

            t = span / 12 * sum;
        }

        w?.Take("t", "return by the spring through the hoses alone", t, Dimension.Time, Balance);
        return t;
    }

    private SpeedAtLoad Pull(LineSet supply, LineSet back, Working? w)
    {
        double A = _areas.Push, a = _areas.Pull, mu = _cylinder.SealFriction;
        // The seals of the return are charged with their share of the ring's pressure, as in the push.
        double lever = A / (a * (1 - mu));
        var meets = new PumpMeets(_curve, supply, back, 0, A / a, lever);
        double Q = meets.Settle();
        double dp = supply.Loss(Q), p_b = back.Loss(Q * A / a), p_c = p_b * lever;
        double p_p = p_c + dp;
        if (w is not null)
        {
            w.Take("Q", "flow into the ring at which the pump's curve meets the lines", Q, Dimension.Flow, Balance);
            w.Take("p_b", "pressure in the full bore, from the lines it empties through", p_b, Dimension.Pressure, LineFlow.ReynoldsSource);
            w.Step("p_c", "pressure in the ring", "p_b A/(a (1 − μ))", p_c, Dimension.Pressure, RamForce.PressureOnArea,
                ("p_b", p_b, Dimension.Pressure), ("A", A, Dimension.Area), ("a", a, Dimension.Area), ("μ", mu, Dimension.Ratio));
        }

        double v = RamSpeed.Of(Q, a, w);
        return new SpeedAtLoad(0, p_c, p_p, Q, v, dp, p_b, _curve is ElectricPumpCurve pack && pack.Overloads(p_p));
    }

    private double SpringFlow(double S, double r)
    {
        double p = S * (1 - _cylinder.SealFriction) / _areas.Push;
        double lo = 0, hi = p / r;
        var drives = new SpringDrives(_supply, p);
        if (drives.At(hi) < 0)
            Crossing.Narrow(drives, ref lo, ref hi);
        return lo > 0 ? lo : hi;
    }

    /// <summary>What the pump delivers at the pressure a flow calls for, less that flow.</summary>
    private readonly struct PumpMeets(
        PumpCurve curve, LineSet supply, LineSet back, double load, double backFlow, double backLever, double supplyFlow = 1, double supplyLever = 0)
        : IFalling
    {
        public double At(double Q) =>
            curve.Flow(load + back.Loss(Q * backFlow) * backLever + supply.Loss(Q * supplyFlow) * (1 + supplyLever)) - Q;

        public double Settle()
        {
            double lo = 0, hi = At(0);
            if (hi <= 0)
                return 0;
            double atHi = At(hi);
            if (atHi >= 0)
                return hi;
            Crossing.Narrow(this, ref lo, ref hi);
            double after = At(hi) + hi;                 // beyond a jump of the curve: the small stage alone, if it still delivers
            return after > 0 ? Math.Min(lo, after) : lo;
        }
    }

    private readonly struct SpringDrives(LineSet lines, double p) : IFalling
    {
        public double At(double Q) => p - lines.Loss(Q);
    }
}
