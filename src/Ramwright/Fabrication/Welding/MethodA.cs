using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>Scales of diffusible hydrogen in weld metal.</summary>
public enum HydrogenScale
{
    /// <summary>Above 15 ml/100 g.</summary>
    A,
    /// <summary>Above 10, up to 15.</summary>
    B,
    /// <summary>Above 5, up to 10.</summary>
    C,
    /// <summary>Above 3, up to 5.</summary>
    D,
    /// <summary>Up to 3.</summary>
    E,
}

/// <summary>
/// The table of the first way of EN 1011-2: up to which combined thickness no preheat is needed. A cross-check of <see cref="MethodB"/>; how much
/// preheat is needed beyond it stands in curves of the standard that are not reproduced here.
/// </summary>
public static class MethodA
{
    /// <summary>The table.</summary>
    public static readonly Citation Source = new("EN 1011-2:2001", "table C.1");
    /// <summary>The scales of hydrogen.</summary>
    public static readonly Citation ScaleSource = new("EN 1011-2:2001", "table C.2", Standing.FromMemory);
    /// <summary>How the heat's ways out are counted.</summary>
    public static readonly Citation CombinedSource = new("EN 1011-2:2001", "C.2.4", Standing.FromMemory);

    // rows by scale A to E: CE 0.49 at 1.0 and 2.0 kJ/mm, CE 0.43 at 1.0 and 2.0
    private static readonly double[][] Most = [[25, 50, 40, 80], [30, 55, 50, 90], [35, 65, 60, 100], [50, 100, 100, 100], [60, 100, 100, 100]];

    /// <summary>Scale of a hydrogen content.</summary>
    /// <param name="hd">ml/100 g.</param>
    public static HydrogenScale Scale(double hd) => hd > 15 ? HydrogenScale.A : hd > 10 ? HydrogenScale.B : hd > 5 ? HydrogenScale.C : hd > 3 ? HydrogenScale.D : HydrogenScale.E;

    /// <summary>Greatest combined thickness without preheat, mm: equivalent and hydrogen rounded up, heat input down.</summary>
    /// <param name="ce">Carbon equivalent CE, %.</param>
    /// <param name="hd">Hydrogen, ml/100 g.</param>
    /// <param name="q">Heat input, kJ/mm.</param>
    /// <returns>Null where the table does not reach: CE above 0.49, or less heat than 1 kJ/mm.</returns>
    public static double? WithoutPreheat(double ce, double hd, double q)
    {
        if (!(ce <= 0.49) || !(q >= 1))
            return null;
        return Most[(int)Scale(hd)][(ce <= 0.43 ? 2 : 0) + (q >= 2 ? 1 : 0)];
    }

    /// <summary>Combined thickness of a joint, mm: every way the heat can leave, each thickness averaged over 75 mm from the weld.</summary>
    /// <param name="standing">Thickness of the part whose end is welded, mm.</param>
    /// <param name="through">Thickness of the part that it stands on, mm.</param>
    /// <param name="ways">Ways out through that part: two for a tee or cross, one for a butt or corner.</param>
    public static double Combined(double standing, double through, int ways) => standing + ways * through;
}
