using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>What of a press matters in time: its oil, its ram, its spring and its air. SI. Immutable; may be shared between threads.</summary>
public sealed record SqueezePress
{
    /// <summary>Oil beyond the swept volume and the hoses, ports and the like, as a share of the full stroke's.</summary>
    public const double DeadShare = 0.02;

    /// <summary>Pressure a valve loses at the pump's free flow, Pa.</summary>
    public const double ValveLoss = 5e5;

    /// <summary>The press with every number settled.</summary>
    public required Rig Rig { get; init; }
    /// <summary>What its hydraulics do in steady motion.</summary>
    public required PowerReport Power { get; init; }
    /// <summary>How far the dies open for each newton, m/N.</summary>
    public required double Compliance { get; init; }
    /// <summary>Mass that moves, kg.</summary>
    public required double MovingMass { get; init; }
    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<Assumed> Assumed { get; init; }

    internal LineSet Supply { get; private init; }
    internal LineSet Back { get; private init; }
    internal PumpFlow Flow { get; private init; } = null!;
    internal AirSide? Air { get; private init; }
    internal double DeadOil { get; private init; }
    internal double ReturnSpeed { get; private init; }

    internal double Push => Power.Areas.Push;
    internal double Ring => Rig.Cylinder.PullsByOil ? Power.Areas.Pull : 0;
    internal double Seals => Rig.Cylinder.SealFriction;
    internal double K => Rig.Oil.BulkModulus;
    internal double Stroke => Rig.Cylinder.Stroke;

    /// <summary>Takes it from a checked press.</summary>
    /// <param name="check">The press.</param>
    public static SqueezePress Of(PressCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return Of(check.Rig, check.Power, check.Response.DaylightGrowth);
    }

    /// <summary>Puts it together.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="power">Its power.</param>
    /// <param name="compliance">How far the dies open for each newton, m/N, 0 or more.</param>
    /// <param name="walls">Heat from the receiver's walls, W/K; null for the usual, 0 for an adiabatic one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A compliance or a heat that is negative.</exception>
    public static SqueezePress Of(Rig rig, PowerReport power, double compliance, double? walls = null)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(power);
        Check.NotNegative(compliance);
        if (walls is double stated)
            Check.NotNegative(stated, nameof(walls));
        var assumed = new List<Assumed>();
        RigCylinder cylinder = rig.Cylinder;
        double nu = power.Viscosity, rho = rig.Oil.Grade.Density;
        var supply = new LineSet(rig.Lines, LineDuty.Pressure, nu, rho);

        // Only what springs through moves fast enough for its mass to count.
        double mass = cylinder.MovingMass ?? cylinder.Count * 1.5 * 7850 * CylinderAreas.Circle(cylinder.Rod) * (cylinder.Stroke + 0.2);
        if (cylinder.MovingMass is null)
            assumed.Add(new AssumedMeasure("cylinder.moving-mass", mass, Dimension.Mass, "half as much again as the rod: piston, die holder and die"));
        double returns = power.ReturnSpeed ?? power.ApproachSpeed;
        if (power.ReturnSpeed is null)
            assumed.Add(new AssumedMeasure("cylinder.return", returns, Dimension.Speed, "how fast the ram goes back is not known: as fast as it comes"));
        AirSide? air = null;
        if (rig.Pump is RigAirPump pump)
        {
            double delivered = power.Air?.Delivered ?? 0;
            if (power.Air?.Delivered is null)
                assumed.Add(new AssumedWord("pump.compressor.free-air", "none", "neither free air nor motor is said: the compressor is taken as standing still"));
            air = new AirSide(pump, delivered, walls);
        }

        return new SqueezePress
        {
            Rig = rig,
            Power = power,
            Compliance = compliance,
            MovingMass = mass,
            Assumed = assumed,
            Supply = supply,
            Back = new LineSet(rig.Lines, LineDuty.Return, nu, rho),
            Flow = new PumpFlow(rig.Pump, power.Curve, supply),
            Air = air,
            DeadOil = supply.Volume + DeadShare * power.Areas.Push * cylinder.Stroke,
            ReturnSpeed = returns,
        };
    }

}
