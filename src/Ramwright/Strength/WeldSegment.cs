using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A straight run of weld of one throat.</summary>
public sealed record WeldSegment
{
    /// <summary>Where the throat of a fillet stands, and how large one may be counted on.</summary>
    public static readonly Citation FilletSource = new("EN 1993-1-8:2005", "4.3.2.1 and 4.5.1 to 4.5.3.2");

    /// <summary>Smallest throat that the code counts on, m.</summary>
    public const double SmallestThroat = 0.003;

    private WeldSegment(Vector from, Vector to, double throat, Vector normal)
    {
        Acting.Finite(from);
        Acting.Finite(to);
        Check.Positive((to - from).Length, "length of the weld");
        Check.Positive(throat);
        (From, To, Throat, Normal) = (from, to, throat, normal);
    }

    /// <summary>One end, m.</summary>
    public Vector From { get; }
    /// <summary>The other end, m.</summary>
    public Vector To { get; }
    /// <summary>Throat thickness a, m.</summary>
    public double Throat { get; }
    /// <summary>Unit normal of the plane of the throat.</summary>
    public Vector Normal { get; }

    /// <summary>Length, m.</summary>
    public double Length => (To - From).Length;
    /// <summary>Unit vector along it.</summary>
    public Vector Along => (To - From).Unit;
    /// <summary>Area of the throat, m².</summary>
    public double Area => Throat * Length;

    /// <summary>A fillet in the corner between two faces.</summary>
    /// <param name="from">One end of the root, m.</param>
    /// <param name="to">The other end, m.</param>
    /// <param name="throat">Throat thickness a, m: 0.7 of the leg.</param>
    /// <param name="legA">From the root along one of the faces; only the part square to the weld counts.</param>
    /// <param name="legB">From the root along the other face.</param>
    /// <exception cref="ArgumentException">A leg along the weld; faces that meet at less than 60° or more than 120°.</exception>
    public static WeldSegment Fillet(Vector from, Vector to, double throat, Vector legA, Vector legB)
    {
        Vector t = Check.Positive((to - from).Length, "length of the weld") > 0 ? (to - from).Unit : default;
        Vector a = Across(legA, t, nameof(legA)), b = Across(legB, t, nameof(legB));
        if (Math.Abs(a.Dot(b)) > 0.5 + 1e-9)
            throw new ArgumentException("the faces of a fillet must meet at 60° to 120°", nameof(legB));
        return new WeldSegment(from, to, throat, (a - b).Unit);
    }

    /// <summary>A full-penetration butt weld.</summary>
    /// <param name="from">One end, m.</param>
    /// <param name="to">The other end, m.</param>
    /// <param name="thickness">Thickness of the thinner part, m.</param>
    /// <param name="face">Normal of the joint's plane: from one part to the other.</param>
    public static WeldSegment Butt(Vector from, Vector to, double thickness, Vector face) =>
        new(from, to, thickness,
            Across(face, Check.Positive((to - from).Length, "length of the weld") > 0 ? (to - from).Unit : default, nameof(face)));

    /// <summary>Length that counts: full, or less a throat at each end where the run starts and stops in the open; EN 1993-1-8, 4.5.1(1).</summary>
    /// <param name="length">Length laid down, m.</param>
    /// <param name="throat">Throat, m.</param>
    public static double EffectiveLength(double length, double throat) =>
        Math.Max(0, Check.Positive(length) - 2 * Check.Positive(throat));

    /// <summary>Shortest effective length that may carry load, m: 30 mm or six throats; EN 1993-1-8, 4.5.1(2).</summary>
    /// <param name="throat">Throat, m.</param>
    public static double ShortestLength(double throat) => Math.Max(0.030, 6 * Check.Positive(throat));

    /// <summary>Throat of a fillet with equal legs at right angles, m: z/√2.</summary>
    /// <param name="leg">Leg z, m.</param>
    public static double ThroatOfLeg(double leg) => Check.Positive(leg) / Math.Sqrt(2);

    /// <summary>The same run less a throat at each end.</summary>
    /// <exception cref="ArgumentException">What is left is too short to carry load: see <see cref="ShortestLength"/>.</exception>
    public WeldSegment WithoutEnds()
    {
        double left = EffectiveLength(Length, Throat);
        if (!(left >= ShortestLength(Throat) * (1 - 1e-12)))
        {
            throw new ArgumentException(
                $"a weld of {Length * 1e3:0.#} mm leaves {left * 1e3:0.#} mm; it needs {ShortestLength(Throat) * 1e3:0.#} mm to carry load");
        }

        return new WeldSegment(From + Throat * Along, To - Throat * Along, Throat, Normal);
    }

    private static Vector Across(Vector v, Vector t, string name)
    {
        Vector across = Acting.Finite(v) - v.Dot(t) * t;
        if (!(across.Length > 1e-9 * v.Length))
            throw new ArgumentException("must not lie along the weld", name);
        return across.Unit;
    }
}
