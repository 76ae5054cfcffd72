using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class GussetedCornerTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);

    /// <summary>A flat b wide and h deep with a plate of its own width in the corner: cut through, a deeper flat.</summary>
    private static GussetedCorner OnFlat(double b, double h, double leg, double along) =>
        new(b * h, b * h * h * h / 12, h / 2, h / 2, leg, along, b);

    [Fact]
    public void APlateAsWideAsItsFlatMakesADeeperFlat() =>
        Gen.Select(Gen.Double[0.01, 0.1], Gen.Double[0.05, 0.3], Gen.Double[0.05, 0.3], Gen.Double[0.05, 0.5], Gen.Double[-2, 2], Gen.Double[-0.5, 0.5]).Sample((b, h, leg, along, N, M) =>
        {
            // The push acts at the flat's centroid, leg/2 below the middle of the whole; at the sloping edge Mohr's circle asks for 1/cos² of the slope.
            double H = h + leg, A = b * H, W = b * H * H / 6, m = M - N * leg / 2;
            double tip = Math.Abs(N / A + m / W), far = Math.Abs(N / A - m / W), slope = Math.Cos(Math.Atan(leg / along));
            if (tip + far < 1)
                return;

            Near.Relative(235e6 / Math.Max(tip / (slope * slope), far), OnFlat(b, h, leg, along).Yields(N, M, 235e6, 235e6, One)!.Value.GivesAt, 1e-9, "same steel");
            Near.Relative(1 / Math.Max(tip / (slope * slope) / 235e6, far / 355e6), OnFlat(b, h, leg, along).Yields(N, M, 235e6, 355e6, One)!.Value.GivesAt, 1e-9, "two steels");
        }, iter: 200);

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        GussetedCorner corner = OnFlat(0.02, 0.1, 0.08, 0.1);
        Limit limit = corner.Yields(0.5, 0.1, 235e6, 355e6, PartialFactors.Recommended, w)!.Value;
        WorkingCheck.Holds(w);
        WorkingCheck.Shows(w, "A_t z_t I_t M_t σ_b σ_e σ_o u F_gives F_safe");
        Near.Relative(1.5, limit.Factor, 1e-12);
        Assert.Null(corner.Yields(0, 0, 235e6, 235e6, One));
        Assert.Throws<ArgumentOutOfRangeException>(() => corner.Yields(double.NaN, 0, 235e6, 235e6, One));
        Assert.Throws<ArgumentOutOfRangeException>(() => corner.Yields(0, double.NaN, 235e6, 235e6, One));
    }
}
