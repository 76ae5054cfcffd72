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
    /// <param name="parts">Its parts.</param>
    /// <param name="welds">Its weld plan.</param>
    /// <param name="rack">What of the steel lies there already, and what is left over of what is bought.</param>
    public static CostSheet Of(PressCheck check, PartList parts, WeldPlan welds, FromRack rack)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(welds);
        ArgumentNullException.ThrowIfNull(rack);
        Prices prices = check.Rig.Costs;
        var lines = new List<CostLine>();
        foreach (Part part in parts.Parts.Where(p => p is not BoughtPart))
            Steel(lines, part, rack.Own.GetValueOrDefault(part.Mark), prices);
        foreach ((string what, double mass) in rack.Over)
            lines.Add(new CostLine(CostGroup.Steel, $"left over of {what}", mass, "kg", prices.SteelPerKg, "paid for, and yours to keep"));
        var used = new HashSet<BoughtThing>();
        foreach (BoughtPart part in parts.Bought)
            lines.Add(Bought(part, prices, used));
        lines.Add(new CostLine(CostGroup.Bought, $"oil {check.Rig.Oil.Grade.Name}", Oil(check.Rig) / Litre, "L", prices.OilPerLitre, "tank and cylinder; hoses not counted"));
        foreach (BoughtThing thing in (prices.Bought ?? []).Where(t => !used.Contains(t)))
            lines.Add(new CostLine(CostGroup.Bought, thing.Name ?? "", thing.Count ?? 1, "", Price(thing), thing.InHand == true ? "in hand" : ""));
        if (welds.Counted.Any())
            Welding(lines, welds, prices);
        foreach (WorkHours work in prices.Work ?? [])
            lines.Add(new CostLine(CostGroup.Work, work.Name ?? "", (work.Time ?? 0) / Hour, "h", prices.AnHour));
        return new CostSheet(lines, prices.Currency ?? "", prices.Instead) { OverIfWhole = rack.OverIfWhole.Sum(o => o.Mass), SteelPerKg = prices.SteelPerKg };
    }

    private static void Steel(List<CostLine> lines, Part part, double remnant, Prices prices)
    {
        double all = part.Count * (part.Mass ?? 0), bought = Math.Max(0, all - remnant);
        string what = (part.Count > 1 ? $"{part.Mark}  {part.Count} × {part.Name}" : $"{part.Mark}  {part.Name}") + (part.Steel is { } steel ? $", {steel.Name}" : "");
        if (remnant > 0)
            lines.Add(new CostLine(CostGroup.Steel, what, Math.Min(all, remnant), "kg", prices.ScrapPerKg ?? 0, "from what lies there, at its worth as scrap"));
        if (bought > 1e-9 * all || all == 0)
            lines.Add(new CostLine(CostGroup.Steel, what, bought, "kg", prices.SteelPerKg));
    }

    /// <summary>A bought part is priced by the thing of the file's list that its words begin with: <c>bolt M24</c>, <c>cylinder</c>.</summary>
    private static CostLine Bought(BoughtPart part, Prices prices, HashSet<BoughtThing> used)
    {
        string what = $"{part.Mark}  {part.Ask}";
        if ((prices.Bought ?? []).FirstOrDefault(t => Names(t, part)) is not { } thing)
            return new CostLine(CostGroup.Bought, what, part.Count, "", null);
        used.Add(thing);
        string hand = thing.InHand == true ? "in hand" : "";
        return thing.Count is { } count
            ? new CostLine(CostGroup.Bought, what, count, "", Price(thing), $"{hand}{(hand.Length > 0 && count < part.Count ? "; " : "")}{(count < part.Count ? $"{part.Count} are needed" : "")}")
            : new CostLine(CostGroup.Bought, what, part.Count, "", Price(thing), hand);
    }

    private static double? Price(BoughtThing thing) => thing.InHand == true ? 0 : thing.Price;

    private static bool Names(BoughtThing thing, BoughtPart part)
    {
        const StringComparison any = StringComparison.OrdinalIgnoreCase;
        return thing.Name is { Length: > 0 } name
            && (part.Name.Equals(name, any) || (part.Ask.StartsWith(name, any) && (part.Ask.Length == name.Length || !char.IsLetterOrDigit(part.Ask[name.Length]))));
    }

    private static double Oil(Rig rig) =>
        (rig.Pump is RigElectricPack pack ? pack.TankOil : rig.Pump.UsableOil) + CylinderAreas.Of(rig.Cylinder).Push * rig.Cylinder.Stroke;

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
}
