using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>The three tons that a label may mean.</summary>
public enum Ton
{
    /// <summary>Tonne-force, 1000 kgf.</summary>
    Tonne,
    /// <summary>US short ton, 2000 lbf.</summary>
    UsTon,
    /// <summary>UK long ton, 2240 lbf.</summary>
    UkTon,
}

/// <summary>What the force on a cylinder's label is worth.</summary>
/// <param name="Stated">Force on the label, N, as it was read.</param>
/// <param name="AtRatedPressure">Rated pressure times area, N, nothing lost.</param>
/// <param name="Over">How far the label stands above that, as a share; negative where it says less.</param>
/// <param name="Figure">The figure on the label, where it is a whole or half number of one of the tons; null where it was not stated in tons.</param>
/// <param name="ReadAs">The ton it was read in.</param>
/// <param name="FitsBest">The ton with which the figure comes nearest to rated pressure times area.</param>
/// <param name="OverWithBest">How far the label, read in that ton, stands above it.</param>
public sealed record SellersRating(
    double Stated, double AtRatedPressure, double Over, double? Figure, Ton? ReadAs, Ton? FitsBest, double? OverWithBest)
{
    // within this a figure may be said to fit; beyond it the maker only rounded down
    private const double Agrees = 0.04;

    /// <summary>Tonne-force, N.</summary>
    public const double Tonne = 9806.65;
    /// <summary>US short ton, N.</summary>
    public const double UsTon = 2000 * 0.45359237 * 9.80665;
    /// <summary>UK long ton, N.</summary>
    public const double UkTon = 2240 * 0.45359237 * 9.80665;

    /// <summary>A ton, N.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A ton that does not exist.</exception>
    public static double Newtons(Ton ton) => ton switch
    {
        Ton.Tonne => Tonne,
        Ton.UsTon => UsTon,
        Ton.UkTon => UkTon,
        _ => throw new ArgumentOutOfRangeException(nameof(ton), ton, "There is no such ton."),
    };

    /// <summary>Whether the label was read in one ton and fits another clearly better.</summary>
    public bool LooksLikeAnotherTon =>
        FitsBest is { } best && best != ReadAs && Math.Abs(OverWithBest!.Value) < Math.Min(Agrees, Math.Abs(Over) - 0.02);

    /// <summary>Weighs the label against the area; null where there is no label.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="areas">Its areas.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A force or pressure that is not above zero.</exception>
    public static SellersRating? Of(RigCylinder cylinder, CylinderAreas areas, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        if (cylinder.RatedForce is not double F_s)
            return null;
        Check.Positive(F_s, "RatedForce");
        Check.Positive(cylinder.RatedPressure, "RatedPressure");
        double F_r = RamForce.Thrust(cylinder.RatedPressure, areas.Push / cylinder.Count, w);
        double over = F_s / F_r - 1;
        w?.Step("e", "how far the label stands above it", "F_s/F_r − 1", over, Dimension.Ratio, RamForce.PressureOnArea,
            ("F_s", F_s, Dimension.Force), ("F_r", F_r, Dimension.Force));

        if (ReadIn(F_s) is not { } ton)
            return new SellersRating(F_s, F_r, over, null, null, null, null);
        double figure = Math.Round(2 * F_s / Newtons(ton)) / 2, least = double.PositiveInfinity;
        Ton best = ton;
        for (Ton t = Ton.Tonne; t <= Ton.UkTon; t++)
        {
            double off = figure * Newtons(t) / F_r - 1;
            if (Math.Abs(off) < Math.Abs(least))
                (best, least) = (t, off);
        }

        return new SellersRating(F_s, F_r, over, figure, ton, best, least);
    }

    /// <summary>The ton in which a force is a whole or half number, to one part in ten thousand.</summary>
    private static Ton? ReadIn(double F)
    {
        for (Ton t = Ton.Tonne; t <= Ton.UkTon; t++)
        {
            double halves = 2 * F / Newtons(t);
            if (halves >= 0.99 && Math.Abs(halves - Math.Round(halves)) < 1e-4 * halves)
                return t;
        }

        return null;
    }
}
