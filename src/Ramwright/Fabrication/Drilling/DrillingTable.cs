using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Fabrication.Drilling;

/// <summary>Every bolt, screw, pin and rod of a press that its file names: holes, threads, torque.</summary>
/// <param name="Bolts">Threaded fasteners.</param>
/// <param name="Pins">Pins.</param>
public sealed record DrillingTable(IReadOnlyList<BoltRow> Bolts, IReadOnlyList<PinRow> Pins)
{
    /// <summary>Goes through a press.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of what it says.</param>
    public static DrillingTable Of(PressCheck check, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        var bolts = new List<BoltRow>();
        var pins = new List<PinRow>();
        JointRungs.Repeated(check.Response, (name, joints) => Joint(bolts, pins, name, joints, units));
        Mount(bolts, check.Rig, units);
        if (check.Rig.Ram?.DieHolder is { } holder)
            Holder(bolts, holder, check.Rig.Cylinder.RodSteel, units);
        if (check.Rig.Frame is RigTieRodFrame { Rod: { } rod } frame)
            bolts.Add(Rod(frame, rod, units));
        return new DrillingTable(bolts, pins);
    }

    private static void Joint(List<BoltRow> bolts, List<PinRow> pins, string name, PlanJoint[] joints, UnitSystem units)
    {
        PlanJoint first = joints[0];
        switch (first.Joint)
        {
            case RigBoltedJoint bolted:
                double fu = Math.Min(first.Beam.Fu, first.Onto.Fu);
                var notes = new List<string>();
                if (bolted.Friction is { } mu)
                {
                    double preload = 0.7 * bolted.Class.Fub * bolted.Thread.As;
                    notes.Add($"the faces hold by friction: tighten to {Readout.Text(preload, Dimension.Force, units)} in two rounds by a method of EN 1090-2, faces bare and dry (slip factor {mu:0.##})");
                }
                else if (bolted.Fit == BeamFit.Lapped)
                    notes.Add("the bolts shear: no thread in the plane that is sheared, if they can be had so; torque keeps them from working loose");
                bolts.Add(Tapped(new BoltRow
                {
                    Where = name,
                    Key = first.Key,
                    Count = bolted.Count * joints.Length,
                    Thread = bolted.Thread,
                    Grade = bolted.Class.Name,
                    Hole = bolted.Hole,
                    Yield = bolted.Class.Re,
                    Notes = notes,
                }, bolted.Engagement, bolted.Class, fu, units));
                break;
            case RigPinnedJoint pinned:
                pins.Add(new PinRow(name, joints[0].Key, joints.Length, pinned.Diameter, pinned.Steel.Name, pinned.Middle + 2 * pinned.Outer + 2 * pinned.Gap));
                break;
        }
    }

    private static void Mount(List<BoltRow> bolts, Rig rig, UnitSystem units)
    {
        Steel plate = rig.Cylinder.Mount?.Steel ?? rig.Cylinder.BarrelSteel;
        int cylinders = rig.Cylinder.Count;
        switch (rig.Cylinder.Mount)
        {
            case RigFlangeMount flange:
                bolts.Add(Screws("flange of the cylinder", "cylinder.mount", flange.Bolts, cylinders, plate.Fu(flange.Plate),
                    $"on a circle of {Readout.Text(flange.Circle, Dimension.Length, units)}, evenly; tighten crosswise in three rounds", units));
                break;
            case RigBracketMount bracket:
                bolts.Add(Screws("brackets of the cylinder", "cylinder.mount", bracket.Bolts, bracket.Brackets * cylinders, plate.Fu(bracket.Plate), "hand-tight first, then from the middle outwards", units));
                break;
            case RigCollarMount collar:
                (double least, double most) = TapDrill.Minor(collar.Thread);
                bolts.Add(new BoltRow
                {
                    Where = "collar of the cylinder",
                    Key = "cylinder.mount",
                    Count = cylinders,
                    Thread = collar.Thread,
                    Grade = "the cylinder's own",
                    TapDrill = collar.Thread.D - collar.Thread.P,
                    ThreadDepth = collar.Engagement,
                    Notes = [$"bore the plate to between {Readout.Text(least, Dimension.Length, units, 5)} and {Readout.Text(most, Dimension.Length, units, 5)} and screw-cut the thread on a lathe; screw the collar in over its whole length, up to its shoulder, and lock it"],
                });
                break;
        }
    }

    private static BoltRow Screws(string where, string key, RigScrews screws, int sets, double fu, string note, UnitSystem units) => Tapped(new BoltRow
    {
        Where = where,
        Key = key,
        Count = screws.Count * sets,
        Thread = screws.Thread,
        Grade = screws.Class.Name,
        Hole = ClearanceHole.Usual(screws.Thread),
        Yield = screws.Class.Re,
        Notes = [note],
    }, screws.Engagement, screws.Class, fu, units);

    private static BoltRow Tapped(BoltRow row, double? engagement, PropertyClass grade, double fu, UnitSystem units)
    {
        if (engagement is not { } mesh)
            return row;
        double full = NutAndThread.BalancedEngagement(row.Thread.As * grade.Rm, RamRungs.Fit(row.Thread), fu, inner: true);
        string[] shallow = mesh < full * (1 - 1e-9)
            ? [$"{Readout.Text(mesh, Dimension.Length, units)} of thread strips before the bolt breaks; {Readout.Text(full, Dimension.Length, units)} would be as strong as the bolt. The ladder counts what is there"]
            : [];
        return row with { TapDrill = TapDrill.Of(row.Thread, units), ThreadDepth = mesh, FullStrengthDepth = full, Notes = [.. row.Notes, .. shallow] };
    }

    private static void Holder(List<BoltRow> bolts, RigDieHolder holder, Steel rod, UnitSystem units)
    {
        if (holder.Screws is { } screws)
            bolts.Add(Screws("die holder on the ram", "ram.die-holder", screws, 1, rod.Fu(holder.Face), "the ram's end is hard or chromed: drill and tap it only if its maker allows it, and never into the bore", units));
        if (holder.SetScrews > 0)
        {
            bolts.Add(new BoltRow
            {
                Where = "set screws of the die holder",
                Key = "ram.die-holder",
                Count = holder.SetScrews,
                Thread = Coarse(holder.SetScrew),
                Grade = "45H",
                TapDrill = TapDrill.Of(Coarse(holder.SetScrew), units),
                ThreadDepth = 1.5 * holder.SetScrew,
                Notes = ["cup point on a flat filed into the ram's end"],
            });
        }
    }

    // threads to the inch of UNC by sixteenths of the diameter; ASME B1.1
    private static readonly Dictionary<int, int> Unified = new() { [4] = 20, [5] = 18, [6] = 16, [7] = 14, [8] = 13, [9] = 12, [10] = 11, [12] = 10, [14] = 9, [16] = 8 };

    /// <summary>The coarse thread of a diameter: UNC of one in sixteenths of an inch, else by the ISO 262 pitches.</summary>
    private static ScrewThread Coarse(double d)
    {
        const double inch = 0.0254;
        int parts = (int)Math.Round(d / inch * 16);
        if (Math.Abs(d - parts * inch / 16) < 1e-6 && Unified.TryGetValue(parts, out int tpi))
            return new ScrewThread(d, inch / tpi) { Name = $"{Readout.Fraction(parts, 16)}-{tpi} UNC", Form = ThreadForm.Unified };
        double mm = d * 1000, p = mm <= 6 ? 1 : mm <= 8 ? 1.25 : mm <= 10 ? 1.5 : mm <= 12 ? 1.75 : mm <= 16 ? 2 : mm <= 22 ? 2.5 : mm <= 27 ? 3 : 3.5;
        return new ScrewThread(d, p / 1000) { Name = $"M{Readout.Number(mm)}" };
    }

    private static BoltRow Rod(RigTieRodFrame frame, RigTieRod rod, UnitSystem units) => new()
    {
        Where = "tie rods",
        Key = "frame.rod",
        Count = frame.Rods,
        Thread = rod.Thread,
        Grade = rod.Grade,
        Hole = ClearanceHole.Usual(rod.Thread),
        Notes =
        [
            rod.PreloadMost > 0
                ? $"counted preload {Readout.Text(rod.PreloadLeast, Dimension.Force, units)} to {Readout.Text(rod.PreloadMost, Dimension.Force, units)}: set it by the rod's stretch, with a dial gauge on its end, not by torque alone; nut by nut, crosswise"
                : "no preload is counted: nuts hand-tight against the plates, all alike, and locked",
        ],
    };
}

/// <summary>A pin.</summary>
/// <param name="Where">Where it sits.</param>
/// <param name="Key">Its path in the press file.</param>
/// <param name="Count">How many in the whole press.</param>
/// <param name="Diameter">m.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Grip">What it passes through, m; null where the file does not say.</param>
public sealed record PinRow(string Where, string Key, int Count, double Diameter, string Steel, double? Grip)
{
    /// <summary>The hole, m: pins that are to be drawn by hand run in holes a little larger; common practice.</summary>
    public double Hole => Diameter + (Diameter <= 0.030 ? 0.5e-3 : 1e-3);
}
