using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A constructional detail and the stress range that it stands two million times, EN 1993-1-9.</summary>
/// <param name="What">The detail, in words.</param>
/// <param name="Strength">Δσ_C or Δτ_C at 2 million cycles, Pa.</param>
/// <param name="Source">Table and row.</param>
/// <param name="Shear">Whether the range is one of shear stress, with its single slope of 5.</param>
/// <remarks>
/// Only the details that the parts of a press have. Rows marked from memory are to be confirmed in the standard before
/// leaning on them. The tables ask for sound welds: full throats, no cold laps, no undercut, starts and stops away from the plate's edge.
/// A starred category (36*, 45*) lies a step lower than the tests at 2 million cycles; 7.1(4) lets it be raised a step where the fatigue limit
/// is taken at 10 million. That is not made use of.
/// </remarks>
public sealed record DetailCategory(string What, double Strength, Citation Source, bool Shear = false)
{
    /// <summary>Table and row, or rule, of its factor for size.</summary>
    public Citation SizeSource { get; init; } = Source;

    /// <summary>Rolled section or flat with its rolled edges, no weld, no hole.</summary>
    public static readonly DetailCategory Rolled = new("rolled section, its surface as rolled", 160e6, Row("8.1", "details 1 to 3", Standing.Published));
    /// <summary>Shear in a rolled section.</summary>
    public static readonly DetailCategory RolledShear = new("shear in a rolled section", 100e6, Row("8.1", "details 6 and 7"), Shear: true);
    /// <summary>Machine gas cut or sheared, the edge dressed.</summary>
    public static readonly DetailCategory CutAndDressed = new("machine gas cut, the edge then dressed", 140e6, Row("8.1", "detail 4"));
    /// <summary>Machine cut with shallow, regular drag lines, or cut by hand and dressed.</summary>
    public static readonly DetailCategory CutEdge = new("edge cut by torch, drag lines shallow and regular", 125e6, Row("8.1", "detail 5"));
    /// <summary>Double-covered joint of preloaded bolts; gross section.</summary>
    public static readonly DetailCategory PreloadedLap = new("plates between two covers, bolts preloaded, whole section", 112e6, Row("8.1", "detail 8"));
    /// <summary>One-sided joint of preloaded bolts; gross section.</summary>
    public static readonly DetailCategory PreloadedOneSided = new("plates lapped on one side, bolts preloaded, whole section", 90e6, Row("8.1", "detail 10"));
    /// <summary>Member with holes in bending and axial force; net section.</summary>
    public static readonly DetailCategory Hole = new("member with a hole, net section", 90e6, Row("8.1", "detail 11"));
    /// <summary>Plates held by bolts in clearance holes that are not preloaded; net section, force not reversing.</summary>
    public static readonly DetailCategory BoltHole = new("plate at bolts in clearance holes, not preloaded, net section", 50e6, Row("8.1", "detail 13"));
    /// <summary>Thread in tension, on the stress area.</summary>
    public static readonly DetailCategory Thread = new("rolled or cut thread in tension, stress area", 50e6, Row("8.1", "detail 14"));
    /// <summary>Bolt in shear, on the shank; force not reversing.</summary>
    public static readonly DetailCategory BoltShear = new("bolt in single or double shear", 100e6, Row("8.1", "detail 15"), Shear: true);
    /// <summary>Hand-laid longitudinal corner weld of a built-up section.</summary>
    public static readonly DetailCategory LongWeld = new("longitudinal weld laid by hand", 100e6, Row("8.2", "details 5 and 6"));
    /// <summary>Intermittent longitudinal fillet.</summary>
    public static readonly DetailCategory IntermittentWeld = new("longitudinal fillet with gaps", 80e6, Row("8.2", "detail 8"));
    /// <summary>Transverse butt weld ground flush, tested.</summary>
    public static readonly DetailCategory ButtFlush = new("butt weld across the stress, ground flush", 112e6, Row("8.3", "details 1 to 3", Standing.Published));
    /// <summary>Transverse butt weld, cap up to a tenth of its width, tested.</summary>
    public static readonly DetailCategory ButtLowCap = new("butt weld across the stress, low cap", 90e6, Row("8.3", "details 5 to 7", Standing.Published));
    /// <summary>Transverse butt weld, cap up to a fifth of its width, tested.</summary>
    public static readonly DetailCategory ButtHighCap = new("butt weld across the stress, high cap", 80e6, Row("8.3", "details 9 to 11", Standing.Published));
    /// <summary>Transverse butt weld on a backing strip.</summary>
    public static readonly DetailCategory ButtOnBacking = new("butt weld on a backing strip", 71e6, Row("8.3", "detail 14"));
    /// <summary>Butt weld from one side, not tested.</summary>
    public static readonly DetailCategory ButtOneSided = new("butt weld from one side, not tested", 36e6, Row("8.3", "detail 13"));
    /// <summary>Stiffener or other attachment across the stress, up to 50 mm over its welds.</summary>
    public static readonly DetailCategory Stiffener = new("stiffener across the stress, up to 50 mm", 80e6, Row("8.4", "details 6 to 8"));
    /// <summary>Root of fillets or partial-penetration welds that carry the load, on the throat.</summary>
    public static readonly DetailCategory Root = new("root of a weld that carries the load, stress on the throat (36*)", 36e6, Row("8.5", "detail 3"));
    /// <summary>Plate that laps another and hands its load over through fillets.</summary>
    public static readonly DetailCategory LapOver = new("lapping plate beside its fillets (45*)", 45e6, Row("8.5", "detail 5"));
    /// <summary>Fillet carrying shear along its length, on the throat.</summary>
    public static readonly DetailCategory FilletShear = new("fillet sheared along its length, stress on the throat", 80e6, Row("8.5", "details 8 and 9"), Shear: true);

    /// <summary>Gusset or other attachment along the stress.</summary>
    /// <param name="L">Its length along the stress, m.</param>
    public static DetailCategory Gusset(double L) => new(
        "attachment along the stress",
        Check.Positive(L) <= 0.05 ? 80e6 : L <= 0.08 ? 71e6 : L <= 0.1 ? 63e6 : 56e6,
        Row("8.4", "detail 1"));

    /// <summary>Part beside the weld of another that it shares its load with: cruciform and T joints.</summary>
    /// <param name="l">Length of the other part along the stress, over its welds, m.</param>
    /// <param name="t">Thickness of the part looked at, m.</param>
    public static DetailCategory Toe(double l, double t)
    {
        Check.Positive(l);
        Check.Positive(t);
        double strength = l switch
        {
            < 0.05 => 80e6,
            <= 0.08 => 71e6,
            <= 0.1 => 63e6,
            <= 0.12 => 56e6,
            _ => LongToe(l, t),
        };
        return new("part beside the weld of another", strength, Row("8.5", "detail 1"));
    }

    // beyond 120 mm the thickness counts as well
    private static double LongToe(double l, double t) => t switch
    {
        <= 0.02 => 56e6,
        <= 0.03 => 50e6,
        <= 0.05 => l <= 0.2 ? 50e6 : 45e6,
        _ => l <= 0.2 ? 50e6 : l <= 0.3 ? 45e6 : 40e6,
    };

    /// <summary>k_s for threads thicker than 30 mm: (30/φ)^0.25.</summary>
    /// <param name="d">Diameter, m.</param>
    public static double ThreadSize(double d) => d > 0.03 ? Math.Pow(0.03 / Check.Positive(d), 0.25) : 1;

    /// <summary>k_s for transverse butt welds in plates thicker than 25 mm: (25/t)^0.2.</summary>
    /// <param name="t">Thickness, m.</param>
    public static double PlateSize(double t) => t > 0.025 ? Math.Pow(0.025 / Check.Positive(t), 0.2) : 1;

    private static Citation Row(string table, string row, Standing standing = Standing.FromMemory) =>
        new("EN 1993-1-9:2005", $"table {table}, {row}", standing);
}
