using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Whether the compressor keeps up with an air-driven pump. All air flows are free air.</summary>
public sealed record AirSupply
{
    /// <summary>Air the pump takes running free, m³/s: the most it takes.</summary>
    public required double Demand { get; init; }
    /// <summary>Air it takes under the pressing load, m³/s.</summary>
    public required double PressingDemand { get; init; }
    /// <summary>Whether the maker states the demand; otherwise it is the least that the areas allow.</summary>
    public required bool DemandStated { get; init; }
    /// <summary>Free air the compressor delivers, m³/s; null where neither it nor the motor is known.</summary>
    public required double? Delivered { get; init; }
    /// <summary>Whether the delivery was stated; otherwise it is reckoned from the motor.</summary>
    public required bool DeliveryStated { get; init; }
    /// <summary>Share of the time the pump can run free for good; null where the delivery is unknown.</summary>
    public required double? RunningShare { get; init; }
    /// <summary>Time running free until a full receiver is down to cut-in, s.</summary>
    public required double ToCutIn { get; init; }
    /// <summary>Air pressure at the pump that the wanted force calls for, Pa, without the drop of regulator and hose.</summary>
    public required double AirForWanted { get; init; }
    /// <summary>Whether the air pressure set is enough for the wanted force.</summary>
    public required bool WantedInReach { get; init; }
    /// <summary>
    /// Time running free until the receiver is down to that pressure, s; null where it never is. An unknown delivery counts as
    /// none: the cautious reading. 0 where the wanted force is out of reach anyway.
    /// </summary>
    public required double? ToLoseWanted { get; init; }
    /// <summary>Time to fill the empty receiver to cut-out, s; null where the delivery is unknown.</summary>
    public required double? FillFromEmpty { get; init; }
    /// <summary>Time from cut-in to cut-out, s; null where the delivery is unknown.</summary>
    public required double? FillFromCutIn { get; init; }
    /// <summary>Force at the ram when the air has fallen to cut-in, N.</summary>
    public required double ForceAtCutIn { get; init; }
    /// <summary>Oil pressure at stall if the pump got the compressor's cut-out pressure, its relief valve counted, Pa.</summary>
    public required double PressureAtCutOut { get; init; }
    /// <summary>Force of the oil at that pressure, nothing lost, N.</summary>
    public required double ThrustAtCutOut { get; init; }

    /// <summary>Weighs demand against delivery.</summary>
    /// <param name="pump">The pump with its compressor.</param>
    /// <param name="curve">Its curve.</param>
    /// <param name="areas">The cylinder's areas.</param>
    /// <param name="mu">Share lost to the seals, 0 or more, below 1.</param>
    /// <param name="S">Return spring, N, 0 or more.</param>
    /// <param name="wanted">Force to be held, N, 0 or more.</param>
    /// <param name="pressing">Pressure at the pump under the pressing load, Pa, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static AirSupply Of(
        RigAirPump pump, AirPumpCurve curve, CylinderAreas areas, double mu, double S, double wanted, double pressing, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(pump);
        ArgumentNullException.ThrowIfNull(curve);
        RigCompressor c = pump.Compressor;
        Check.Positive(c.Receiver, "Receiver");
        Check.NotNegative(c.CutIn, "CutIn");
        Check.AtLeast(c.CutOut, c.CutIn, "CutOut");

        double demand;
        if (pump.AirUse is double stated)
        {
            Check.Positive(stated, "AirUse");
            demand = stated;
            w?.Take("q_a", "free air the pump takes running free, as stated", demand, Dimension.FreeAir, PressureLimits.Stated);
        }
        else
        {
            demand = AirUse.For(curve.FreeFlow, pump.AreaRatio, pump.AirPressure, w);
        }

        double share = curve.Flow(pressing) / curve.FreeFlow;
        double? delivered = Delivery(c, w);
        double airWanted = AirPumpCurve.AirFor(RamForce.PressureFor(wanted, areas.Force, mu, S), pump.EffectiveRatio);
        bool inReach = airWanted <= pump.AirPressure * (1 + 1e-9);
        double p_cutIn = Relieved(pump, Math.Min(c.CutIn, pump.AirPressure)), p_cutOut = Relieved(pump, c.CutOut);
        return new AirSupply
        {
            Demand = demand,
            PressingDemand = demand * share,
            DemandStated = pump.AirUse is not null,
            Delivered = delivered,
            DeliveryStated = c.FreeAir is not null,
            RunningShare = delivered is double q ? Math.Min(1, q / demand) : null,
            ToCutIn = Receiver.Time(c.Receiver, c.CutOut - c.CutIn, demand, w: w),
            AirForWanted = airWanted,
            WantedInReach = inReach,
            ToLoseWanted = inReach
                ? Receiver.TimeToFall(c.Receiver, c.CutOut, c.CutIn, airWanted, demand, delivered ?? 0, w)
                : 0,
            FillFromEmpty = delivered is double d ? Receiver.Time(c.Receiver, c.CutOut, d, w: w) : null,
            FillFromCutIn = delivered is double e ? Receiver.Time(c.Receiver, c.CutOut - c.CutIn, e, w: w) : null,
            ForceAtCutIn = RamForce.Net(p_cutIn, areas.Force, mu, S, w),
            PressureAtCutOut = p_cutOut,
            ThrustAtCutOut = RamForce.Thrust(p_cutOut, areas.Force, w),
        };
    }

    private static double? Delivery(RigCompressor c, Working? w)
    {
        if (c.FreeAir is double stated)
        {
            Check.Positive(stated, "FreeAir");
            w?.Take("Q_c", "free air the compressor delivers, as stated", stated, Dimension.FreeAir, PressureLimits.Stated);
            return stated;
        }

        return c.Motor is double P ? AirCompression.DeliveryFor(P, c.CutOut, w: w) : null;
    }

    private static double Relieved(RigAirPump pump, double air) =>
        Math.Min(pump.EffectiveRatio * air, pump.Relief ?? double.PositiveInfinity);
}
