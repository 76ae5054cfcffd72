using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>The cylinder at the top of the circuit, with what holds its load.</summary>
internal static class Ram
{
    private const double Left = 62, Right = 112, Foot = 140, Top = 156, Piston = 84, Bore = 67, Ring = 106;

    public static void Draw(HydraulicSchematic.Draft d, bool pulls)
    {
        CircuitSymbols s = d.Symbols;
        RigCylinder c = d.Check.Rig.Cylinder;
        double mid = (Foot + Top) / 2;
        s.Box(Left, Foot, Right - Left, Top - Foot);
        s.Box(Piston, Foot, 4, Top - Foot, fill: "#e9ebea");
        s.Box(Piston + 4, mid - 2, Right - Piston + 16, 4);
        if (c.Hole > 0)
        {
            s.Marks.Add(new Line("", [(Left, mid - 0.9), (Right + 20, mid - 0.9)], Pen.Hidden));
            s.Marks.Add(new Line("", [(Left, mid + 0.9), (Right + 20, mid + 0.9)], Pen.Hidden));
        }

        s.Pipe((ControlValve.A, ControlValve.Top), (ControlValve.A, 118), (Bore, 118), (Bore, Foot));
        if (d.Check.Rig.Valves.HoseBurst == true)
        {
            s.Box(64, 132, 6, 5);
            s.Marks.Add(new Line("", [(65.2, 135.6), (67, 133.4), (68.8, 135.6)], Pen.Edge));
            d.Tag("hose-burst valve", "in the cylinder's port", 57, 134.5);
        }

        if (pulls)
            s.Pipe((ControlValve.B, ControlValve.Top), (ControlValve.B, 118), (Ring, 118), (Ring, Foot));
        else if (c.Return == RamReturn.Spring)
        {
            s.Marks.Add(new Line("", [(Piston + 4, Top - 3), (91, Foot + 10), (94, Top - 2), (97, Foot + 10), (100, Top - 2), (103, Foot + 10), (106, Top - 2), (Right, Top - 3)], Pen.Thin));
        }

        // a raised ram is held on the side that carries it: the ring's where it pushes down, the bore's otherwise
        bool onRing = pulls && c.Pushes != RamDirection.Up;
        if (pulls || d.Check.Rig.Valves.Holding is not (null or HoldingValve.None))
            Holding(d, onRing ? Ring : Bore, onRing ? Bore : pulls ? Ring : null);

        string force = $"{d.Text(d.Check.Power.TrueForce, Dimension.Force)} at {d.Text(d.Check.Power.TruePressure, Dimension.Pressure)}";
        string what = c switch { { Count: > 1 } => $"cylinders, {c.Count} side by side on one line", { Hole: > 0 } => "cylinder, hollow plunger", _ => "cylinder" };
        string back = pulls ? "returned by oil" : c.Return == RamReturn.Spring ? "returned by its spring" : "returned by weight or load";
        d.Tag(what, $"bore {d.Text(c.Bore, Dimension.Length)}, rod {d.Text(c.Rod, Dimension.Length)}, stroke {d.Text(c.Stroke, Dimension.Length)}, rated {d.Text(c.RatedPressure, Dimension.Pressure)}; {back}; true force {force}",
            Left - 6, mid);
    }

    private static void Holding(HydraulicSchematic.Draft d, double on, double? pilot)
    {
        CircuitSymbols s = d.Symbols;
        Valves valves = d.Check.Rig.Valves;
        string place = valves.HoldingAtCylinder switch { true => "on the cylinder's own port", false => "a hose between it and the cylinder", _ => "whether it stands on the cylinder's port: " + CircuitComponent.Open };
        double near = on == Ring ? on - 5 : on + 5, tag = on == Ring ? on + 12 : on - 10;
        void Piloted(double y)
        {
            if (pilot is not { } from)
                return;
            s.Dot(from, 121);
            s.Pilot((from, 121), ((on + from) / 2 + 7, 121), ((on + from) / 2 + 7, y), (near, y));
        }

        switch (valves.Holding)
        {
            case HoldingValve.PilotCheck:
                s.Box(on - 5, 124, 10, 10);
                s.Pipe((on, 124), (on, 126.5));
                s.Check(on, 129);
                s.Pipe((on, 131), (on, 134));
                Piloted(127);
                d.Tag("pilot-operated check valve", place, tag, 129);
                break;
            case HoldingValve.Counterbalance:
                s.PressureValve(on, 129);
                Piloted(129);
                d.Tag("counterbalance valve, with its check valve for lifting", place, on == Ring ? on + 20 : tag, 129);
                break;
            case HoldingValve.None:
                d.List("holding valve", "none: nothing but the control valve holds the ram up");
                break;
            default:
                s.Box(on - 5, 124, 10, 10, Pen.Hidden);
                s.Say("?", on, 127, Anchor.Middle, 4, bold: true);
                d.Tag("holding valve", CircuitComponent.Open, tag, 129);
                break;
        }
    }
}
