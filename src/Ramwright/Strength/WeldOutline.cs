using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Strength;

/// <summary>Fillets around the outlines that parts are usually welded along.</summary>
/// <remarks>One leg lies on the face, pointing away from the part, the other climbs the part.</remarks>
public static class WeldOutline
{
    /// <summary>Chords that stand for a circle; its polar moment then comes out 0.04 % low.</summary>
    private const int Chords = 96;

    /// <summary>A rectangle welded all round; the weld runs on round the corners, so no length is taken off.</summary>
    /// <param name="plane">The face.</param>
    /// <param name="b">Along U, m.</param>
    /// <param name="d">Along V, m.</param>
    /// <param name="a">Throat, m.</param>
    public static WeldGroup Rectangle(WeldPlane plane, double b, double d, double a)
    {
        Check.Positive(b);
        Check.Positive(d);
        return new WeldGroup(
        [
            Line(plane, -b / 2, -d / 2, b / 2, -d / 2, a, -plane.V),
            Line(plane, b / 2, -d / 2, b / 2, d / 2, a, plane.U),
            Line(plane, b / 2, d / 2, -b / 2, d / 2, a, plane.V),
            Line(plane, -b / 2, d / 2, -b / 2, -d / 2, a, -plane.U),
        ]);
    }

    /// <summary>Two parallel fillets along V, one on each side of a plate.</summary>
    /// <param name="plane">The face.</param>
    /// <param name="length">Length of each as laid down, m.</param>
    /// <param name="apart">Thickness of the plate between them, along U, m.</param>
    /// <param name="a">Throat, m.</param>
    /// <param name="openEnds">Whether the runs start and stop in the open, so that a throat at each end does not count.</param>
    public static WeldGroup TwoLines(WeldPlane plane, double length, double apart, double a, bool openEnds = true)
    {
        Check.Positive(length);
        Check.Positive(apart);
        WeldSegment right = Line(plane, apart / 2, -length / 2, apart / 2, length / 2, a, plane.U);
        WeldSegment left = Line(plane, -apart / 2, -length / 2, -apart / 2, length / 2, a, -plane.U);
        return new WeldGroup(openEnds ? [right.WithoutEnds(), left.WithoutEnds()] : [right, left]);
    }

    /// <summary>An I or H section welded all round, web along V. Root radii and the flange tips are left out, which is conservative.</summary>
    /// <param name="plane">The face.</param>
    /// <param name="h">Depth along V, m.</param>
    /// <param name="b">Width along U, m.</param>
    /// <param name="tw">Web, m.</param>
    /// <param name="tf">Flange, m.</param>
    /// <param name="r">Root radius, m, zero or more.</param>
    /// <param name="aFlange">Throat along the flanges, m.</param>
    /// <param name="aWeb">Throat along the web, m.</param>
    public static WeldGroup Profile(
        WeldPlane plane, double h, double b, double tw, double tf, double r, double aFlange, double aWeb)
    {
        Check.NotNegative(r);
        double web = Check.Positive(h) / 2 - Check.Positive(tf) - r, inner = Check.Positive(tw) / 2 + r;
        Check.Positive(web, "straight part of the web");
        Check.Positive(Check.Positive(b) / 2 - inner, "straight part of the flange");
        var welds = new List<WeldSegment>();
        foreach (double up in (ReadOnlySpan<double>)[1, -1])
        {
            welds.Add(Line(plane, -b / 2, up * h / 2, b / 2, up * h / 2, aFlange, up * plane.V));
            double v = up * (h / 2 - tf);
            welds.Add(Line(plane, -b / 2, v, -inner, v, aFlange, -up * plane.V));
            welds.Add(Line(plane, inner, v, b / 2, v, aFlange, -up * plane.V));
            welds.Add(Line(plane, up * tw / 2, -web, up * tw / 2, web, aWeb, up * plane.U));
        }

        return new WeldGroup(welds);
    }

    /// <summary>A round bar or tube welded all round.</summary>
    /// <param name="plane">The face.</param>
    /// <param name="d">Diameter, m.</param>
    /// <param name="a">Throat, m.</param>
    public static WeldGroup Circle(WeldPlane plane, double d, double a)
    {
        // The corners stand a little outside the circle, so that the chords together are as long as it.
        double x = Math.PI / Chords, R = Check.Positive(d) / 2 * x / Math.Sin(x);
        var welds = new WeldSegment[Chords];
        for (int i = 0; i < Chords; i++)
        {
            double p = 2 * x * i, q = 2 * x * (i + 1), mid = (p + q) / 2;
            welds[i] = Line(plane, R * Math.Cos(p), R * Math.Sin(p), R * Math.Cos(q), R * Math.Sin(q), a,
                Math.Cos(mid) * plane.U + Math.Sin(mid) * plane.V);
        }

        return new WeldGroup(welds);
    }

    /// <summary>One straight fillet of a part that stands on a face.</summary>
    /// <param name="plane">The face.</param>
    /// <param name="u1">One end, m.</param>
    /// <param name="v1">One end, m.</param>
    /// <param name="u2">The other end, m.</param>
    /// <param name="v2">The other end, m.</param>
    /// <param name="a">Throat, m.</param>
    /// <param name="outward">In the face, away from the part.</param>
    public static WeldSegment Line(WeldPlane plane, double u1, double v1, double u2, double v2, double a, Vector outward) =>
        WeldSegment.Fillet(plane.At(u1, v1), plane.At(u2, v2), a, outward, plane.Normal);
}
