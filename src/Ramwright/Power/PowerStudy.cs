using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Studies the power of a press: what force and speed it really gives.</summary>
public static class PowerStudy
{
    private const int LoadSteps = 8;

    /// <summary>Studies with the usual stroke: see <see cref="PressStroke"/>.</summary>
    /// <inheritdoc cref="Of(RigCylinder, RigPump, IReadOnlyList{RigLine}, RigOil, PressStroke, Working?)"/>
    public static PowerReport Of(
        RigCylinder cylinder, RigPump pump, IReadOnlyList<RigLine> lines, RigOil oil, Working? w = null) =>
        Of(cylinder, pump, lines, oil, new PressStroke(), w);

    /// <summary>Studies a cylinder on its pump. Pure: the same input gives the same report, from any thread.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="pump">What drives it.</param>
    /// <param name="lines">The hoses and pipes; may be empty.</param>
    /// <param name="oil">The oil.</param>
    /// <param name="stroke">How the stroke is divided.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value that cannot be: not finite, or of the wrong sign.</exception>
    /// <exception cref="InvalidOperationException">A flow did not settle.</exception>
    /// <exception cref="PressFaultsException">The return spring is stronger than the pump, or next to no oil comes.</exception>
    public static PowerReport Of(
        RigCylinder cylinder, RigPump pump, IReadOnlyList<RigLine> lines, RigOil oil, PressStroke stroke, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        ArgumentNullException.ThrowIfNull(pump);
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(oil);
        ArgumentNullException.ThrowIfNull(stroke);
        double s = cylinder.Stroke, mu = cylinder.SealFriction;
        Check.Positive(s, "Stroke");
        Check.Loss(mu, "SealFriction");

        CylinderAreas areas = CylinderAreas.Of(cylinder, w);
        double S = RamForce.Spring(cylinder, w);
        PumpCurve curve = PumpCurve.Of(pump, w);
        PressureLimits limits = PressureLimits.Of(cylinder, areas, S, pump, curve, lines, w);
        double nu = OilViscosity.Of(oil, w), rho = oil.Grade.Density;
        var motion = new RamMotion(cylinder, areas, S, curve, lines, nu, rho);

        MovesAtAll(areas, cylinder, S, curve);

        double trueForce = limits.Normal.Force, p_true = limits.Normal.Pressure;
        var speeds = new SpeedAtLoad[LoadSteps + 1];
        for (int i = 0; i <= LoadSteps; i++)
            speeds[i] = motion.Push(trueForce * i / LoadSteps, i == 0 ? w : null);
        if (s > speeds[0].Speed * LongestStroke)
        {
            throw new PressFaultsException([new Fault("pump",
                new Remark("at {0}, which the ram takes with no load on it, the pump gives next to no oil: a stroke would take years",
                    Remark.Of(speeds[0].PumpPressure, Dimension.Pressure)),
                "the flow as on the pump's data sheet, and the pressure at which it was measured")]);
        }

        double pressingForce = stroke.PressingForce ?? PressStroke.UsualForceShare * trueForce;
        SpeedAtLoad pressing = motion.Push(pressingForce, w);
        SpeedAtLoad? back = motion.ReturnByOil(w);
        double trapped = areas.Push * s + motion.SupplyVolume;
        StrokeTimes times = Times(cylinder, stroke, pressingForce, speeds[0].Speed, pressing.Speed, back, motion, w)
            with
        { PressureRise = curve.TimeToCompress(trapped, oil.BulkModulus, 0.9 * p_true) };

        var report = new PowerReport
        {
            Areas = areas,
            Curve = curve,
            Limits = limits,
            PullForce = cylinder.PullsByOil ? RamForce.Net(p_true, areas.Pull, mu, 0, w) : 0,
            BlockedRodSide = cylinder.PullsByOil ? BlockedRodSide.Pressure(limits.MostPossible.Pressure, areas, w) : null,
            Label = SellersRating.Of(cylinder, areas, w),
            Viscosity = nu,
            Speeds = speeds,
            Pressing = pressing,
            ReturnSpeed = times.Return is double t ? s / t : null,
            Times = times,
            Oil = OilDemand.Of(areas, cylinder.PullsByOil, s, pump.UsableOil, w),
            Lines = CheckLines(cylinder, areas, lines, speeds[0], back, curve, p_true, nu, rho, w),
            Motor = pump is RigElectricPack pack
                ? MotorLoads.Of(pack, pack.Relief ?? pack.RatedPressure ?? cylinder.RatedPressure, w)
                : [],
            Hand = pump is RigHandPump hand ? Hand(hand, times, speeds[0], pressing, p_true, s, w) : null,
            Air = pump is RigAirPump air
                ? AirSupply.Of(air, (AirPumpCurve)curve, areas, mu, S, stroke.Wanted ?? trueForce, pressing.PumpPressure, w)
                : null,
            LettingOff = LettingOff.Of(
                BulkModulus.Compression(trapped, p_true, oil.BulkModulus, w), areas.Push, StoredEnergy.InOil(p_true, trapped, oil.BulkModulus, w), lines, w),
            Heat = pump is RigElectricPack warm ? HeatBalance.Of(warm, oil, p_true, times, speeds[0], pressing, back, w) : [],
            Assumptions = PowerAssumptions.Of(pump, limits, curve),
            Cautions = [],
        };
        return report with { Cautions = PowerCautions.Of(cylinder, pump, report) };
    }

    /// <summary>A stroke that takes longer with no load, s, is no stroke.</summary>
    private const double LongestStroke = 1e8;

    /// <summary>A spring may be too strong for its pump; only here are both known.</summary>
    private static void MovesAtAll(CylinderAreas areas, RigCylinder cylinder, double S, PumpCurve curve)
    {
        double needs = RamForce.PressureFor(0, areas.Force, cylinder.SealFriction, S);
        if (needs < curve.Ends * (1 - 1e-9))
            return;
        throw new PressFaultsException([new Fault(
            cylinder.SpringRate * cylinder.Stroke > cylinder.SpringPreload ? "cylinder.spring-rate" : "cylinder.spring-preload",
            new Remark("the return spring takes {0} with the ram out, {1} of oil, and the pump gives no more than {2}: the ram does not come out",
                Remark.Of(S, Dimension.Force), Remark.Of(needs, Dimension.Pressure), Remark.Of(curve.Ends, Dimension.Pressure)),
            "a weaker spring, a larger bore, or a pump with more pressure")]);
    }

    private static StrokeTimes Times(
        RigCylinder cylinder, PressStroke stroke, double force, double approach, double pressing, SpeedAtLoad? back, RamMotion motion,
        Working? w)
    {
        double s = cylinder.Stroke, part = stroke.PressingPart ?? PressStroke.UsualPressingShare * s;
        Check.NotNegative(part, nameof(PressStroke.PressingPart));
        if (part > s)
            Check.Refuse(nameof(PressStroke.PressingPart), part, "no longer than the stroke");
        double before = RamSpeed.Time(s - part, approach, w);
        double? under = pressing > 0 ? RamSpeed.Time(part, pressing, w) : part == 0 ? 0 : null;
        double? home = back is { Speed: > 0 } ? RamSpeed.Time(s, back.Speed, w) : back is null ? motion.ReturnBySpring(w) : null;
        ReturnBy by = back is not null ? ReturnBy.Oil : home is not null ? ReturnBy.Spring : ReturnBy.Unknown;
        return new StrokeTimes(s / approach, part, force, before, under, by, home, before + under + home, 0);
    }

    private static LineCheck[] CheckLines(
        RigCylinder cylinder, CylinderAreas areas, IReadOnlyList<RigLine> lines, SpeedAtLoad approach, SpeedAtLoad? back,
        PumpCurve curve, double p, double nu, double rho, Working? w)
    {
        var checks = new LineCheck[lines.Count];
        // On the way back a return line carries the full bore's oil, which is more than the pump's.
        double returning = back is null ? 0 : Math.Max(approach.Speed * areas.Pull, back.Flow * areas.Push / areas.Pull);
        for (int i = 0; i < checks.Length; i++)
        {
            (double Q, double sees) = lines[i].Duty switch
            {
                LineDuty.Pressure => (approach.Speed * areas.Push, p),
                LineDuty.Return => (returning, cylinder.PullsByOil ? p : 0),
                _ => (curve.FreeFlow, 0.0),
            };
            checks[i] = LineCheck.Of(lines[i], Q, sees, nu, rho, w);
        }

        return checks;
    }

    private static HandWork Hand(
        RigHandPump pump, StrokeTimes times, SpeedAtLoad approach, SpeedAtLoad pressing, double p, double s, Working? w)
    {
        double? push = pump.HandleForce is double rated ? HandPumpCurve.HandleForce(rated, p, pump.RatedPressure, w) : null;
        // Flow over speed is the area the pump has to fill: in a regenerative circuit the rod's alone.
        int before = RamSpeed.HandStrokes((s - times.PressingPart) * approach.Flow / approach.Speed, approach.Flow / pump.Cadence);
        int? under = pressing.Flow > 0 ? RamSpeed.HandStrokes(times.PressingPart * pressing.Flow / pressing.Speed, pressing.Flow / pump.Cadence) : null;
        return new HandWork(push, before, under);
    }
}
