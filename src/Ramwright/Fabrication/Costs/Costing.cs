using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;

namespace Ramwright.Fabrication.Costs;

/// <summary>Puts the bill of materials together. A price that the file does not give is left open, never guessed.</summary>
public static class Costing
{
    private const double KilowattHour = 3.6e6, Hour = 3600, Litre = 1e-3;

    /// <summary>The bill of a press.</summary>
    /// <param name="check">The press.</param>
    /// <param name="steel">Its steel, as it is cut.</param>
    /// <param name="welds">Its weld plan.</param>
    /// <param name="drilling">Its bolts and pins.</param>
    public static CostSheet Of(PressCheck check, IReadOnlyList<SteelItem> steel, WeldPlan welds, DrillingTable drilling)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(steel);
        ArgumentNullException.ThrowIfNull(welds);
        ArgumentNullException.ThrowIfNull(drilling);
        Prices prices = check.Rig.Costs;
        var lines = new List<CostLine>();
        foreach (SteelItem item in steel)
        {
            lines.Add(new CostLine(CostGroup.Steel, item.Count > 1 ? $"{item.Count} × {item.What}" : item.What, item.Mass, "kg",
                item.FromRemnant ? prices.ScrapPerKg ?? 0 : prices.SteelPerKg, item.FromRemnant ? "from what lies there, at its worth as scrap" : ""));
        }

        foreach (BoltRow bolt in drilling.Bolts.Where(b => b.Grade != "the cylinder's own"))
            lines.Add(Unless(prices, bolt.Thread.Name, new CostLine(CostGroup.Fasteners, $"{bolt.Thread.Name} {bolt.Grade}, {bolt.Where}", bolt.Count, "", null, "with nuts and washers")));
        foreach (PinRow pin in drilling.Pins)
            lines.Add(Unless(prices, "pin", new CostLine(CostGroup.Fasteners, $"pin {1000 * pin.Diameter:0.#} mm {pin.Steel}, {pin.Where}", pin.Count, "", null)));
        if (welds.Lines.Count > 0)
            Welding(lines, welds, prices);
        Hydraulics(lines, check.Rig, prices);
        foreach (BoughtThing thing in prices.Bought ?? [])
            lines.Add(new CostLine(CostGroup.Bought, thing.Name ?? "", thing.Count ?? 1, "", thing.InHand == true ? 0 : thing.Price, thing.InHand == true ? "in hand" : ""));
        foreach (WorkHours work in prices.Work ?? [])
            lines.Add(new CostLine(CostGroup.Work, work.Name ?? "", (work.Time ?? 0) / Hour, "h", prices.AnHour));
        return new CostSheet(lines, prices.Currency ?? "", prices.Instead);
    }

    private static void Welding(List<CostLine> lines, WeldPlan welds, Prices prices)
    {
        lines.Add(new CostLine(CostGroup.Welding, "rods or wire", welds.Filler, "kg", prices.FillerPerKg, "stubs and spatter counted"));
        if (welds.Gas > 0)
            lines.Add(new CostLine(CostGroup.Welding, "welding gas", welds.Gas, "m3", prices.GasPerCubicMetre));
        if (welds.Fuel > 0)
            lines.Add(new CostLine(CostGroup.Welding, "gas of the heating torch", welds.Fuel / KilowattHour, "kWh", prices.FuelPerKwh));
        lines.Add(new CostLine(CostGroup.Work, "welding, with cleaning and turning", welds.WorkTime / Hour, "h", prices.AnHour));
        if (welds.HeatingTime > 0)
            lines.Add(new CostLine(CostGroup.Work, "preheating", welds.HeatingTime / Hour, "h", prices.AnHour));
    }

    private static void Hydraulics(List<CostLine> lines, Rig rig, Prices prices)
    {
        void Need(string word, string what, double count) => lines.Add(Unless(prices, word, new CostLine(CostGroup.Hydraulics, what, count, "", null)));
        Need("cylinder", "cylinder", rig.Cylinder.Count);
        Need("pump", rig.Pump is RigElectricPack ? "pump with motor and tank" : "pump", 1);
        if (rig.Lines.Count > 0)
            Need("hose", "hoses", rig.Lines.Count);
        Need("gauge", rig.Gauge is null ? "pressure gauge: the file names none, and there must be one" : "pressure gauge", 1);
        double oil = (rig.Pump is RigElectricPack pack ? pack.TankOil : rig.Pump.UsableOil) + CylinderAreas.Of(rig.Cylinder).Push * rig.Cylinder.Stroke;
        lines.Add(new CostLine(CostGroup.Hydraulics, $"oil {rig.Oil.Grade.Name}", oil / Litre, "L", prices.OilPerLitre, "tank and cylinder; hoses not counted"));
    }

    /// <summary>A thing without a price of its own is priced where the file's list of bought things names it.</summary>
    private static CostLine Unless(Prices prices, string word, CostLine line) =>
        (prices.Bought ?? []).FirstOrDefault(b => b.Name?.Contains(word, StringComparison.OrdinalIgnoreCase) == true) is { } there
            ? line with { Each = 0, Note = $"counted under \"{there.Name}\"" }
            : line with { Note = line.Note.Length > 0 ? line.Note + "; no price given" : "no price given" };
}
