using Ramwright.Jobs;

namespace Ramwright.Tests.Jobs;

public sealed class CuttingTest
{
    [Fact]
    public void PrintedExamples()
    {
        var groover = new Reference("W6-01", "M. P. Groover, blanking example", Trust.FromMemoryAndRecomputed);
        groover.Near("F, N", 467_470, Cutting.Force(310e6, Math.PI * 0.15, 3.2e-3), 1e-4);
        groover.Near("clearance, mm", 0.24, Cutting.Clearance(0.075, 3.2), 1e-6);
        new Reference("W6-02", "S. Kalpakjian, S. Schmid, punching example", Trust.FromMemoryAndRecomputed)
            .Near("F, kN", 175.9, Cutting.Force(Cutting.ShearStrength(1000e6, 0.7), Math.PI * 0.025, 3.2e-3) / 1e3, 0.001);
        new Reference("W6-03", "exercise page", Trust.FoundAndRecomputed).Near("F, kN", 28.27, Cutting.Force(300e6, Math.PI * 0.02, 1.5e-3) / 1e3, 0.002);
    }

    [Theory]
    [InlineData(20, 10, 410, 180.3, 206.1)]
    [InlineData(14, 8, 510, 125.6, 143.6)]
    [InlineData(25, 12, 410, 270.5, 309.1)]
    public void WorkshopHoles(double d, double t, double R_m, double low, double high)
    {
        var reference = new Reference("W6-05", "0.7 and 0.8 of the tensile strength", Trust.Recomputed);
        reference.Near($"F at 0.7, kN, Ø{d}×{t}", low, Cutting.Force(Cutting.ShearStrength(R_m * 1e6, 0.7), Math.PI * d / 1e3, t / 1e3) / 1e3, 0.001);
        reference.Near($"F at 0.8, kN, Ø{d}×{t}", high, Cutting.Force(Cutting.ShearStrength(R_m * 1e6, 0.8), Math.PI * d / 1e3, t / 1e3) / 1e3, 0.001);
    }

    [Fact]
    public void PunchWorkAndSlope()
    {
        new Reference("W6-08", "equilibrium", Trust.Recomputed).Near("σ, MPa, d = t", 1312, Cutting.PunchStress(0.8 * 410e6, 1, 1) / 1e6, 0.001);
        new Reference("W6-10", "tool design: m F t", Trust.Practice).Near("W, kJ", 1.03, Cutting.Work(0.5, 206.1e3, 0.01) / 1e3, 0.005);
        (double least, double most) = Cutting.PeakShare(0.01, 0.01);
        var slope = new Reference("W6-09", "tool design: slope of a thickness", Trust.Practice);
        slope.Near("least share of the peak", 1.0 / 3, least, 1e-9);
        slope.Near("greatest share of the peak", 0.5, most, 1e-9);
        Assert.Equal((1.0, 1.0), Cutting.PeakShare(0, 0.01));
    }

    [Theory]
    [InlineData(1100, 102.7, 74.5)]
    [InlineData(900, 194.4, 141.0)]
    public void AHotPunch(double T, double Y, double F)
    {
        double y = new ShidaFlow(0.002).Stress(0.5, 5, T);
        var reference = new Reference("W6-11", "Shida; von Mises", Trust.Recomputed);
        reference.Near($"Y, MPa, {T} °C", Y, y / 1e6, 0.005);
        reference.Near($"F, kN, {T} °C", F, Cutting.Force(y / Math.Sqrt(3), Math.PI * 0.02, 0.02) / 1e3, 0.005);
    }
}
