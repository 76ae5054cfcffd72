using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>What is bought: hydraulics, bolts, nuts, pins to be turned from bar.</summary>
internal static class BoughtIn
{
    public static void Draw(PartDraft draft)
    {
        Cylinder(draft);
        Pump(draft);
        foreach (IGrouping<string, RigLine> line in draft.Rig.Lines.GroupBy(l => Hose(l, draft.Units)))
            Add(draft, "hose", "lines", line.Count(), line.Key);
        if (draft.Rig.Gauge is { } gauge)
            Add(draft, "pressure gauge", "gauge", 1, $"gauge to {Readout.Text(gauge.Range, Dimension.Pressure, draft.Units)}, class {Readout.Number(gauge.Class)}");
        else
            draft.Undecided("The pressure gauge: without one the press cannot be proved; say gauge.");
        JointFasteners(draft);
        if (draft.Rig.Cylinder.Mount is RigFlangeMount mount)
            Screws(draft, "bolt of the cylinder's flange", "cylinder", mount.Bolts);
        if (draft.Rig.Cylinder.Mount is RigBracketMount bracket)
            Screws(draft, "bolt of the cylinder's brackets", "cylinder", bracket.Bolts with { Count = bracket.Bolts.Count * bracket.Brackets });
        if (draft.Rig.Ram?.DieHolder?.Screws is { } holder)
            Screws(draft, "screw of the die holder", "dies", holder);
        if (draft.Parts.Any(p => p.Name == "keeper"))
            Add(draft, "keeper screw", "dies", 8, draft.Sold.KeeperScrew.Ask, PartOrigin.Proposed);
        if (draft.Rig.Frame is RigTieRodFrame rods)
        {
            int nuts = rods.Rod.Seat == RodSeat.Nut ? 4 : 2;
            Add(draft, "nut of a tie rod", "tie rod", nuts * rods.Rods, $"nut {rods.Rod.Thread.Name}, {Readout.Text(rods.Rod.NutHeight, Dimension.Length, draft.Units)} high, of the rod's class or better");
        }
    }

    private static void Cylinder(PartDraft draft)
    {
        RigCylinder c = draft.Rig.Cylinder;
        string Mm(double x) => Readout.Text(x, Dimension.Length, draft.Units);
        string hole = c.Hole > 0 ? $", hole {Mm(c.Hole)}" : "";
        // barrel, rod and two ends one bore long together: near enough to lift by
        double outside = c.BarrelOutside ?? 1.2 * c.Bore, length = c.Stroke + c.Bore;
        double steel = Math.PI / 4 * ((outside * outside - c.Bore * c.Bore) * length + (c.Rod * c.Rod - c.Hole * c.Hole) * length + c.Bore * c.Bore * c.Bore) * Steel.Density;
        draft.Add(new BoughtPart
        {
            Name = "cylinder",
            Of = "cylinder",
            Count = c.Count,
            Ask = $"cylinder, bore {Mm(c.Bore)}, {(c.CentreTube > 0 ? "plunger" : "rod")} {Mm(c.Rod)}{hole}, stroke {Mm(c.Stroke)}, rated {Readout.Text(c.RatedPressure, Dimension.Pressure, draft.Units)}, "
                + (c.PullsByOil ? "returned by oil" : "returned by spring or weight"),
            Weighs = steel,
            Rule = "mass reckoned from bore, rod and stroke: barrel and rod as long as stroke and bore together, ends one bore thick in all",
            Places = [.. Enumerable.Repeat(draft.Body.RamFace + (draft.Rig.Frame.RamDrop + length / 4) * Vector.Up, c.Count)],
        });
    }

    private static string Hose(RigLine line, UnitSystem units) =>
        $"{(line.Duty == LineDuty.Pressure ? "hose" : $"{KeyNames.Written(line.Duty.ToString())} hose")}, bore {Readout.Text(line.Bore, Dimension.Length, units)}, {Readout.Text(line.Length, Dimension.Length, units)} long"
        + (line.Rating is { } rating ? $", rated {Readout.Text(rating, Dimension.Pressure, units)}" : "");

    private static void Pump(PartDraft draft)
    {
        RigPump pump = draft.Rig.Pump;
        string what = pump switch
        {
            RigAirPump air => $"air-driven pump, {Readout.Text(air.FullFlow, Dimension.Flow, draft.Units)} at {Readout.Text(air.FullFlowAt, Dimension.Pressure, draft.Units)}, for {Readout.Text(air.RatedAir, Dimension.Pressure, draft.Units)} of air",
            RigElectricPack pack => $"power pack, motor {Readout.Text(pack.Motor, Dimension.Power, draft.Units)}, {Readout.Text(pack.HighStage.Displacement, Dimension.Displacement, draft.Units)}"
                + (pack.LowStage is { } low ? $" and {Readout.Text(low.Displacement, Dimension.Displacement, draft.Units)} in two stages" : ""),
            RigHandPump => "hand pump",
            _ => "pump",
        };
        string relief = pump.Relief is { } p ? $", relief valve with {Readout.Text(p, Dimension.Pressure, draft.Units)} in its range (what it is set to stands on the rating plate)" : "";
        Add(draft, "pump", "pump", 1, $"{what}{relief}, {Readout.Text(pump.UsableOil, Dimension.Volume, draft.Units)} of usable oil");
    }

    private static void JointFasteners(PartDraft draft)
    {
        foreach (IGrouping<string, Fastening> alike in Fastening.Of(draft).Where(f => !f.OnlyOnto).GroupBy(f => f.Joint.Key))
        {
            Fastening one = alike.First();
            // from the outer face of the first wall to that of the last
            var walls = draft.Body.Pieces.Where(one.Concerns).SelectMany(one.Walls).ToList();
            double grip = walls.Count == 0 ? 0 : walls.Max(w => w.To) - walls.Min(w => w.From);
            string joint = one.Joint.Name.Split(',')[0];
            switch (one.Joint.Joint)
            {
                case RigBoltedJoint bolts:
                    grip += bolts.EndPlate?.Thickness ?? 0;
                    if (walls.Count == 0)
                    {
                        draft.Undecided($"Length of the bolts of the {joint}: the file's pattern does not meet steel.");
                        break;
                    }

                    Add(draft, $"bolt of the {joint}", one.Joint.Beam.Part, alike.Count(),
                        bolts.Engagement is null ? $"{BoltLength.Ask(bolts.Thread, grip)}, {bolts.Class.Name}, nut and two washers" : $"bolt {bolts.Thread.Name}, {bolts.Class.Name}, long enough for {Readout.Text(bolts.Engagement.Value, Dimension.Length, draft.Units)} in mesh and a grip of {Readout.Text(grip, Dimension.Length, draft.Units)}");
                    break;
                case RigPinnedJoint pin:
                    double length = Math.Max(grip, pin.Middle + 2 * (pin.Outer + pin.Gap)) + 2 * pin.Diameter / 2;
                    draft.Add(new LengthPart
                    {
                        Name = $"pin of the {joint}",
                        Of = one.Joint.Beam.Part,
                        Count = alike.Count(),
                        Steel = pin.Steel,
                        Section = new Round(pin.Diameter) { Name = $"round {SectionSizes.Named([pin.Diameter], draft.Units == UnitSystem.Imperial)}", Source = SectionText.AsGiven },
                        Length = length,
                        Rule = "as long as all it goes through and half its diameter at either end for what keeps it in; common practice",
                        Places = [.. alike.Select(f => f.At)],
                    });
                    draft.Undecided($"What keeps the pins of the {joint} in: collars, rings or split pins.");
                    break;
            }
        }
    }

    private static void Screws(PartDraft draft, string name, string of, RigScrews screws) => Add(draft, name, of, screws.Count,
        $"{screws.Thread.Name}, {screws.Class.Name}, "
        + (screws.Engagement is { } mesh ? $"{Readout.Text(mesh, Dimension.Length, draft.Units)} of thread in mesh" : "full nut and two washers; length by what it goes through"));

    private static void Add(PartDraft draft, string name, string of, int count, string ask, PartOrigin origin = PartOrigin.Described) =>
        draft.Add(new BoughtPart { Name = name, Of = of, Count = count, Ask = ask, Origin = origin });
}
