using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>What a tie rod of a press does along its length, closed by its preload and open without.</summary>
/// <param name="Open">Stiffness between crown and bed once nothing is clamped, N/m.</param>
/// <param name="Closed">Stiffness between crown and bed while the preload holds, N/m.</param>
/// <param name="ShareLeast">The least share C of a pull that the rod feels where it is clamped.</param>
/// <param name="ShareMost">The greatest: crown and bed may differ.</param>
/// <remarks>
/// With a sleeve the whole rod is clamped, and rod and sleeve stretch side by side. With nuts or shoulders on the inner sides only the
/// ends are: the long part between crown and bed feels the whole pull, and preload does little for the daylight. A section
/// under a nut is not known well enough: half of the pull is taken to reach the rod there.
/// </remarks>
public sealed record RodStiffness(double Open, double Closed, double ShareLeast, double ShareMost)
{
    private const double E = 210e9;

    /// <summary>Stiffness of the length between crown and bed alone, N/m.</summary>
    public double Between { get; private init; }

    /// <summary>Share taken where a rolled section is clamped under a nut.</summary>
    private const double SectionShare = 0.5;

    /// <summary>Finds it.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="w">Where to write it down.</param>
    public static RodStiffness Of(RigTieRodFrame frame, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        RigTieRod rod = frame.Rod;
        double clear = frame.Daylight + frame.RamDrop, At = rod.As, d = rod.Thread.D;
        double shank = rod.Shank ?? rod.StressDiameter, Ad = Math.PI / 4 * shank * shank;
        double threads = rod.Shank is null ? clear : Math.Min(2 * rod.FreeThread, clear);
        double tCrown = frame.Crown.Shape.Properties.Height, tBed = frame.Bed.Shape.Properties.Height;

        if (rod.Seat == RodSeat.Sleeve)
        {
            double kb = RodJoint.Rod(At, Ad, threads + tCrown + tBed, clear - threads, E, w);
            double ks = RodJoint.Sleeve(rod.SleeveOutside, rod.SleeveInside, clear, E, w);
            double give = 1 / ks + Give(frame.CrownPlate) + Give(frame.BedPlate), km = 1 / give;
            w?.Step("k_m", "stiffness of sleeve and plates, one after the other", "1 / (1 / k_s + δ_p)", km, Dimension.Stiffness, RodJoint.ShareSource,
                ("k_s", ks, Dimension.Stiffness), ("δ_p", give - 1 / ks, Dimension.Number));
            double C = RodJoint.Share(kb, km, w);
            return new RodStiffness(kb, kb + km, C, C) { Between = RodJoint.Rod(At, Ad, threads, clear - threads) };
        }

        double free = RodJoint.Rod(At, Ad, threads, clear - threads, E, w);
        double kCrown = E * At / tCrown, kBed = E * At / tBed;
        double mCrown = Clamped(frame.CrownPlate, kCrown), mBed = Clamped(frame.BedPlate, kBed);
        double cCrown = RodJoint.Share(kCrown, mCrown), cBed = RodJoint.Share(kBed, mBed);
        double open = 1 / (1 / free + 1 / kCrown + 1 / kBed), closed = 1 / (1 / free + 1 / (kCrown + mCrown) + 1 / (kBed + mBed));
        w?.Step("k", "stiffness from nut to nut, nothing clamped", "1 / (1 / k_b + t_c / (E A_t) + t_b / (E A_t))", open, Dimension.Stiffness, RodJoint.RodSource,
            ("k_b", free, Dimension.Stiffness), ("t_c", tCrown, Dimension.Length), ("t_b", tBed, Dimension.Length), ("E", E, Dimension.Stress), ("A_t", At, Dimension.Area));
        return new RodStiffness(open, closed, Math.Min(cCrown, cBed), Math.Max(cCrown, cBed)) { Between = free };

        double Clamped(RigEndPlate? plate, double kRod) => plate is { } p ? RodJoint.Plate(d, p.Thickness, E) : kRod * (1 / SectionShare - 1);
        double Give(RigEndPlate? plate) => plate is { } p ? 1 / RodJoint.Plate(d, p.Thickness, E) : 0;
    }
}
