using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Tests.Jobs;

public sealed class DrawingOutTest
{
    private const string TomlinsonStringer = "A. Tomlinson, J. D. Stringer, J. Iron Steel Inst. 193 (1959) 157";

    [Theory]
    [InlineData(0.2, 0.2098)]
    [InlineData(0.3, 0.2431)]
    [InlineData(0.4, 0.2754)]
    [InlineData(0.5, 0.3065)]
    [InlineData(0.6, 0.3366)]
    [InlineData(0.75, 0.3796)]
    [InlineData(1, 0.4460)]
    [InlineData(1.25, 0.5056)]
    [InlineData(1.5, 0.5585)]
    [InlineData(2, 0.6440)]
    public void CoefficientOfSpread(double bite, double s) =>
        new Reference("W3-01", TomlinsonStringer, Trust.FromMemoryAndRecomputed).Within($"s, b/w {bite}", s, Spread.Coefficient(bite), 0.0001);

    [Fact]
    public void OneSqueeze()
    {
        var reference = new Reference("W3-02", TomlinsonStringer, Trust.Recomputed);
        double s = Spread.Coefficient(20.0 / 30), w = Spread.WidthAfter(0.03, 0.03, 0.024, s);
        reference.Near("s", 0.356, s, 0.001);
        reference.Near("width, mm", 32.48, w * 1e3, 0.001);
        reference.Near("the bite has become, mm", 23.09, 20 * 0.03 * 0.03 / (w * 0.024), 0.001);
    }

    [Fact]
    public void ASquareDrawnToASmallerOne()
    {
        DrawingOut drawn = DrawingOut.Of(Job(30, 20, 20, 0.2, 100), _ => 0.02);
        var reference = new Reference("W3-03", TomlinsonStringer, Trust.Recomputed);
        (double h, double w, double L)[] expected =
            [(24, 32.48, 1.155), (25.98, 26.26, 1.319), (21.00, 28.32, 1.513), (22.65, 23.14, 1.717), (20, 24.07, 1.870), (20, 21.72, 2.072), (20, 20.75, 2.169), (20, 20.33, 2.213)];
        Assert.Equal(8, drawn.Passes.Count);
        Assert.True(drawn.Reached);
        for (int i = 0; i < 8; i++)
        {
            reference.Near($"height after squeeze {i + 1}, mm", expected[i].h, drawn.Passes[i].Height * 1e3, 0.002);
            reference.Near($"width after squeeze {i + 1}, mm", expected[i].w, drawn.Passes[i].Width * 1e3, 0.002);
            reference.Near($"L/L₀ after squeeze {i + 1}", expected[i].L, drawn.Passes[i].Length / 0.1, 0.002);
        }

        reference = new Reference("W3-04", TomlinsonStringer, Trust.Recomputed);
        int[] hits = [5, 11, 18, 26, 35, 45, 56, 67];
        double[] lengths = [115.5, 131.9, 151.3, 171.7, 187.0, 207.2, 216.9, 221.3];
        int sum = 0;
        for (int i = 0; i < 8; i++)
        {
            reference.Exactly($"hits after pass {i + 1}", hits[i], sum += drawn.Passes[i].Squeezes);
            reference.Near($"length after pass {i + 1}, mm", lengths[i], drawn.Passes[i].Length * 1e3, 0.002);
        }
    }

    [Fact]
    public void DeeperDrawings()
    {
        DrawingOut half = DrawingOut.Of(Job(40, 20, 25, 0.2, 100), _ => 0.02);
        var reference = new Reference("W3-05", TomlinsonStringer, Trust.Recomputed);
        reference.Exactly("squeezes, 40 to 20, bite 25", 13, half.Passes.Count);
        reference.Near("L/L₀", 3.93, half.LengthAfter / 0.1, 0.005);
        DrawingOut wide = DrawingOut.Of(Job(50, 25, 40, 0.25, 100), _ => 0.02);
        reference = new Reference("W3-06", TomlinsonStringer, Trust.Recomputed);
        reference.Exactly("squeezes, 50 to 25, bite 40", 13, wide.Passes.Count);
        reference.Near("L/L₀", 3.94, wide.LengthAfter / 0.1, 0.005);
    }

    [Theory]
    [InlineData(0.3, 0.2, 5.19)]
    [InlineData(0.2, 0.25, 3.52)]
    [InlineData(0.35, 0.15, 7.68)]
    public void QuickCount(double s, double reduction, double n) =>
        new Reference("W3-07", "constant spread", Trust.Recomputed).Within($"N, s {s}, reduction {reduction}", n, Spread.QuickCount(30, 20, s, reduction), 0.01);

    [Fact]
    public void ForceOfABite()
    {
        double Y = new ShidaFlow(0.002).Stress(0.223, 0.8, 1100);
        var reference = new Reference("W3-08", "Shida; pressure Y or 2k on the contact (the forces belong to a bite of 40 on a width of 30)", Trust.Recomputed);
        reference.Near("Y, MPa", 73.6, Y / 1e6, 0.005);
        reference.Near("F on 40 × 30, base Y, kN", 88.4, Y * 0.04 * 0.03 / 1e3, 0.005);
        reference.Near("F on 40 × 30, base 2k, kN", 102.0, FlatDies.PlaneStrain * Y * 0.04 * 0.03 / 1e3, 0.005);
        // the bite's own band holds both
        var bite = new HotBite { Law = new ShidaFlow(0.002), Height = 0.03, Width = 0.03, Bite = 0.02, Target = 0.024 };
        double low = (bite with { Friction = 0, Edge = 0 }).Force(bite.Travel, 0.0192, 1100), high = (bite with { Friction = 1, Edge = 1 }).Force(bite.Travel, 0.0192, 1100);
        Assert.InRange(44.2e3, 0.9 * low, high);
        Assert.InRange(51.0e3, low, high);
    }

    [Fact]
    public void ANarrowBiteLengthensMore() =>
        new Reference("W3-10", TomlinsonStringer, Trust.Recomputed).Near("(1 − s) at b/w 0.3 over that at 1", 1.37, (1 - Spread.Coefficient(0.3)) / (1 - Spread.Coefficient(1)), 0.005);

    [Fact]
    public void AFlatIsDrawnToItsOwnSizesAndARoundKeepsItsVolume()
    {
        RigHotSqueeze round = Job(30, 20, 20, 0.2, 100) with { IsRound = true };
        DrawingOut drawn = DrawingOut.Of(round, _ => 0.02);
        Assert.True(drawn.Reached);
        DrawingPass last = drawn.Passes[^1];
        Near.Relative(Math.PI / 4 * 0.03 * 0.03 * 0.1, last.Height * last.Width * last.Length, 1e-9);

        RigHotSqueeze flat = Job(30, 20, 20, 0.2, 100);
        flat = flat with { DrawingOut = flat.DrawingOut! with { Height = 0.012, Width = 0.03 } };
        drawn = DrawingOut.Of(flat, _ => 0.02);
        Assert.True(drawn.Reached);
        last = drawn.Passes[^1];
        Near.Relative(0.012 * 0.03, last.Height * last.Width, 0.05);
        Near.Relative(0.03 * 0.03 * 0.1, last.Height * last.Width * last.Length, 1e-9);
    }

    private static RigHotSqueeze Job(double from, double to, double bite, double reduction, double over) => new()
    {
        Name = "drawing",
        Kind = "hot-squeeze",
        Path = "jobs.0",
        Assumed = [],
        Height = from / 1e3,
        Width = from / 1e3,
        Length = 0.5,
        IsRound = false,
        OnEnd = false,
        Steel = ForgingSteel.Find("mild")!,
        Heat = 1150,
        Lift = 0.005,
        InTheFire = 180,
        Transfer = 0,
        DieWidth = bite / 1e3,
        DieLength = 0.2,
        DieHeat = 100,
        Friction = 0.4,
        TargetHeight = from / 1e3 * (1 - reduction),
        DrawingOut = new RigDrawingOut(to / 1e3, to / 1e3, over / 1e3, bite / 1e3, reduction, true, 3),
    };
}
