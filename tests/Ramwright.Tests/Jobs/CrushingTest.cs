using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Tests.Jobs;

public sealed class CrushingTest
{
    [Theory]
    [InlineData(57, 3, 300, 68.7, 94.1)]
    [InlineData(47, 3, 300, 64.4, 88.2)]
    [InlineData(98, 2, 280, 39.1, 53.5)]
    [InlineData(40, 2, 300, 31.0, 42.5)]
    public void Boxes(double c, double t, double σ, double mean, double slow)
    {
        new Reference("W9-30", "T. Wierzbicki, W. Abramowicz, J. Appl. Mech. 50 (1983) 727", Trust.FromMemoryAndRecomputed)
            .Near($"P_m, kN, c {c} t {t}", mean, TubeCrushing.BoxMean(σ * 1e6, c / 1e3, t / 1e3) / 1e3, 0.003);
        new Reference("W9-31", "W. Abramowicz, N. Jones, Int. J. Impact Eng. 2 (1984) 179", Trust.FromMemoryAndRecomputed)
            .Near($"P_m, kN, c {c} t {t}", slow, TubeCrushing.BoxMeanSlow(σ * 1e6, c / 1e3, t / 1e3) / 1e3, 0.003);
    }

    [Fact]
    public void SquashTubeAndFlattening()
    {
        new Reference("W9-32", "statics", Trust.Recomputed).Near("squash, kN", 205.2, TubeCrushing.BoxSquash(300e6, 0.057, 0.003) / 1e3, 0.001);
        var tube = new Reference("W9-33", "Alexander 1960; Abramowicz and Jones 1984", Trust.FromMemoryAndRecomputed);
        tube.Near("Alexander, kN", 69.2, TubeCrushing.TubeMeanAlexander(300e6, 0.0451, 0.0032) / 1e3, 0.003);
        tube.Near("Abramowicz-Jones, kN", 69.1, TubeCrushing.TubeMean(300e6, 0.0451, 0.0032) / 1e3, 0.003);
        tube.Near("squash, kN", 136.0, TubeCrushing.TubeSquash(300e6, 0.0451, 0.0032) / 1e3, 0.003);
        double P = TubeCrushing.Flattening(235e6, 0.0451, 0.0032, 0.1);
        var flat = new Reference("W9-34", "J. A. DeRuntz, P. G. Hodge, J. Appl. Mech. 30 (1963) 391", Trust.FromMemoryAndRecomputed);
        flat.Near("at the start, kN", 12.32, P / 1e3, 0.003);
        flat.Near("without 2/√3, kN", 10.67, TubeCrushing.Flattening(235e6, 0.0451, 0.0032, 0.1, wide: false) / 1e3, 0.003);
        flat.Near("half closed, kN", 14.23, P * TubeCrushing.FlatteningRise(0.5) / 1e3, 0.003);
        var side = new Reference("W9-35", "hinge mechanism", Trust.Recomputed);
        side.Near("at 45°, kN", 12.1, TubeCrushing.BoxSide(235e6, 0.057, 0.003, 0.1, Math.PI / 4) / 1e3, 0.005);
        side.Near("mean, kN", 13.5, TubeCrushing.BoxSideMean(235e6, 0.057, 0.003, 0.1) / 1e3, 0.005);
    }

    [Fact]
    public void Wood()
    {
        var green = new Reference("W9-10", "S. J. Record, The Mechanical Properties of Wood, 1914", Trust.FoundAndRecomputed);
        green.Near("white ash green along, psi", 4220, Timber.Of(Presses.Wood.WhiteAsh).AlongGreen / 6894.757, 0.003);
        green.Near("beech green along, psi", 3480, Timber.Of(Presses.Wood.Beech).AlongGreen / 6894.757, 0.003);
        green.Near("Douglas fir green along, psi", 2920, Timber.Of(Presses.Wood.DouglasFir).AlongGreen / 6894.757, 0.003);
        var dry = new Reference("W9-12", "Wood Handbook, as quoted", Trust.FoundAndRecomputed);
        dry.Near("white oak 12 % along, psi", 7440, Timber.Of(Presses.Wood.WhiteOak).AlongDry / 6894.757, 0.003);
        dry.Near("Douglas fir 12 % along, psi", 7240, Timber.Of(Presses.Wood.DouglasFir).AlongDry / 6894.757, 0.003);
        var post = new Reference("W9-14", "strength times face", Trust.Recomputed);
        post.Near("oak post 100×100, kN", 513, Timber.Of(Presses.Wood.WhiteOak).Strength(false, false) * 0.01 / 1e3, 0.001);
        post.Near("oak bearing 100×50 across, kN", 37.0, Timber.Of(Presses.Wood.WhiteOak).Strength(true, false) * 0.005 / 1e3, 0.001);
    }

    [Theory]
    [InlineData(20, 0.741, 1.037)]
    [InlineData(30, 0.904, 1.194)]
    [InlineData(45, 1.135, 1.412)]
    [InlineData(60, 1.346, 1.606)]
    public void Wedge(double α, double smooth, double rough)
    {
        var reference = new Reference("W9-15", "equilibrium of a wedge", Trust.Recomputed);
        reference.Within($"F/N, {α}°, μ 0.2", smooth, Timber.Wedge(α * Math.PI / 180, 0.2), 0.001);
        reference.Within($"F/N, {α}°, μ 0.35", rough, Timber.Wedge(α * Math.PI / 180, 0.35), 0.001);
    }

    [Fact]
    public void Logs()
    {
        var reference = new Reference("W9-17", "trade guidance, very wide scatter; doubtful", Trust.Practice);
        reference.Exactly("straight to 250 mm, kN", (40e3, 70e3), (Timber.SplittingForce(0.25, false, false).Low, Timber.SplittingForce(0.25, false, false).High));
        reference.Exactly("straight to 400 mm, kN", (80e3, 120e3), (Timber.SplittingForce(0.4, false, false).Low, Timber.SplittingForce(0.4, false, false).High));
        reference.Exactly("knotty, kN", (180e3, 250e3), (Timber.SplittingForce(0.3, true, false).Low, Timber.SplittingForce(0.3, true, false).High));
    }

    [Theory]
    [InlineData("C20/25", 2.21)]
    [InlineData("C25/30", 2.56)]
    [InlineData("C30/37", 2.90)]
    [InlineData("C40/50", 3.51)]
    [InlineData("C50/60", 4.07)]
    public void ConcreteInTension(string name, double f) =>
        new Reference("W9-20", "EN 1992-1-1 table 3.1", Trust.FromMemoryAndRecomputed).Within($"f_ctm, MPa, {name}", f, ConcreteClass.Find(name)!.Value.Tension / 1e6, 0.006);

    [Fact]
    public void ConcreteBroken()
    {
        ConcreteClass c = ConcreteClass.Find("c30/37")!.Value;
        var reference = new Reference("W9-21", "EN 12390-3", Trust.FromMemoryAndRecomputed);
        reference.Near("cube 150, kN", 832.5, Demand(new RigCrushConcrete(c.Cube, 0.15 * 0.15, 0.15, false, true) { Name = "a", Kind = "a", Path = "a", Assumed = [] }), 0.001);
        reference.Near("cylinder 150, kN", 530.1, Demand(new RigCrushConcrete(c.Cylinder, Math.PI / 4 * 0.15 * 0.15, 0.3, false, true) { Name = "a", Kind = "a", Path = "a", Assumed = [] }), 0.001);
        new Reference("W9-22", "EN 12390-6", Trust.FromMemoryAndRecomputed).Near("split, kN", 205.0, Demand(new RigCrushConcrete(2.9e6, Math.PI / 2 * 0.15 * 0.3, 0.15, true, true) { Name = "a", Kind = "a", Path = "a", Assumed = [] }), 0.001);

        static double Demand(RigCrushConcrete job) => CrushDemand.Of(job).Facts[0].Si / 1e3;
    }
}
