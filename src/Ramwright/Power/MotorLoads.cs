using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>What an electric pack asks of its motor.</summary>
public static class MotorLoads
{
    /// <summary>The points that matter: the changeover of a two-stage pump, and the full pressure.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="full">Full pressure, Pa, above zero: the relief setting, or else what the pump or cylinder is rated for.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static IReadOnlyList<MotorLoad> Of(RigElectricPack pack, double full, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        Check.Positive(full);
        Check.Positive(pack.Motor, "Motor");
        var loads = new List<MotorLoad>(2);
        RigStage high = pack.HighStage;
        double Q_h = HydraulicPower.Flow(high.Displacement, pack.Speed, high.VolumetricEfficiency);
        if (pack.LowStage is { } low)
        {
            double p = Math.Min(pack.UnloadAt, full);
            double Q_l = HydraulicPower.Flow(low.Displacement, pack.Speed, low.VolumetricEfficiency);
            double P_l = HydraulicPower.Of(p, Q_l, low.VolumetricEfficiency * low.MechanicalEfficiency, w);
            double P_h = HydraulicPower.Of(p, Q_h, high.VolumetricEfficiency * high.MechanicalEfficiency, w);
            double P_b = P_l + P_h;
            w?.Step("P_b", "power at the changeover, both stages", "P_l + P_h", P_b, Dimension.Power, HydraulicPower.PressureTimesFlow,
                ("P_l", P_l, Dimension.Power), ("P_h", P_h, Dimension.Power));
            loads.Add(new MotorLoad("both stages, just before the large one is unloaded", p, Q_l + Q_h, P_b, P_b / pack.Motor));
        }

        if (pack.LowStage is null || full > pack.UnloadAt)
        {
            double P = HydraulicPower.Of(full, Q_h, high.VolumetricEfficiency * high.MechanicalEfficiency, w);
            loads.Add(new MotorLoad("full pressure", full, Q_h, P, P / pack.Motor));
        }

        return loads;
    }
}
