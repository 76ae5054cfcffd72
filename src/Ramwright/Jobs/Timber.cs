using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Strength of wood, and what splits it. Pa. Wood scatters: a quarter either way is ordinary.</summary>
/// <param name="AlongDry">Crushing along the grain, 12 % moisture.</param>
/// <param name="AcrossDry">Across the grain at the proportional limit, 12 %.</param>
/// <param name="AlongGreen">Crushing along the grain, green.</param>
/// <param name="AcrossGreen">Across the grain, green; null where not known.</param>
public readonly record struct Timber(double AlongDry, double AcrossDry, double AlongGreen, double? AcrossGreen)
{
    /// <summary>Strengths of clear wood.</summary>
    public static readonly Citation WoodHandbook = new("Wood Handbook, US Forest Products Laboratory FPL-GTR-190 (2010)", "chapter 5", Standing.FromMemory);
    /// <summary>Green strengths.</summary>
    public static readonly Citation Record = new("S. J. Record, The Mechanical Properties of Wood (1914)", "tables of tests on green wood");
    /// <summary>A wedge driven in.</summary>
    public static readonly Citation WedgeSource = Citation.Mechanics("equilibrium of a wedge with friction on both faces");
    /// <summary>Splitting force by size.</summary>
    public static readonly Citation LogRule = Citation.Practice("trade guidance for log splitters; knots rule, very wide scatter");

    /// <summary>Strengths of a kind of wood.</summary>
    public static Timber Of(Wood wood) => wood switch
    {
        Wood.RedOak => new(46.6e6, 7.0e6, 22.1e6, 4.2e6),
        Wood.WhiteOak => new(51.3e6, 7.4e6, 24.3e6, 4.6e6),
        Wood.WhiteAsh => new(51.1e6, 8.0e6, 29.1e6, null),
        Wood.Beech => new(50.3e6, 7.0e6, 24.0e6, null),
        Wood.Hickory => new(63.5e6, 12.1e6, 31.7e6, null),
        Wood.SugarMaple => new(54.0e6, 10.1e6, 25.3e6, null),
        Wood.DouglasFir => new(49.9e6, 5.5e6, 20.1e6, 2.6e6),
        Wood.WhitePine => new(33.1e6, 3.0e6, 18.8e6, null),
        _ => throw new ArgumentOutOfRangeException(nameof(wood), wood, "not a wood in the table"),
    };

    /// <summary>Strength, Pa. Green wood across the grain, where no test is at hand, as 0.6 of dry.</summary>
    public double Strength(bool across, bool green) =>
        across ? green ? AcrossGreen ?? 0.6 * AcrossDry : AcrossDry : green ? AlongGreen : AlongDry;

    /// <summary>Force of a wedge over the normal force on each face: 2 (sin(α/2) + μ cos(α/2)).</summary>
    /// <param name="α">Angle of the wedge, rad.</param>
    /// <param name="μ">Friction, 0.2 to 0.35.</param>
    public static double Wedge(double α, double μ)
    {
        if (!(α > 0 && α < Math.PI))
            Check.Refuse(nameof(α), α, "between 0 and π");
        return 2 * (Math.Sin(α / 2) + Check.NotNegative(μ) * Math.Cos(α / 2));
    }

    /// <summary>Force to split a log, by its thickness, N. A rule of thumb with a very wide scatter.</summary>
    /// <param name="d">Diameter, m, up to 0.9.</param>
    /// <param name="knotty">Knots or twisted grain.</param>
    /// <param name="green">Green wood adds.</param>
    public static Band SplittingForce(double d, bool knotty, bool green)
    {
        if (!(d > 0 && d <= 0.9))
            Check.Refuse(nameof(d), d, "above 0, at most 0.9 m");
        Band dry = d > 0.6 ? new(180e3, 250e3, 300e3)
            : knotty || d > 0.4 ? new(180e3, 215e3, 250e3)
            : d > 0.25 ? new(80e3, 100e3, 120e3)
            : new(40e3, 55e3, 70e3);
        double adds = green ? 90e3 * Math.Min(1, d / 0.6) : 0;
        return new Band(dry.Low, dry.Likely + adds / 2, dry.High + adds);
    }
}
