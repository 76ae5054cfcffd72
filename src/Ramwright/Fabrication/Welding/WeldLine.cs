using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>What one kind of seam takes: runs, heat, filler, time. SI but for heat input.</summary>
public sealed record WeldLine
{
    /// <summary>The seam.</summary>
    public required Seam Seam { get; init; }
    /// <summary>Runs that fill it.</summary>
    public required int Runs { get; init; }
    /// <summary>Travel at which those runs fill it, m/s.</summary>
    public required double Travel { get; init; }
    /// <summary>Heat input of a run Q, kJ/mm.</summary>
    public required double HeatInput { get; init; }
    /// <summary>Weld laid down at all its places, kg.</summary>
    public required double Deposit { get; init; }
    /// <summary>Filler used up at all its places, stubs and spatter counted, kg.</summary>
    public required double Filler { get; init; }
    /// <summary>Time the arc burns at all its places, s.</summary>
    public required double ArcTime { get; init; }
    /// <summary>Time it takes with cleaning, turning and changing rods, s.</summary>
    public required double WorkTime { get; init; }
    /// <summary>Gas used at all its places, m³ at the pressure of the air.</summary>
    public required double Gas { get; init; }
    /// <summary>Preheat.</summary>
    public required Preheating Preheating { get; init; }
    /// <summary>Cooling from 800 to 500 °C, s; null where the steel is not to be welded.</summary>
    public double? CoolingTime { get; init; }
    /// <summary>Heating one place; null where none is needed or none is named.</summary>
    public HeatUp? HeatUp { get; init; }
    /// <summary>What the builder must look to.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Shortest cooling that leaves a zone soft enough, s: a policy for S355 and the like.</summary>
    public const double ShortestCooling = 5;
    /// <summary>Longest that leaves it tough, s; common practice for structural steels.</summary>
    public const double LongestCooling = 30;

    /// <summary>Reckons a seam.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="welder">How it is welded.</param>
    /// <param name="units">Units of what it says.</param>
    /// <param name="w">Where to write it down.</param>
    public static WeldLine Of(Seam seam, RigWelder welder, UnitSystem units = UnitSystem.Metric, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(seam);
        ArgumentNullException.ThrowIfNull(welder);
        double total = seam.Length * seam.Count, A = seam.Area;
        int runs = WeldDeposit.Runs(A, WeldDeposit.RunArea(welder.Rate, welder.Travel), w);
        // runs of one size fill it exactly: the arc then moves a little faster than the slowest travel
        double travel = welder.Rate / (Stock.Steel.Density * A / runs);
        double Q = Welding.HeatInput.Of(Welding.HeatInput.Efficiency(welder.Process), welder.Volts, welder.Amperes, 1000 * travel, w);
        Preheating preheating = Preheating.Of(seam, welder.Hydrogen, Q, welder.Process, units, w);
        double deposit = WeldDeposit.Mass(A, total, w), arc = deposit / welder.Rate;
        double T0 = Math.Max(welder.SteelTemperature, preheating.Temperature ?? welder.SteelTemperature);
        bool welded = preheating.Advice is WeldAdvice.Weld or WeldAdvice.Preheat;
        double? cooling = welded ? Welding.CoolingTime.Of(Q, T0, 1000 * seam.Thicker, seam.Place, w) : null;
        HeatUp? heat = null;
        var notes = new List<string>(preheating.Remarks);
        if (preheating.Temperature is { } T)
        {
            heat = Welding.HeatUp.Of(Welding.HeatUp.MeasureAt(seam.Thicker), seam.Ways, seam.Outlines, T, welder.SteelTemperature, welder.Torch);
            if (heat is null)
                notes.Add("this torch cannot bring so much steel to its preheat: take a larger one, or two");
        }

        if (cooling is < ShortestCooling)
            notes.Add($"the zone beside the weld cools from 800 to 500 °C in {cooling:0.0} s and may turn hard: fewer and fuller runs, or warmer steel");
        if (cooling > LongestCooling)
            notes.Add($"the zone beside the weld takes {cooling:0} s from 800 to 500 °C and may turn coarse: smaller runs, or let it cool between them");
        if (seam.Kind == WeldKind.Fillet && MinimumFillet.Leg(seam, welder.Process) is var least && seam.Leg < least - 1e-6)
            notes.Add($"a leg of {Readout.Text(least, Dimension.Length, units)} is the least on steel this thick: a smaller run is chilled and cracks");
        return new WeldLine
        {
            Seam = seam,
            Runs = runs,
            Travel = travel,
            HeatInput = Q,
            Deposit = deposit,
            Filler = deposit / WeldDeposit.Efficiency(welder.Process),
            ArcTime = arc,
            WorkTime = arc / WeldDeposit.ArcShare(welder.Process),
            Gas = arc * WeldDeposit.Gas(welder.Process),
            Preheating = preheating,
            CoolingTime = cooling,
            HeatUp = heat,
            Notes = notes,
        };
    }
}

/// <summary>Smallest fillet that is not chilled too fast by the steel it is laid on.</summary>
public static class MinimumFillet
{
    /// <summary>Where it comes from; the table's number moves between editions.</summary>
    public static readonly Citation Source = new("AWS D1.1/D1.1M", "table of minimum fillet weld sizes", Standing.FromMemory);

    /// <summary>Least leg, m.</summary>
    /// <param name="t">Thickness, m: of the thicker part, or of the thinner where the filler is low in hydrogen.</param>
    public static double Leg(double t) => t <= 0.006 ? 0.003 : t <= 0.012 ? 0.005 : t <= 0.020 ? 0.006 : 0.008;

    /// <summary>Least leg of a seam, m.</summary>
    public static double Leg(Seam seam, WeldingProcess process)
    {
        ArgumentNullException.ThrowIfNull(seam);
        double t = process == WeldingProcess.Stick ? seam.Thicker : Math.Min(seam.Standing.Thickness, seam.Through.Thickness);
        return Leg(t);
    }
}
