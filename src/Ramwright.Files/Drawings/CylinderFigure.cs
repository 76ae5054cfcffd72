using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Files.Drawings;

/// <summary>The cylinder as a plain outline, its ram up, and the ram's lowest place in thin dashes.</summary>
internal static class CylinderFigure
{
    /// <summary>Wall and ends of a barrel whose outside nobody stated, as shares of the bore: to be seen, not to be measured.</summary>
    private const double UsualOutside = 1.25, UsualEnds = 1;

    public static double Outside(RigCylinder cylinder) => cylinder.BarrelOutside ?? UsualOutside * cylinder.Bore;

    /// <summary>How far the barrel stands above the ram's face, m: at least what the ram drop hides.</summary>
    public static double Top(RigCylinder cylinder, RigFrame frame) =>
        Math.Max(frame.RamDrop, Under(cylinder, frame) + cylinder.Stroke + UsualEnds * cylinder.Bore);

    public static IEnumerable<Mark> Of(RigCylinder cylinder, RigFrame frame, Vector face, View view)
    {
        double d = Outside(cylinder), under = Under(cylinder, frame), top = Top(cylinder, frame);
        double travel = Math.Min(cylinder.Stroke, frame.Daylight);
        yield return Box(d, under, top, Pen.Edge, "#f2f2ef");
        yield return Box(cylinder.Rod, 0, under, Pen.Edge, "#ffffff");
        (double x, double high) = view.On(face + (top + 0.02) * Vector.Up);
        (_, double low) = view.On(face - (travel + 0.02) * Vector.Up);
        yield return new Line("cylinder", [(x, high), (x, low)], Pen.Centre);
        yield return Box(cylinder.Rod, -travel, 0, Pen.Moved, "");

        Area Box(double wide, double from, double to, Pen pen, string fill)
        {
            (double left, double bottom) = view.On(face - wide / 2 * view.Right + from * Vector.Up);
            (double right, double upper) = view.On(face + wide / 2 * view.Right + to * Vector.Up);
            return new Area("cylinder", new Outline([Loops.Rectangle(left, right, bottom, upper)]), pen, fill);
        }
    }

    private static double Under(RigCylinder cylinder, RigFrame frame) => Math.Min(frame.RamDrop / 2, 0.3 * cylinder.Bore);
}
