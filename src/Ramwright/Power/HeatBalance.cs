using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Heat that goes into the oil in one way of working, and where it leads.</summary>
/// <param name="Where">In plain words: <c>held at full pressure</c>.</param>
/// <param name="Power">Heat, W.</param>
/// <param name="SettlesAt">Temperature the oil tends to, °C.</param>
/// <param name="ToWarm">Time from the workshop's temperature to <see cref="OilHeat.Warmest"/>, s; null where it never gets so warm.</param>
public sealed record HeatCase(string Where, double Power, double SettlesAt, double? ToWarm);

/// <summary>
/// What an electric pack does to its oil. A hand or air-driven pump stops when the pressure stops, and its oil stays cool.
/// </summary>
/// <remarks>The tank's own steel is left out, and the cylinder and lines too: the oil warms a little more slowly than said here.</remarks>
public static class HeatBalance
{
    /// <summary>Everything the shaft puts in and the work does not take out ends as heat.</summary>
    public static readonly Citation Source = Citation.Mechanics("energy balance: shaft work less work on the piece is heat in the oil");

    /// <summary>The two ways of working that matter: held at full pressure, and stroke after stroke without a pause.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="oil">The oil.</param>
    /// <param name="p">Pressure it is held at, Pa, above zero.</param>
    /// <param name="times">Times of a stroke.</param>
    /// <param name="approach">Motion before the work.</param>
    /// <param name="pressing">Motion under it.</param>
    /// <param name="back">Motion of the return by oil; null where a spring or weight does it.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static IReadOnlyList<HeatCase> Of(
        RigElectricPack pack, RigOil oil, double p, StrokeTimes times, SpeedAtLoad approach, SpeedAtLoad pressing, SpeedAtLoad? back,
        Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(oil);
        ArgumentNullException.ThrowIfNull(times);
        Check.Positive(p);
        var cases = new List<HeatCase>(2) { Case("held at full pressure", Shaft(pack, p, w), pack, oil, w) };
        if (times is not { Pressing: { } t_p, Whole: { } t } || !(t > 0))
            return cases;
        double E_a = Shaft(pack, approach.PumpPressure) * times.Approach, E_p = Shaft(pack, pressing.PumpPressure) * t_p;
        double E_r = back is { } b && times.Return is { } t_r ? Shaft(pack, b.PumpPressure) * t_r : 0;
        double W = times.PressingForce * times.PressingPart;
        double P = Math.Max(0, (E_a + E_p + E_r - W) / t);
        w?.Step("P_h", "heat of stroke after stroke: shaft work less work on the piece", "max(0, (E_a + E_p + E_r − W)/t)", P, Dimension.Power, Source,
            ("E_a", E_a, Dimension.Energy), ("E_p", E_p, Dimension.Energy), ("E_r", E_r, Dimension.Energy), ("W", W, Dimension.Energy), ("t", t, Dimension.Time));
        cases.Add(Case("stroke after stroke without a pause", P, pack, oil, w));
        return cases;
    }

    /// <summary>Power at the shaft at a pressure, W: the stages that still deliver into it.</summary>
    private static double Shaft(RigElectricPack pack, double p, Working? w = null)
    {
        double P = Stage(pack.HighStage, w);
        return pack.LowStage is { } low && p < pack.UnloadAt ? P + Stage(low, null) : P;

        double Stage(RigStage stage, Working? shown) => HydraulicPower.Of(
            p, HydraulicPower.Flow(stage.Displacement, pack.Speed, stage.VolumetricEfficiency), stage.VolumetricEfficiency * stage.MechanicalEfficiency, shown);
    }

    private static HeatCase Case(string where, double P, RigElectricPack pack, RigOil oil, Working? w)
    {
        double steady = OilHeat.SteadyRise(P, pack.TankWalls, OilHeat.FreeAir);
        w?.Step("ΔT_s", "rise at which the walls pass all of it", "P/(U A)", steady, Dimension.Number, OilHeat.WallSource,
            ("P", P, Dimension.Power), ("U", OilHeat.FreeAir, Dimension.Number), ("A", pack.TankWalls, Dimension.Area));
        double capacity = OilHeat.Capacity(pack.TankOil, oil.Grade.Density, 0);
        double left = OilHeat.Warmest - oil.Surroundings;
        return new HeatCase(where, P, oil.Surroundings + steady,
            OilHeat.TimeToRise(Math.Max(0, left), steady, capacity, OilHeat.FreeAir * pack.TankWalls, w));
    }
}
