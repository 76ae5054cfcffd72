using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>How the heat of a run can leave.</summary>
public enum RunPlace
{
    /// <summary>A run on a plate.</summary>
    OnPlate,
    /// <summary>Between the runs of a butt weld.</summary>
    Butt,
    /// <summary>A fillet at a corner.</summary>
    Corner,
    /// <summary>A fillet at a tee or lap.</summary>
    Tee,
}

/// <summary>Time from 800 to 500 °C, t8/5, of the zone beside a run: too short leaves it hard, too long leaves it coarse and weak.</summary>
public static class CoolingTime
{
    /// <summary>Where it comes from.</summary>
    public static readonly Citation Source = new("EN 1011-2:2001", "annex D; SEW 088");
    /// <summary>Source of the seams' factors.</summary>
    public static readonly Citation FactorSource = new("EN 1011-2:2001", "table D.1", Standing.FromMemory);

    /// <summary>Factors F₂ and F₃ of a seam; of a range the one that cools faster.</summary>
    public static (double F2, double F3) Factors(RunPlace place) => place switch
    {
        RunPlace.OnPlate => (1, 1),
        RunPlace.Butt => (0.9, 0.9),
        RunPlace.Corner => (0.9, 0.67),
        _ => (0.45, 0.67),
    };

    /// <summary>Where heat leaves downwards too, in thick plate, s.</summary>
    /// <param name="Q">Heat input with k, kJ/mm.</param>
    /// <param name="T0">Preheat or interpass temperature, °C, below 500.</param>
    /// <param name="F3">Factor of the seam.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Thick(double Q, double T0, double F3 = 1, Working? w = null)
    {
        Below500(T0);
        double t = (6700 - 5 * T0) * Check.Positive(Q) * (1 / (500 - T0) - 1 / (800 - T0)) * Check.Positive(F3);
        w?.Step("t_3", "time from 800 to 500 °C in thick plate; Q in kJ/mm", "(6700 - 5 T_0) Q (1 / (500 - T_0) - 1 / (800 - T_0)) F_3", t, Dimension.Time, Source,
            ("T_0", T0, Dimension.Temperature), ("Q", Q, Dimension.Number), ("F_3", F3, Dimension.Number));
        return t;
    }

    /// <summary>Where heat can only leave sideways, in thin plate, s.</summary>
    /// <param name="Q">Heat input with k, kJ/mm.</param>
    /// <param name="T0">Preheat or interpass temperature, °C, below 500.</param>
    /// <param name="d">Thickness, mm.</param>
    /// <param name="F2">Factor of the seam.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Thin(double Q, double T0, double d, double F2 = 1, Working? w = null)
    {
        Below500(T0);
        double q = Check.Positive(Q) / Check.Positive(d), hot = 1 / (500 - T0), hotter = 1 / (800 - T0);
        double t = (4300 - 4.3 * T0) * 1e5 * q * q * (hot * hot - hotter * hotter) * Check.Positive(F2);
        w?.Step("t_2", "time from 800 to 500 °C in thin plate; Q in kJ/mm, d in mm", "(4300 - 4.3 T_0) 100000 (Q / d)² ((1 / (500 - T_0))² - (1 / (800 - T_0))²) F_2",
            t, Dimension.Time, Source,
            ("T_0", T0, Dimension.Temperature), ("Q", Q, Dimension.Number), ("d", d, Dimension.Number), ("F_2", F2, Dimension.Number));
        return t;
    }

    /// <summary>The longer of the two, which holds, s.</summary>
    public static double Of(double Q, double T0, double d, RunPlace place, Working? w = null)
    {
        (double F2, double F3) = Factors(place);
        if (w is not null)
            Transition(Q, T0, w);
        double thin = Thin(Q, T0, d, F2, w), thick = Thick(Q, T0, F3, w), t = Math.Max(thin, thick);
        w?.Step("t_85", "time from 800 to 500 °C", "max(t_2, t_3)", t, Dimension.Time, Source, ("t_2", thin, Dimension.Time), ("t_3", thick, Dimension.Time));
        return t;
    }

    /// <summary>Thickness at which both agree on a plate, mm: thicker plate cools as if there were no end to it.</summary>
    /// <param name="Q">Heat input with k, kJ/mm.</param>
    /// <param name="T0">Temperature, °C.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Transition(double Q, double T0, Working? w = null)
    {
        Below500(T0);
        double hot = 1 / (500 - T0), hotter = 1 / (800 - T0);
        double d = Math.Sqrt((4300 - 4.3 * T0) * 1e5 / (6700 - 5 * T0) * Check.Positive(Q) * (hot + hotter));
        w?.Step("d_t", "thickness, mm, from which plate counts as thick", "√((4300 - 4.3 T_0) 100000 / (6700 - 5 T_0) · Q (1 / (500 - T_0) + 1 / (800 - T_0)))", d, Dimension.Number, Source,
            ("T_0", T0, Dimension.Temperature), ("Q", Q, Dimension.Number));
        return d;
    }

    private static void Below500(double T0)
    {
        if (!(T0 < 500 && T0 > -60))
            throw new ArgumentOutOfRangeException(nameof(T0), T0, "the formula holds for steel between -60 and 500 °C");
    }
}
