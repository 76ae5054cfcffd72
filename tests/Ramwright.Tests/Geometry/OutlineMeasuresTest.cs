using CsCheck;
using Ramwright.Geometry;

namespace Ramwright.Tests.Geometry;

public class OutlineMeasuresTest
{
    private static readonly Outline Rectangle = new([Loops.Rectangle(0, 0.03, 0, 0.2)]);

    [Fact]
    public void Rectangle_has_its_closed_forms()
    {
        AreaMoments m = Rectangle.Moments();

        Near.Relative(0.03 * 0.2, m.A, 1e-14);
        Near.Relative(0.015, m.Y, 1e-14);
        Near.Relative(0.1, m.Z, 1e-14);
        Near.Relative(0.03 * Math.Pow(0.2, 3) / 12, m.Iy, 1e-13);
        Near.Relative(0.2 * Math.Pow(0.03, 3) / 12, m.Iz, 1e-13);
        Near.Absolute(0, m.Iyz, 1e-18);
        Near.Relative(0.03 * 0.2 * 0.2 / 4, Rectangle.PlasticModulus(), 1e-13);
        Near.Relative(0.46, Rectangle.Perimeter(), 1e-14);
    }

    [Fact]
    public void Circle_has_its_closed_forms()
    {
        var circle = new Outline([Loops.Circle(0.06)]);
        AreaMoments m = circle.Moments();

        Near.Relative(Math.PI * 0.0009, m.A, 1e-13);
        Near.Relative(Math.PI * Math.Pow(0.06, 4) / 64, m.Iy, 1e-13);
        Near.Relative(Math.PI * Math.Pow(0.06, 4) / 64, m.Iz, 1e-13);
        Near.Relative(Math.Pow(0.06, 3) / 6, circle.PlasticModulus(), 1e-12);
        Near.Relative(Math.PI * 0.06, circle.Perimeter(), 1e-14);
        Near.Relative(0.06, circle.Extents().Height, 1e-14);
        Near.Relative(0.06, circle.Extents().Width, 1e-14);
    }

    [Fact]
    public void Root_fillet_has_its_closed_forms()
    {
        // The corner between two edges and a quarter circle that touches both: 0.2146 r², centroid 0.2234 r from each edge.
        const double r = 0.018;
        var fillet = new Outline([[new Corner(0, 0), new Corner(r, 0, -Math.Tan(Math.PI / 8)), new Corner(0, r)]]);
        AreaMoments m = fillet.Moments();

        Near.Relative((1 - Math.PI / 4) * r * r, m.A, 1e-12);
        Near.Relative((5.0 / 6 - Math.PI / 4) / (1 - Math.PI / 4) * r, m.Z, 1e-12);
        Near.Relative((1 - 5 * Math.PI / 16) * Math.Pow(r, 4), m.Iy + m.A * m.Z * m.Z, 1e-11);
    }

    [Fact]
    public void Right_triangle_has_a_product_of_inertia()
    {
        var triangle = new Outline([[new Corner(0, 0), new Corner(0.3, 0), new Corner(0, 0.2)]]);

        Near.Relative(-0.3 * 0.3 * 0.2 * 0.2 / 72, triangle.Moments().Iyz, 1e-12);
    }

    [Fact]
    public void Tee_bends_plastically_about_the_axis_of_half_area()
    {
        // Flange 100 x 20 over web 20 x 100: half of 4000 mm² lies in the flange alone.
        var tee = new Outline([Loops.Rounded(
            (-0.01, 0, 0), (0.01, 0, 0), (0.01, 0.1, 0), (0.05, 0.1, 0), (0.05, 0.12, 0), (-0.05, 0.12, 0), (-0.05, 0.1, 0), (-0.01, 0.1, 0))]);

        Near.Relative(0.1, tee.HalfAreaLevel(), 1e-9);
        Near.Relative(2000e-6 * (0.010 + 0.050), tee.PlasticModulus(), 1e-9);
        Near.Relative(2000e-6 * 0.010, tee.FirstMomentAbove(0.1), 1e-12);
        Near.Relative(2000e-6, tee.AreaAbove(0.1), 1e-12);
    }

    [Fact]
    public void Outline_turned_inside_out_is_refused()
    {
        var inside = new Outline([Loops.Rectangle(0, 1, 0, 1).AsHole()]);

        Assert.Throws<ArgumentException>(() => inside.Moments());
        Assert.Throws<ArgumentException>(() => new Outline([]).Moments());
    }

    [Fact]
    public void Rounding_too_great_for_its_edges_is_refused() =>
        Assert.Throws<ArgumentException>(() => { Loops.Rounded((0, 0, 0.6), (1, 0, 0.6), (1, 1, 0), (0, 1, 0)); });

    private static readonly Gen<(double Y, double Z, double Radius)[]> Blob =
        Gen.Select(Gen.Double[0.02, 0.2].Array[5, 9], Gen.Double[0, 0.004]).Select((spokes, r) => spokes
            .Select((s, i) => (s * Math.Cos(2 * Math.PI * i / spokes.Length), s * Math.Sin(2 * Math.PI * i / spokes.Length), r))
            .ToArray());

    [Fact]
    public void Moving_and_turning_changes_no_property_of_its_own()
    {
        Gen.Select(Blob, Gen.Double[-3, 3], Gen.Double[-3, 3]).Sample((corners, across, up) =>
        {
            if (!TryRounded(corners, out Outline outline))
                return;
            AreaMoments m = outline.Moments(), moved = outline.Moved(across, up).Moments();
            AreaMoments turned = outline.QuarterTurned().Moments(), mirrored = outline.Mirrored().Moments();

            Near.Relative(m.A, moved.A, 1e-9);
            Near.Relative(m.Iy, moved.Iy, 1e-9);
            Near.Relative(m.Iy, turned.Iz, 1e-9);
            Near.Relative(m.A, mirrored.A, 1e-12);
            Near.Relative(m.Iz, mirrored.Iz, 1e-12);
            Near.Absolute(-m.Iyz, mirrored.Iyz, 1e-12 * m.Iy);
            Near.Relative(outline.PlasticModulus(), outline.Moved(across, up).PlasticModulus(), 1e-8);
            Near.Relative(outline.PlasticModulus(), outline.Upended().PlasticModulus(), 1e-9);
        }, iter: 100);
    }

    [Fact]
    public void Arcs_agree_with_the_polygon_they_are_cut_into()
    {
        Blob.Sample(corners =>
        {
            if (!TryRounded(corners, out Outline outline))
                return;
            Outline fine = Flattened(outline, 200);

            Near.Relative(fine.Moments().A, outline.Moments().A, 1e-6);
            Near.Relative(fine.Moments().Iy, outline.Moments().Iy, 1e-6);
            Near.Relative(fine.PlasticModulus(), outline.PlasticModulus(), 1e-6);
            Near.Relative(fine.Perimeter(), outline.Perimeter(), 1e-6);
            double cut = outline.Moments().Z + 0.01;
            Near.Absolute(fine.AreaAbove(cut), outline.AreaAbove(cut), 1e-6 * outline.Area());
        }, iter: 30);
    }

    private static bool TryRounded((double, double, double)[] corners, out Outline outline)
    {
        try
        {
            outline = new Outline([Loops.Rounded(corners)]);
            return true;
        }
        catch (ArgumentException)
        {
            outline = new Outline([]);
            return false;
        }
    }

    /// <summary>Each arc as chords, found by halving angles: independent of the code under test.</summary>
    private static Outline Flattened(Outline outline, int chords)
    {
        var flat = new List<Corner>();
        IReadOnlyList<Corner> loop = outline.Loops[0];
        for (int i = 0; i < loop.Count; i++)
        {
            Corner a = loop[i], b = loop[(i + 1) % loop.Count];
            flat.Add(new Corner(a.Y, a.Z));
            if (a.Bulge == 0)
                continue;
            double theta = 4 * Math.Atan(a.Bulge), dy = b.Y - a.Y, dz = b.Z - a.Z;
            double r = Math.Sqrt(dy * dy + dz * dz) / (2 * Math.Sin(theta / 2));      // signed
            double toCentre = Math.Atan2(dz, dy) + Math.PI / 2 - theta / 2;
            double yc = a.Y + r * Math.Cos(toCentre), zc = a.Z + r * Math.Sin(toCentre);
            for (int k = 1; k < chords; k++)
            {
                double t = theta * k / chords, cos = Math.Cos(t), sin = Math.Sin(t);
                flat.Add(new Corner(yc + (a.Y - yc) * cos - (a.Z - zc) * sin, zc + (a.Y - yc) * sin + (a.Z - zc) * cos));
            }
        }

        return new Outline([flat]);
    }
}
