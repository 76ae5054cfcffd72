using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>A reading beside what the model says of it.</summary>
/// <param name="What">What was read.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Measured">Mean of the readings, with what they may be off.</param>
/// <param name="Model">What the model says; null where it says nothing.</param>
/// <param name="Remark">What a difference would mean.</param>
public sealed record Compared(string What, Dimension Dimension, Estimate Measured, double? Model, string Remark)
{
    private const double Reckoned = 0.15;

    /// <summary>Air used up from a receiver.</summary>
    public static readonly Citation Air = Citation.Mechanics("gas law at one temperature: V Δp / p_atm");

    /// <summary>How far the model itself may be off, as a share: little for what is stated or set, more for what is reckoned.</summary>
    public double Band { get; init; } = 0.02;

    /// <summary>Whether the two lie apart by more than the readings (k = 2) and the model may be off.</summary>
    public bool IsApart => Model is { } m && Math.Abs(Measured.Value - m) > 2 * Measured.U + Band * Math.Abs(m);

    /// <summary>Everything that was read and that the model knows of.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    public static IReadOnlyList<Compared> Of(PressCheck check, ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        var all = new List<Compared>();
        RigCylinder c = check.Rig.Cylinder;
        Read(ReadingKind.Bore, "bore", c.Bore, "put the measured bore into the press file");
        Read(ReadingKind.Rod, "rod", c.Rod, "put the measured rod into the press file");
        Read(ReadingKind.CentreTube, "centre tube", c.CentreTube > 0 ? c.CentreTube : null, "put it into the press file");
        Read(ReadingKind.Relief, "relief valve opens", check.Rig.Pump.Relief, "set it, lock it, seal it");
        Read(ReadingKind.Air, "air at the pump", (check.Rig.Pump as RigAirPump)?.AirPressure, "regulator, hose, couplings");
        Speed(ReadingKind.TimeOut, r => r.Pressure is null or <= 10e5, "approach", check.Power.ApproachSpeed, "pump flow, air in the oil, cold oil");
        Speed(ReadingKind.TimeBack, _ => true, "return", check.Power.ReturnSpeed, "return spring, return line, couplings");
        if (check.Rig.Pump is RigAirPump pump)
        {
            double[] used = [.. book.Of(ReadingKind.ReceiverFall).Where(r => r.Over is > 0).Select(r => FreeAir(pump.Compressor.Receiver, r.Value) / r.Over!.Value)];
            if (used.Length > 0)
                all.Add(new Compared("free air taken, compressor stopped", Dimension.FreeAir, Mean(used, 0.05), check.Power.Air?.Demand, "leaks in hose and couplings, worn air piston") { Band = Reckoned });
        }

        return all;

        void Read(ReadingKind kind, string what, double? model, string remark)
        {
            if (book.Values(kind) is { Count: > 0 } values)
            {
                Instrument by = book.For(kind);
                all.Add(new Compared(what, ReadingForm.Of(kind).Measures!.Value, Instrument.With(by.MeanRead(values), by.Error.U), model, remark));
            }
        }

        void Speed(ReadingKind kind, Func<Reading, bool> which, string what, double? model, string remark)
        {
            double[] speeds = [.. book.Of(kind).Where(r => r is { Travel: > 0, Value: > 0 } && which(r)).Select(r => r.Travel!.Value / r.Value)];
            if (speeds.Length > 0)
                all.Add(new Compared(what, Dimension.Speed, Mean(speeds, 0.03), model, remark) { Band = Reckoned });
        }
    }

    /// <summary>Free air that a fall of the receiver stands for, the compressor stopped.</summary>
    /// <param name="V">Receiver, m³.</param>
    /// <param name="dp">Fall, Pa.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m³ of free air.</returns>
    public static double FreeAir(double V, double dp, Working? w = null)
    {
        double free = Check.Positive(V) * Check.Finite(dp) / Atmosphere.Pressure;
        w?.Step("V_0", "free air", "V Δp / p_atm", free, Dimension.Volume, Air, ("V", V, Dimension.Volume), ("Δp", dp, Dimension.Pressure), ("p_atm", Atmosphere.Pressure, Dimension.Pressure));
        return free;
    }

    private static Estimate Mean(double[] values, double share) =>
        values.Length > 1 ? Instrument.With(Estimate.Repeated(values), share / 2 * Math.Abs(values.Average())) : new Estimate(values[0], share * Math.Abs(values[0]));
}
