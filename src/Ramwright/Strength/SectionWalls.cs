using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>The walls of a section, and what they let it be counted with.</summary>
/// <remarks>
/// A class 4 section is rated by the stress at which its worst wall would just be class 3 (EN 1993-1-1, 5.5.2(9)): f_y falls with the square
/// of the slenderness, for the whole section and for every check, buckling included. That is on the safe side of effective widths.
/// </remarks>
public sealed class SectionWalls
{
    /// <summary>Stress at which a class 4 section counts as class 3.</summary>
    public static readonly Citation ReducedSource = new("EN 1993-1-1:2005", "5.5.2(9) with table 5.2");

    /// <summary>Class 3 limits of walls held along one edge.</summary>
    public static readonly Citation OutstandSource = new("EN 1993-1-1:2005", "table 5.2 sheet 2, with EN 1993-1-5:2006 table 4.2");

    /// <summary>Thin round tubes.</summary>
    public static readonly Citation TubeSource = new("AISC 360-16", "E7.2, eq. E7-6 and E7-7", Standing.FromMemory);

    /// <summary>Buckling in shear.</summary>
    public static readonly Citation ShearSource = new("EN 1993-1-5:2006", "5.2 and 5.3, table 5.1, eq. 5.5", Standing.FromMemory);

    private const double E = 210e9;
    private readonly Wall[] _walls;
    private readonly SectionProperties _section;

    private SectionWalls(Wall[] walls, SectionProperties section) => (_walls, _section) = (walls, section);

    /// <summary>The walls; none of a solid bar.</summary>
    public IReadOnlyList<Wall> All => _walls;

    /// <summary>The walls of one strand.</summary>
    /// <param name="shape">A single shape, not a pair.</param>
    /// <exception cref="ArgumentException">A shape whose walls are not known here.</exception>
    public static SectionWalls Of(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return new SectionWalls(Walls(shape), shape.Properties);
    }

    /// <summary>Why a section is too thin to be rated at all, or null.</summary>
    /// <param name="fy">Yield strength, Pa.</param>
    public string? WhyNot(double fy)
    {
        foreach (Wall wall in _walls)
        {
            if (wall.Hold == WallHold.Round && wall.C / wall.T >= 0.45 * E / Check.Positive(fy))
                return $"a tube of {wall.C / wall.T:0} times its wall across buckles like a tin can and is not rated";
        }

        return null;
    }

    /// <summary>The class under these actions, and the yield strength that may be counted on, Pa.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>Class 1 to 3 with the yield strength as it is; class 4 with a lower one, to be used as class 3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A tube too thin to be rated: see <see cref="WhyNot"/>.</exception>
    /// <remarks>
    /// For classes 1 and 2 walls in any push count as pushed over their whole width, and flanges as evenly pushed: simpler and never a better class.
    /// </remarks>
    public (SectionClass Class, double Fy) Counted(Actions a, double fy, Working? w = null)
    {
        Acting.Finite(a);
        Check.Positive(fy);
        SectionClass worst = SectionClass.One;
        double least = fy;
        int at = -1;
        double tight = 0;
        for (int i = 0; i < _walls.Length; i++)
        {
            ref readonly Wall wall = ref _walls[i];
            double s1 = -Stress(a, wall.Y1, wall.Z1), s2 = -Stress(a, wall.Y2, wall.Z2), most = Math.Max(s1, s2);
            if (wall.Hold == WallHold.Round)
                most = Math.Max(most, Math.Abs(a.My) + Math.Abs(a.Mz));
            if (!(most > 0))
                continue;
            (SectionClass its, double counted, double use) = Judge(wall, s1, s2, a.N < 0, fy);
            if (its > worst)
                worst = its;
            if (use > tight)
                (tight, at) = (use, i);
            least = Math.Min(least, counted);
        }

        if (w is not null && at >= 0)
            Show(_walls[at], a, fy, worst, w);
        return (worst, least);
    }

    /// <summary>χ_w: what buckling in shear leaves of the shear resistance; 1 for webs up to 72 ε thick over thin.</summary>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <remarks>Webs stiffened at their ends only, η = 1, flanges not counted. Walls held along both edges; of several the thinnest.</remarks>
    public double InShear(double fy, Working? w = null)
    {
        double slender = 0;
        foreach (Wall wall in _walls)
        {
            if (wall.Hold == WallHold.BothEdges)
                slender = Math.Max(slender, wall.C / wall.T);
        }

        double lambda = slender / (86.4 * PlateClass.Epsilon(fy)), chi = lambda > 0.83 ? 0.83 / lambda : 1;
        if (chi < 1 && w is not null)
        {
            w.Step("λ_w", "slenderness of the thinnest wall in shear", "c_t / (86.4 √(235000000 / f_yn))", lambda, Dimension.Number, ShearSource,
                ("c_t", slender, Dimension.Number), ("f_yn", fy, Dimension.Stress));
            w.Step("f_y", "yield strength that counts in shear", "f_yn · 0.83 / λ_w", fy * chi, Dimension.Stress, ShearSource,
                ("f_yn", fy, Dimension.Stress), ("λ_w", lambda, Dimension.Number));
        }

        return chi;
    }

    private double Stress(Actions a, double y, double z) => a.N / _section.A + a.My * z / _section.Iy - a.Mz * y / _section.Iz;

    /// <summary>Class of one wall, the yield strength it lets count, and its c/t over the class 3 limit.</summary>
    private static (SectionClass, double Fy, double Use) Judge(in Wall wall, double s1, double s2, bool pushed, double fy)
    {
        double eps = PlateClass.Epsilon(fy), slender = wall.C / wall.T;
        switch (wall.Hold)
        {
            case WallHold.Round:
                if (slender >= 0.45 * E / fy)
                    throw new ArgumentOutOfRangeException(nameof(wall), slender, "a tube this thin is not rated");
                return (PlateClass.Tube(wall.C, wall.T, fy), fy * Math.Min(1, 0.038 * E / (fy * slender) + 2.0 / 3), slender / (90 * eps * eps));
            case WallHold.OneEdge:
                double lim = PlateClass.OutstandLimit(s1, s2) * eps, of = slender / lim;
                SectionClass even = PlateClass.Outstand(wall.C, wall.T, fy);
                return (of > 1 ? SectionClass.Four : (SectionClass)Math.Min((int)even, 3), of > 1 ? fy / (of * of) : fy, of);
            default:
                double psi = Math.Max(-3, Math.Min(s1, s2) / Math.Max(s1, s2));
                double alpha = pushed || psi >= 0 ? 1 : Math.Max(0.5, 1 / (1 - psi));
                double over = slender / (PlateClass.InternalLimit(psi) * eps);
                return (PlateClass.Internal(wall.C, wall.T, fy, alpha, psi), over > 1 ? fy / (over * over) : fy, over);
        }
    }

    private void Show(in Wall wall, Actions a, double fy, SectionClass worst, Working w)
    {
        double s1 = -Stress(a, wall.Y1, wall.Z1), s2 = -Stress(a, wall.Y2, wall.Z2);
        (_, double counted, double use) = Judge(wall, s1, s2, a.N < 0, fy);
        double slender = wall.C / wall.T;
        w.Note($"Section class {(int)worst}. The tightest wall is the {wall.Name}: c/t = {slender:0.0}, the limit of class 3 is {slender / use:0.0}.");
        if (counted >= fy)
            return;

        w.Note($"The {wall.Name} buckles before the section yields: the yield strength is counted down.");
        Given f = ("f_yn", fy, Dimension.Stress), c = ("c", wall.C, Dimension.Length), t = ("t", wall.T, Dimension.Length);
        if (wall.Hold == WallHold.Round)
        {
            w.Step("f_y", "yield strength that counts", "f_yn (0.038 E / (f_yn c / t) + 2 / 3)", counted, Dimension.Stress, TubeSource,
                f, c, t, ("E", E, Dimension.Stress));
            return;
        }

        double limit = slender / use / PlateClass.Epsilon(fy);
        if (wall.Hold == WallHold.OneEdge)
        {
            w.Take("λ_3", "limit of c/t in class 3 for ε = 1, by the stress at root and tip", limit, Dimension.Number, OutstandSource);
        }
        else
        {
            double psi = Math.Max(-3, Math.Min(s1, s2) / Math.Max(s1, s2));
            w.Step("ψ", "least over greatest stress along the wall, push positive", "max(0 - 3, min(σ_1, σ_2) / max(σ_1, σ_2))", psi, Dimension.Number,
                PlateClass.Source, ("σ_1", s1, Dimension.Stress), ("σ_2", s2, Dimension.Stress));
            w.Step("λ_3", "limit of c/t in class 3 for ε = 1", psi > -1 ? "42 / (0.67 + 0.33 ψ)" : "62 (1 - ψ) √(0 - ψ)", limit, Dimension.Number,
                PlateClass.Source, ("ψ", psi, Dimension.Number));
        }

        w.Step("f_y", "stress at which it would just be class 3", "235000000 (λ_3 t / c)²", counted, Dimension.Stress, ReducedSource,
            ("λ_3", limit, Dimension.Number), t, c);
    }

    private static Wall[] Walls(Shape shape) => shape switch
    {
        ISection i => OfI(i),
        Channel c => OfChannel(c),
        RectangularHollow r => Tube(r.H, r.B, r.T, r.T, 1.5 * r.T, 1.5 * r.T),
        Box b => Tube(b.H, b.B, b.Tw, b.Tf, b.Tf, b.Tw),
        CircularHollow o => [new Wall("wall of the tube", WallHold.Round, o.D, o.T, 0, o.D / 2, 0, -o.D / 2)],
        Angle l => OfAngle(l),
        Tee t => OfTee(t),
        Flat or Round => [],
        Turned t => [.. Walls(t.Of).Select(w => w with { Y1 = -w.Z1, Z1 = w.Y1, Y2 = -w.Z2, Z2 = w.Y2 })],
        Drilled d => Walls(d.Of),
        Slotted s => OfSlotted(s),
        _ => throw new ArgumentException($"the walls of {shape.GetType().Name} are not known", nameof(shape)),
    };

    private static Wall[] OfI(ISection i)
    {
        double root = i.Tw / 2 + i.R, z = (i.H - i.Tf) / 2, half = i.H / 2 - i.Tf - i.R;
        var all = new List<Wall>(Tips(root, i.B / 2, i.Tf, z));
        if (half > 0)
            all.Add(new Wall("web", WallHold.BothEdges, 2 * half, i.Tw, 0, -half, 0, half));
        return [.. all];
    }

    /// <summary>Four flange tips about both axes.</summary>
    private static IEnumerable<Wall> Tips(double root, double tip, double t, double z)
    {
        if (!(tip > root))
            yield break;
        foreach (int side in (int[])[1, -1])
        {
            yield return new Wall("flange", WallHold.OneEdge, tip - root, t, side * root, z, side * tip, z);
            yield return new Wall("flange", WallHold.OneEdge, tip - root, t, side * root, -z, side * tip, -z);
        }
    }

    private static Wall[] OfChannel(Channel c)
    {
        double back = c.Properties.Left, root = c.Tw + c.R1, z = (c.H - c.Tf) / 2, half = c.H / 2 - c.FlangeAt(c.Tw) - c.R1;
        var all = new List<Wall>();
        if (c.B > root)
        {
            all.Add(new Wall("flange", WallHold.OneEdge, c.B - root, c.Tf, root - back, z, c.B - back, z));
            all.Add(new Wall("flange", WallHold.OneEdge, c.B - root, c.Tf, root - back, -z, c.B - back, -z));
        }

        if (half > 0)
            all.Add(new Wall("web", WallHold.BothEdges, 2 * half, c.Tw, c.Tw / 2 - back, -half, c.Tw / 2 - back, half));
        return [.. all];
    }

    /// <summary>
    /// Both legs, taken whole as sheet 3 of table 5.2 takes them. That sheet lets the mean leg be 11.5 ε thick over thin where sheet 2
    /// lets an outstand be 14 ε: the width is raised by as much, so that evenly pushed both agree.
    /// </summary>
    private static Wall[] OfAngle(Angle l)
    {
        double mean = 14 / 11.5 * (l.H + l.B) / 2;
        double y = l.T / 2 - l.Properties.Left, z = l.T / 2 - l.Properties.Bottom;
        return
        [
            new Wall("standing leg", WallHold.OneEdge, Math.Max(l.H, mean), l.T, y, z, y, l.H - l.Properties.Bottom),
            new Wall("lying leg", WallHold.OneEdge, Math.Max(l.B, mean), l.T, y, z, l.B - l.Properties.Left, z),
        ];
    }

    private static Wall[] OfTee(Tee t)
    {
        double bottom = t.Properties.Bottom, root = t.Tw / 2 + t.R1, stem = t.Tf + t.R1, z = t.Tf / 2 - bottom;
        var all = new List<Wall>();
        if (t.B / 2 > root)
        {
            all.Add(new Wall("flange", WallHold.OneEdge, t.B / 2 - root, t.Tf, root, z, t.B / 2, z));
            all.Add(new Wall("flange", WallHold.OneEdge, t.B / 2 - root, t.Tf, -root, z, -t.B / 2, z));
        }

        if (t.H > stem)
            all.Add(new Wall("stem", WallHold.OneEdge, t.H - stem, t.Tw, 0, stem - bottom, 0, t.H - bottom));
        return [.. all];
    }

    /// <summary>Four walls of a hollow section; the flat width of a rolled one is taken as h − 3t.</summary>
    private static Wall[] Tube(double h, double b, double tw, double tf, double offWeb, double offFlange)
    {
        double z = h / 2 - offWeb, y = b / 2 - offFlange, zm = (h - tf) / 2, ym = (b - tw) / 2;
        return
        [
            new Wall("side wall", WallHold.BothEdges, 2 * z, tw, ym, -z, ym, z),
            new Wall("side wall", WallHold.BothEdges, 2 * z, tw, -ym, -z, -ym, z),
            new Wall("flange", WallHold.BothEdges, 2 * y, tf, -y, zm, y, zm),
            new Wall("flange", WallHold.BothEdges, 2 * y, tf, -y, -zm, y, -zm),
        ];
    }

    /// <summary>The bar welded into the slot holds what is left of the flanges along the slot's edge.</summary>
    private static Wall[] OfSlotted(Slotted s)
    {
        ISection i = s.Of;
        double w = i.Tw / 2, root = s.Slot / 2 < w ? w + i.R : s.Slot / 2, half = i.H / 2 - i.Tf - i.R;
        var all = new List<Wall>(Tips(root, i.B / 2, i.Tf, (i.H - i.Tf) / 2));
        if (s.Slot / 2 < w && half > 0)
        {
            double t = w - s.Slot / 2, y = (w + s.Slot / 2) / 2;
            all.Add(new Wall("web beside the slot", WallHold.BothEdges, 2 * half, t, y, -half, y, half));
            all.Add(new Wall("web beside the slot", WallHold.BothEdges, 2 * half, t, -y, -half, -y, half));
        }

        return [.. all];
    }
}
