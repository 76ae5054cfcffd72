using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles every number of a press: what was said stands, what was not is assumed and listed.</summary>
public static class Resolver
{
    /// <summary>Resolves a press that has been read without faults.</summary>
    /// <param name="press">The press.</param>
    /// <param name="shelf">Where its stock names are found.</param>
    /// <exception cref="ArgumentException">The press lacks something needed, or names stock that is not on the shelf:
    /// read it with its faults first.</exception>
    /// <exception cref="PressFaultsException">With the stock at hand the press turns out to be one that cannot be built.</exception>
    public static Rig Resolve(Press press, Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(shelf);
        var assume = new Assumptions();
        double wanted = Needed(press.Wanted, "wanted");

        RigCylinder cylinder = ResolveCylinder.Of(Needed(press.Cylinder, "cylinder"), shelf, assume);
        RigPump pump = ResolvePump.Of(Needed(press.Pump, "pump"), cylinder, assume);
        RigFrame frame = ResolveFrame.Of(Needed(press.Frame, "frame"), shelf, assume);
        MountRoom.Check(cylinder, frame, press.Pull is not null, assume);
        RigLoading loading = ResolveLoading.Of(press.Loading, wanted, cylinder, frame, assume);
        RigRamEnd? ram = ResolveRamEnd.Of(press.Ram, cylinder, loading, shelf, assume);
        RigPullGear? pull = ResolvePullGear.Of(press.Pull, cylinder, shelf, assume);

        Factors f = press.Factors ?? new Factors();
        var factors = new RigFactors(
            assume.Or(f.Load, "factors.load", 1.5, Dimension.Number, "EN 1990 table A1.2(B): variable load"),
            assume.Or(f.RodBuckling, "factors.rod-buckling", 3.5, Dimension.Number, "older hydraulic handbooks, from memory"),
            assume.Or(f.Barrel, "factors.barrel", 2.0, Dimension.Number, "ASME B30.1-2015, 1-2.1.2(c): half of yield"),
            assume.Or(f.Fatigue, "factors.fatigue", 1.35, Dimension.Number,
                "EN 1993-1-9 table 3.1, from memory: nobody looks for cracks, and breaking hurts"),
            assume.Or(f.FatigueLoad, "factors.fatigue-load", 1.0, Dimension.Number, "EN 1993-2 9.3, from memory: the load of a squeeze is known"));

        IReadOnlyList<RigLine> lines = ResolveLines.Of(press.Lines, shelf, assume);
        RigOil oil = ResolveLines.Oil(press.Oil, shelf, assume);
        IReadOnlyList<RigJob> jobs = ResolveJobs.Of(press, cylinder, frame, shelf, assume);
        IReadOnlyList<RigOwnPart> ownParts = ResolveMaking.Parts(press.Parts, shelf, assume);
        IReadOnlyList<RigSheet> sheets = ResolveMaking.Sheets(press.Sheets, shelf, assume);
        IReadOnlyList<RigBarInStock> bars = ResolveMaking.Bars(press.Bars, shelf, assume);
        if (assume.Faults.Count > 0)
            throw new PressFaultsException(assume.Faults);
        return new Rig
        {
            Name = press.Name ?? "unnamed press",
            Wanted = wanted,
            Cylinder = cylinder,
            Pump = pump,
            Lines = lines,
            Oil = oil,
            Valves = press.Valves ?? new Valves(),
            Gauge = press.Gauge is not { } gauge ? null : new RigGauge(
                Needed(gauge.Range, "gauge.range"),
                assume.Or(gauge.Class, "gauge.class", 2.5, Dimension.Number, "the coarse class of cheap shop gauges")),
            Guard = RigGuard.Of(press.Guard),
            Frame = frame,
            Loading = loading,
            Ram = ram,
            Pull = pull,
            Jobs = jobs,
            Welding = ResolveWelder.Of(press.Welding, shelf),
            Costs = Costs(press),
            Papers = press.Papers ?? new PaperWork(),
            OwnParts = ownParts,
            Sheets = sheets,
            Bars = bars,
            Cutting = ResolveMaking.Cutting(press.Cutting),
            Factors = factors,
            Assumed = assume.Made,
            Cautions = assume.Cautions,
        };
    }

    private static Prices Costs(Press press)
    {
        Prices said = press.Costs ?? new Prices();
        return said with { SteelPerKg = said.SteelPerKg ?? press.PricePerKg };
    }

    internal static T Needed<T>(T? value, string path)
        where T : class =>
        value ?? throw new ArgumentException($"'{path}' is missing; read the press with its faults first");

    internal static double Needed(double? value, string path) =>
        value ?? throw new ArgumentException($"'{path}' is missing; read the press with its faults first");

    /// <summary>A steel from stock; what may not carry load is a fault, and what is counted for want of papers brings its caution.</summary>
    internal static Steel SteelNamed(string name, Shelf shelf, string path, Assumptions assume)
    {
        if (!shelf.TrySteel(name, out Steel? steel))
            throw new ArgumentException($"'{path}' names a steel that is not in stock: {name}");
        if (steel.Refused.Length > 0)
            assume.Fault(path, steel.Refused, "rolled or forged steel, such as S275; unknown if it has no papers");
        else if (steel.Source.Standing == Standing.Practice)
            assume.CautionOfSteel(steel.Caution, path);
        return steel;
    }
}
