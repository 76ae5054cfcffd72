using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>Symbols of fluid power after ISO 1219-1, on a sheet. Filled triangles are oil, open ones are air.</summary>
internal sealed class CircuitSymbols
{
    private const string Ink = "#1c1c1c";

    /// <summary>Everything drawn so far.</summary>
    public List<Mark> Marks { get; } = [];

    /// <summary>A working line.</summary>
    public void Pipe(params (double X, double Y)[] points) => Marks.Add(new Line("", points, Pen.Edge));

    /// <summary>A pilot or drain line.</summary>
    public void Pilot(params (double X, double Y)[] points) => Marks.Add(new Line("", points, Pen.Hidden));

    /// <summary>A point where lines are joined.</summary>
    public void Dot(double x, double y) => Marks.Add(new Area("", new Outline([Round(x, y, 0.75)]), Pen.None, Ink));

    /// <summary>Words.</summary>
    public void Say(string text, double x, double y, Anchor at = Anchor.Left, double height = 2.1, bool bold = false) =>
        Marks.Add(new Lettering("", text, x, y, height, at, Bold: bold));

    /// <summary>The number of a component, as in its table of settings.</summary>
    public void Number(int n, double x, double y)
    {
        Marks.Add(new Area("", new Outline([Round(x, y, 2.4)]), Pen.Thin, "#ffffff"));
        Say($"{n}", x, y - 1, Anchor.Middle, 2);
    }

    /// <summary>A tank, open to the air, its line ending below the oil.</summary>
    public void Tank(double x, double y)
    {
        Marks.Add(new Line("", [(x - 5, y + 4), (x - 5, y), (x + 5, y), (x + 5, y + 4)], Pen.Edge));
        Pipe((x, y + 6), (x, y + 1.5));
    }

    /// <summary>A pump of one direction of flow, driven from the left: its outlet is on top.</summary>
    public void Pump(double x, double y, double r = 6)
    {
        Circle(x, y, r);
        Triangle(x, y + r, 3.6, 3.2, up: true, filled: true);
    }

    /// <summary>A motor: electric with its letter.</summary>
    public void Motor(double x, double y, double r = 6)
    {
        Circle(x, y, r);
        Say("M", x, y - 1.6, Anchor.Middle, 3.2, bold: true);
    }

    /// <summary>A shaft.</summary>
    public void Shaft(double x1, double x2, double y)
    {
        Marks.Add(new Line("", [(x1, y + 0.7), (x2, y + 0.7)], Pen.Edge));
        Marks.Add(new Line("", [(x1, y - 0.7), (x2, y - 0.7)], Pen.Edge));
    }

    /// <summary>A compressor: an open triangle.</summary>
    public void Compressor(double x, double y, double r = 6)
    {
        Circle(x, y, r);
        Triangle(x, y + r, 3.6, 3.2, up: true, filled: false);
    }

    /// <summary>A receiver of air.</summary>
    public void Receiver(double x, double y, double width = 16, double height = 7)
    {
        double h = height / 2, w = width / 2 - h;
        Marks.Add(new Area("", new Outline([[new(x - w, y - h), new(x + w, y - h, 1), new(x + w, y + h), new(x - w, y + h, 1)]]), Pen.Edge));
    }

    /// <summary>An intensifier: air on the left moves oil on the right.</summary>
    public void Intensifier(double x, double y, double size = 13)
    {
        double h = size / 2;
        Box(x - h, y - h, size, size);
        Marks.Add(new Line("", [(x, y - h), (x, y + h)], Pen.Edge));
        Marks.Add(new Area("", new Outline([[new(x - h + 1.2, y - 1.8), new(x - h + 4.6, y), new(x - h + 1.2, y + 1.8)]]), Pen.Edge));
        Marks.Add(new Area("", new Outline([[new(x + 1.6, y - 1.8), new(x + 5, y), new(x + 1.6, y + 1.8)]]), Pen.Edge, Ink));
    }

    /// <summary>A hand lever on a pump, to its left.</summary>
    public void Lever(double x, double y)
    {
        Marks.Add(new Line("", [(x, y), (x - 7, y)], Pen.Edge));
        Marks.Add(new Line("", [(x - 7, y - 3), (x - 9, y + 7)], Pen.Frame));
        Marks.Add(new Area("", new Outline([Round(x - 7, y, 0.9)]), Pen.Edge, "#ffffff"));
    }

    /// <summary>A pressure valve in an upright line: closed at rest, so its arrow stands aside of the line; its spring to the right. The pilot line is the caller's.</summary>
    public void PressureValve(double x, double y)
    {
        Box(x - 5, y - 5, 10, 10);
        Arrow(x - 2.4, y + 5, x - 2.4, y - 5);
        Spring(x + 5, y, 7);
    }

    /// <summary>A pressure reducing valve for air, adjustable: open at rest; in from the left, out to the right.</summary>
    public void Regulator(double x, double y)
    {
        Box(x - 4.5, y - 4.5, 9, 9);
        Arrow(x - 4.5, y, x + 4.5, y);
        Marks.Add(new Line("", Zigzag(x, y + 4.5, 6, upright: true), Pen.Thin));
        Arrow(x - 3.2, y + 4.8, x + 3.2, y + 10.2, Pen.Thin);
    }

    /// <summary>A check valve in an upright line: oil passes upward.</summary>
    public void Check(double x, double y)
    {
        Marks.Add(new Line("", [(x - 2.2, y + 2.1), (x, y - 1.2), (x + 2.2, y + 2.1)], Pen.Edge));
        Marks.Add(new Area("", new Outline([Round(x, y + 0.7, 1.3)]), Pen.Edge, "#ffffff"));
    }

    /// <summary>A gauge, its line coming from the left; dashed with a question mark where there is none yet.</summary>
    public void Gauge(double x, double y, bool there)
    {
        Marks.Add(new Area("", new Outline([Round(x, y, 4.6)]), there ? Pen.Edge : Pen.Hidden, "#ffffff"));
        if (there)
            Arrow(x - 2.6, y - 2.2, x + 2.4, y + 2.6, Pen.Thin);
        else
            Say("?", x, y - 1.8, Anchor.Middle, 3.6, bold: true);
    }

    /// <summary>A box.</summary>
    public void Box(double x, double y, double width, double height, Pen pen = Pen.Edge, string fill = "#ffffff") =>
        Marks.Add(new Area("", new Outline([Loops.Rectangle(x, x + width, y, y + height)]), pen, fill));

    /// <summary>A line with a head at its end.</summary>
    public void Arrow(double x1, double y1, double x2, double y2, Pen pen = Pen.Edge)
    {
        Marks.Add(new Line("", [(x1, y1), (x2, y2)], pen));
        double dx = x2 - x1, dy = y2 - y1, l = Math.Sqrt(dx * dx + dy * dy);
        (dx, dy) = (dx / l, dy / l);
        Marks.Add(new Area("", new Outline([[new(x2, y2), new(x2 - 2.2 * dx - 0.8 * dy, y2 - 2.2 * dy + 0.8 * dx), new(x2 - 2.2 * dx + 0.8 * dy, y2 - 2.2 * dy - 0.8 * dx)]]), Pen.None, Ink));
    }

    /// <summary>A spring to the right of a place.</summary>
    public void Spring(double x, double y, double length) => Marks.Add(new Line("", Zigzag(x, y, length, upright: false), Pen.Thin));

    /// <summary>A port that is blocked: a bar across the end of its stub.</summary>
    public void Blocked(double x, double y, bool up)
    {
        double s = up ? 1 : -1;
        Marks.Add(new Line("", [(x, y), (x, y + s * 2.6)], Pen.Edge));
        Marks.Add(new Line("", [(x - 1.4, y + s * 2.6), (x + 1.4, y + s * 2.6)], Pen.Edge));
    }

    private void Circle(double x, double y, double r) => Marks.Add(new Area("", new Outline([Round(x, y, r)]), Pen.Edge, "#ffffff"));

    private void Triangle(double x, double tip, double width, double height, bool up, bool filled)
    {
        double foot = up ? tip - height : tip + height;
        Marks.Add(new Area("", new Outline([[new(x - width / 2, foot), new(x + width / 2, foot), new(x, tip)]]), Pen.Edge, filled ? Ink : ""));
    }

    private static (double, double)[] Zigzag(double x, double y, double length, bool upright)
    {
        const double wide = 1.5;
        const int turns = 6;
        var points = new List<(double, double)> { (x, y) };
        for (int i = 0; i < turns; i++)
        {
            double along = length * (i + 0.5) / turns, aside = i % 2 == 0 ? wide : -wide;
            points.Add(upright ? (x + aside, y + along) : (x + along, y + aside));
        }

        points.Add(upright ? (x, y + length) : (x + length, y));
        return [.. points];
    }

    private static Corner[] Round(double x, double y, double r) => [new(x + r, y, 1), new(x - r, y, 1)];
}
