using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>
/// What happens to a raised ram when air, electricity or a hose is lost, as far as the file says. What is not said is named as
/// missing, and the worse is told.
/// </summary>
/// <remarks>
/// Seat valves (pilot-operated check, counterbalance) hold; a spool leaks and creeps; an open way to the tank drops. A hose that
/// bursts lets go whatever stands behind it: only a valve in the cylinder's own port helps.
/// </remarks>
public sealed class PowerFailing
{
    /// <summary>What holds and what does not.</summary>
    public static readonly Citation Source = Citation.Practice("seat valves hold, spools leak; a load-holding valve belongs on the cylinder's port; a pilot-operated check wants a centre that drains its pilot");

    private const string NoDirection = "cylinder.pushes: whether the ram pushes down or up",
        NoMass = "cylinder.moving-mass: the mass of ram, platen and die, without which no speed can be told",
        NoCentre = "valves.centre: what the spool joins in its middle",
        NoHandle = "valves.handle: whether springs bring the spool to its middle",
        NoHolding = "valves.holding: a pilot-operated check or counterbalance valve",
        NoSpring = "cylinder.return and cylinder.spring-preload: the spring's force with the ram in",
        NoPort = "valves.holding-at-cylinder: a holding valve on the cylinder's own port, or valves.hose-burst there";

    private readonly RigCylinder _c;
    private readonly Valves _valves;
    private readonly IReadOnlyList<RigLine> _lines;
    private readonly CylinderAreas _areas;
    private readonly double _nu, _rho;
    private readonly bool _springSaid;

    private PowerFailing(Rig rig, PowerReport power)
    {
        (_c, _valves, _lines, _areas, _nu, _rho) = (rig.Cylinder, rig.Valves, rig.Lines, power.Areas, power.Viscosity, rig.Oil.Grade.Density);
        _springSaid = !rig.Assumed.Any(a => a.What is "cylinder.return" or "cylinder.spring-preload");
    }

    /// <summary>What the oil on the ring's side holds up, rather than that in the bore: a ram that oil pulls up.</summary>
    private bool RingHolds => _c is { PullsByOil: true, Pushes: RamDirection.Down };

    private double HoldingArea => RingHolds ? _areas.Pull : _areas.Push;

    private LineDuty HoldingDuty => RingHolds && _lines.Any(l => l.Duty == LineDuty.Return) ? LineDuty.Return : LineDuty.Pressure;

    /// <summary>Everything that can be lost, and what then happens.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="power">Its power.</param>
    public static IReadOnlyList<PowerFailure> Of(Rig rig, PowerReport power)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(power);
        var failing = new PowerFailing(rig, power);
        string source = rig.Pump switch { RigAirPump => "air", RigElectricPack => "electricity", _ => "the hand on the pump" };
        return failing.WithoutOil() is { } alike
            ? [alike(source), alike("a hose")]
            : [failing.PumpStops(source), .. failing.HosesBurst()];
    }

    /// <summary>Where no oil holds the ram, the same is true whatever is lost.</summary>
    private Func<string, PowerFailure>? WithoutOil()
    {
        if (_c.Pushes == RamDirection.Sideways)
            return lost => Say(lost, RamFate.Holds, "the ram is level: nothing falls; what it holds or pulls is let go", [], []);
        if (_c.PullsByOil || _c.Pushes != RamDirection.Down)
            return null;
        if (_c.Return != RamReturn.Spring)
            return lost => Say(lost, RamFate.Unknown, "nothing is said of what lifts a ram that pushes down and has no spring", ["cylinder.return: what brings the ram back up"], []);
        double S = _c.SpringPreload;
        if (!_springSaid)
        {
            return lost => Say(lost, RamFate.Unknown, "its spring would have to hold it, and the file does not say how strong that is: reckon that the ram drops",
                _c.MovingMass is null ? [NoSpring, NoMass] : [NoSpring], []);
        }

        return _c.MovingMass is not { } m
            ? lost => Say(lost, RamFate.Unknown, "its spring holds it if what hangs on it weighs less than {0}", [NoMass], [Force(S)])
            : S >= m * RamFall.Gravity
                ? lost => Say(lost, RamFate.Holds, "its spring holds it: {0} against a weight of {1}", [], [Force(S), Force(m * RamFall.Gravity)])
                : lost => Say(lost, RamFate.Drops, "its spring of {0} is weaker than the weight of {1}: it sinks until the spring holds it", ["a stronger return spring"],
                    [Force(S), Force(m * RamFall.Gravity)]);
    }

    private PowerFailure PumpStops(string lost)
    {
        var missing = new List<string>();
        if (_c.Pushes is null)
            missing.Add(NoDirection);
        if (_valves.Holding == HoldingValve.Counterbalance)
            return Say(lost, RamFate.Holds, "the ram holds: the counterbalance valve keeps its oil in", missing, []);
        if (_valves.Holding == HoldingValve.PilotCheck)
            return PilotCheck(lost, missing);
        if (_valves.Holding is null)
            missing.Add(NoHolding);
        else
            missing.Add("a pilot-operated check or counterbalance valve (valves.holding)");
        if (_valves.Handle is null)
            missing.Add(NoHandle);
        if (_valves.Centre is null)
            missing.Add(NoCentre);
        if (_valves.Handle == SpoolHandle.Detent)
            return Detent(lost, missing);
        return _valves switch
        {
            { Centre: SpoolCentre.Float or SpoolCentre.Open } => Drop(lost, "the spool's middle opens its oil to the tank", missing),
            { Centre: null } or { Handle: null } => Unknown(lost, missing),
            _ => Say(lost, RamFate.Creeps, "the ram creeps down: a spool always leaks, how fast cannot be told", missing, []),
        };
    }

    private PowerFailure PilotCheck(string lost, List<string> missing)
    {
        if (_valves.Centre is SpoolCentre.Closed or SpoolCentre.Tandem)
        {
            missing.Add("valves.centre: float or open, so that the check's pilot line drains and it closes at once");
            return Say(lost, RamFate.Creeps, "the ram sinks until the pilot line has drained through the spool, then the pilot-operated check holds it", missing, []);
        }

        if (_valves.Centre is null)
        {
            missing.Add(NoCentre);
            return Say(lost, RamFate.Creeps, "the pilot-operated check holds the ram once its pilot line has drained; the file does not say whether it does at once", missing, []);
        }

        return Say(lost, RamFate.Holds, "the ram holds: the pilot-operated check keeps its oil in", missing, []);
    }

    private PowerFailure Detent(string lost, List<string> missing)
    {
        missing.Add("a spool that springs bring to its middle (valves.handle)");
        if (_valves.PumpCheck != true)
            missing.Add("valves.pump-check: a check valve at the pump, or the oil runs back through it");
        return Drop(lost, "the lever stays where it was, and on lowering, or on lifting with no check valve at the pump, that lets the oil out", missing);
    }

    private PowerFailure Unknown(string lost, List<string> missing)
    {
        if (_c.MovingMass is null)
            missing.Add(NoMass);
        return Say(lost, RamFate.Unknown, "not known, so reckon that the ram drops: nothing in the file holds it", missing, []);
    }

    private PowerFailure Drop(string lost, string why, List<string> missing)
    {
        if (_c.MovingMass is { } m && RamFall.ThroughLines(m, HoldingArea, _c.Stroke, _lines, HoldingDuty, _nu, _rho) is { } v)
            return Say(lost, RamFate.Drops, "the ram drops at up to {0}: " + why, missing, [Speed(v)]);
        if (_c.MovingMass is null)
            missing.Add(NoMass);
        return Say(lost, RamFate.Drops, "the ram drops, as fast as its lines let the oil out: " + why, missing, []);
    }

    private IEnumerable<PowerFailure> HosesBurst()
    {
        foreach (RigLine line in _lines)
        {
            // which side holds is not known until the direction is: then any hose at the cylinder may be the one
            bool holds = _c.Pushes is null ? line.Duty != LineDuty.Suction : line.Duty == HoldingDuty;
            if (holds)
                yield return HoseBursts(line);
        }
    }

    private PowerFailure HoseBursts(RigLine line)
    {
        var missing = new List<string>();
        if (_c.Pushes is null)
            missing.Add(NoDirection);
        if (_valves is { Holding: HoldingValve.PilotCheck or HoldingValve.Counterbalance, HoldingAtCylinder: true })
            return Say(line.Name, RamFate.Holds, "the ram holds: the valve on the cylinder's port keeps its oil in", missing, []);
        if (_valves.HoseBurst == true)
            return Say(line.Name, RamFate.Creeps, "the ram drops a little until the hose-burst valve trips, if it is set for less than the fall would drive through it", missing, []);
        missing.Add(NoPort);
        if (_c.MovingMass is { } m)
        {
            double v = RamFall.FromOpenPort(m, HoldingArea, line.Bore, _c.Stroke, _rho);
            return Say(line.Name, RamFate.Drops, "the ram drops at up to {0}: nothing keeps the oil in the cylinder", missing, [Speed(v)]);
        }

        missing.Add(NoMass);
        return Say(line.Name, RamFate.Drops, "the ram drops: nothing keeps the oil in the cylinder", missing, []);
    }

    private static PowerFailure Say(string lost, RamFate fate, string words, IReadOnlyList<string> missing, IReadOnlyList<Given> numbers) =>
        new(lost, fate, new Remark(words, numbers), missing);

    private static Given Force(double F) => new("F", F, Dimension.Force);

    private static Given Speed(double v) => new("v", v, Dimension.Speed);
}
