using Ramwright.Presses;

namespace Ramwright.Files.Drawings;

/// <summary>The valve that sends oil to the cylinder and back, with what its middle joins.</summary>
internal static class ControlValve
{
    private const double Left = 51, Box = 18, Foot = 96, Tall = 14, Main = 78;

    /// <summary>Where the lines to the cylinder leave it.</summary>
    public const double A = 74, B = 82, Top = Foot + Tall;

    public static void Draw(HydraulicSchematic.Draft d, bool pulls)
    {
        CircuitSymbols s = d.Symbols;
        Valves valves = d.Check.Rig.Valves;
        double x = Left;
        for (int i = 0; i < 3; i++, x += Box)
            s.Box(x, Foot, Box, Tall);
        double p = A, t = B;
        s.Pipe((Main, 92), (p, 92), (p, Foot));
        s.Pipe((t, Foot), (t, 92.5), (160, 92.5), (160, 22));
        s.Tank(160, 16);
        // left box: parallel; right box: crossed
        s.Arrow(p - Box, Foot, p - Box, Top);
        s.Arrow(t - Box, Top, t - Box, Foot);
        s.Arrow(p + Box, Foot, t + Box, Top);
        s.Arrow(p + Box, Top, t + Box, Foot);
        Middle(s, valves.Centre, p, t);
        Ends(d, valves.Handle);
        string centre = valves.Centre switch
        {
            SpoolCentre.Closed => "middle: all ports blocked",
            SpoolCentre.Float => "middle: both cylinder ports to tank, pump blocked",
            SpoolCentre.Tandem => "middle: pump to tank, cylinder ports blocked",
            SpoolCentre.Open => "middle: everything to tank",
            _ => "what its middle joins: " + CircuitComponent.Open,
        };
        string handle = valves.Handle switch { SpoolHandle.SpringCentred => "springs bring it to the middle", SpoolHandle.Detent => "stays where it is put", _ => "what it does let go: " + CircuitComponent.Open };
        d.Tag(pulls ? "control valve, four ways" : "control valve, four ways, one port plugged; or the pump's own valve", $"{centre}; {handle}", Left + 3 * Box + 16, Foot + Tall / 2);
        if (!pulls)
            s.Blocked(B, Top, up: true);
    }

    private static void Middle(CircuitSymbols s, SpoolCentre? centre, double p, double t)
    {
        double low = Foot, high = Top, mid = Foot + Tall / 2;
        switch (centre)
        {
            case SpoolCentre.Closed:
                foreach (double x in (ReadOnlySpan<double>)[p, t])
                {
                    s.Blocked(x, low, up: true);
                    s.Blocked(x, high, up: false);
                }

                break;
            case SpoolCentre.Float:
                s.Blocked(p, low, up: true);
                s.Pipe((p, high), (p, mid), (t, mid));
                s.Pipe((t, high), (t, low));
                s.Dot(t, mid);
                break;
            case SpoolCentre.Tandem:
                s.Pipe((p, low), (p, mid), (t, mid), (t, low));
                s.Blocked(p, high, up: false);
                s.Blocked(t, high, up: false);
                break;
            case SpoolCentre.Open:
                s.Pipe((p, low), (p, high));
                s.Pipe((t, low), (t, high));
                s.Pipe((p, mid), (t, mid));
                break;
            default:
                s.Say("?", (p + t) / 2, mid - 2, Anchor.Middle, 5, bold: true);
                break;
        }
    }

    private static void Ends(HydraulicSchematic.Draft d, SpoolHandle? handle)
    {
        CircuitSymbols s = d.Symbols;
        double mid = Foot + Tall / 2, right = Left + 3 * Box;
        if (handle == SpoolHandle.SpringCentred)
        {
            s.Marks.Add(new Line("", [(right, mid), (right + 0.8, mid + 1.6), (right + 2.4, mid - 1.6), (right + 4, mid + 1.6), (right + 5.6, mid - 1.6), (right + 7.2, mid)], Pen.Thin));
            s.Marks.Add(new Line("", [(Left, mid - 4), (Left - 0.8, mid - 2.4), (Left - 2.4, mid - 5.6), (Left - 4, mid - 2.4), (Left - 5.6, mid - 5.6), (Left - 7.2, mid - 4)], Pen.Thin));
        }
        else if (handle == SpoolHandle.Detent)
            s.Marks.Add(new Line("", [(right, mid + 2), (right + 7, mid + 2), (right + 7, mid), (right + 6, mid - 1.4), (right + 5, mid), (right + 4, mid), (right + 3, mid - 1.4), (right + 2, mid), (right, mid)], Pen.Thin));

        // a lever works it from the left
        s.Marks.Add(new Line("", [(Left, mid), (Left - 6, mid)], Pen.Edge));
        s.Marks.Add(new Line("", [(Left - 6, mid - 2), (Left - 8, mid + 6)], Pen.Frame));
    }
}
