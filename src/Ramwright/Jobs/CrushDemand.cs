using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What crushing and splitting ask of the ram: ranges, all of them.</summary>
public static class CrushDemand
{
    /// <summary>A tube or box.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigCrush job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        Band Y = WorkStrength.Yield(job.Steel), R_m = WorkStrength.Tensile(job.Steel);
        double σ_0 = (Y.Likely + R_m.Likely) / 2, σ_low = (Y.Low + R_m.Low) / 2, σ_high = (Y.High + R_m.High) / 2;
        w?.Step("σ_0", "flow stress of the wall", "(Y + R_m) / 2", σ_0, Dimension.Stress, TubeCrushing.Statics, ("Y", Y.Likely, Dimension.Stress), ("R_m", R_m.Likely, Dimension.Stress));
        double t, D, height;
        bool round = job.Bar is CircularHollow;
        if (job.Bar is CircularHollow tube)
            (t, D, height) = (tube.T, tube.D - tube.T, tube.D);
        else
        {
            var box = (RectangularHollow)job.Bar;
            (t, D, height) = (box.T, (box.H + box.B) / 2 - box.T, box.H);
        }

        double x = job.Travel, mean, peak;
        CurveResistance work;
        Band band;
        if (job.OnEnd)
        {
            mean = round ? TubeCrushing.TubeMean(σ_0, D, t, w) : TubeCrushing.BoxMeanSlow(σ_0, D, t, w);
            peak = Math.Max(mean, round ? TubeCrushing.TubeSquash(σ_0, D, t, w) : TubeCrushing.BoxSquash(σ_0, D, t, w));
            work = new CurveResistance(new(0, 0), new(0.02 * x, peak), new(0.15 * x, 0.8 * mean), new(0.3 * x, 1.1 * mean), new(0.45 * x, 0.85 * mean), new(0.6 * x, 1.1 * mean), new(0.75 * x, 0.85 * mean), new(x, 1.1 * mean));
            band = new Band(Math.Min(peak, mean * 1.2 * σ_low / σ_0), peak, peak * σ_high / σ_0 * 1.1);
        }
        else if (round)
        {
            double P_0 = TubeCrushing.Flattening(Y.Likely, D, t, job.Length, true, w);
            var points = new List<ForceAt> { new(0, 0) };
            const int n = 20;
            for (int i = 1; i <= n; i++)
                points.Add(new(x * i / n, P_0 * TubeCrushing.FlatteningRise(Math.Min(0.95, x * i / n / D))));
            work = new CurveResistance(points);
            (mean, peak) = (P_0, points[^1].Force);
            band = new Band(peak * Y.Low / Y.Likely, peak, peak * Y.High / Y.Likely * 1.4);
        }
        else
        {
            double H = ((RectangularHollow)job.Bar).H - t;
            mean = TubeCrushing.BoxSideMean(Y.Likely, H, t, job.Length);
            w?.Step("P_m", "mean force until it is flat", "4 π k Y t² / 4 · l / H", mean, Dimension.Force, TubeCrushing.Statics,
                ("k", FlatDies.PlaneStrain, Dimension.Number), ("Y", Y.Likely, Dimension.Stress), ("t", t, Dimension.Length), ("l", job.Length, Dimension.Length), ("H", H, Dimension.Length));
            peak = Math.Min(2 * t * job.Length * Y.Likely, 4 * mean);
            work = new CurveResistance(new(0, 0), new(0.03 * x, peak), new(0.3 * x, mean), new(x, 0.8 * mean));
            band = new Band(mean * Y.Low / Y.Likely, peak, Math.Max(peak, 2 * t * job.Length * Y.High));
        }

        return new Demand
        {
            Resistance = work,
            WorkHeight = job.OnEnd ? job.Length : height,
            Curve = work.Points,
            Peak = band,
            Spread = WorkStrength.Spread(job.Steel) + "; how it folds is partly chance",
            Facts = [new("mean force", mean, Dimension.Force, job.OnEnd ? "while it folds, after the first bang" : "while it flattens")],
            Flags = [new Remark("folding is known as a range only: reckon with a third either way")],
            LetsGo = job.OnEnd || !round ? band : null,
            Cautions = ["A tube that folds lets go and catches again: it bangs, kicks over and throws scale. Cage it, stand aside."],
            Doing = "crush this",
        };
    }

    /// <summary>Timber pressed.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigCrushTimber job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        Timber wood = Timber.Of(job.Wood);
        double f = wood.Strength(job.AcrossGrain, job.Green), F = f * job.Area;
        w?.Take("f_c", job.AcrossGrain ? "strength across the grain, at the proportional limit" : "crushing strength along the grain", f, Dimension.Stress, job.Green ? Timber.Record : Timber.WoodHandbook);
        w?.Step("F", "force to crush", "f_c A", F, Dimension.Force, TubeCrushing.Statics, ("f_c", f, Dimension.Stress), ("A", job.Area, Dimension.Area));
        double x = 0.05 * job.Height;
        var work = job.AcrossGrain
            ? new CurveResistance(new(0, 0), new(0.2 * x, F), new(2 * x, 1.6 * F))
            : new CurveResistance(new(0, 0), new(0.2 * x, F), new(x, 0.8 * F));
        return new Demand
        {
            Resistance = work,
            WorkHeight = job.Height,
            Curve = work.Points,
            Peak = job.AcrossGrain ? new(0.75 * F, 1.6 * F, 2.5 * F) : new(0.75 * F, F, 1.3 * F),
            Spread = "wood scatters by a quarter, and gets harder as it is pressed flat across the grain",
            Facts = [new("strength", f, Dimension.Stress, "of clear wood")],
            Flags = job.Green && job.AcrossGrain && wood.AcrossGreen is null ? [new Remark("no test of this wood green across the grain is at hand: 0.6 of the dry one is taken")] : [],
            LetsGo = job.AcrossGrain ? null : new Band(0.75 * F, F, 1.3 * F),
            Cautions = ["Timber splits without warning and throws slabs sideways: strap it or cage it."],
            Doing = "crush this",
        };
    }

    /// <summary>A log split.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigSplitTimber job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        Band F = Timber.SplittingForce(job.Diameter, job.Knotty, job.Green);
        w?.Take("F", "force by the thickness of the log", F.Likely, Dimension.Force, Timber.LogRule);
        double n = 1 / Timber.Wedge(job.Wedge, 0.3);
        w?.Step("N", "push of the wedge on each half", "F / (2 (sin(α / 2) + μ cos(α / 2)))", F.Likely * n, Dimension.Force, Timber.WedgeSource, ("F", F.Likely, Dimension.Force), ("α", job.Wedge, Dimension.Angle), ("μ", 0.3, Dimension.Number));
        double x = 0.6 * job.Length;
        var work = new CurveResistance(new(0, 0), new(0.1 * x, F.Likely), new(0.3 * x, 0.5 * F.Likely), new(x, 0.2 * F.Likely));
        return new Demand
        {
            Resistance = work,
            WorkHeight = job.Length,
            Curve = work.Points,
            Peak = F,
            Spread = "knots rule: a rule of thumb with a very wide scatter",
            Facts = [new("push on each half", F.Likely * n, Dimension.Force, "sideways, by the wedge")],
            Flags = [new Remark("this is a rule of thumb from log splitters, not a calculation")],
            Cautions = ["The halves fly apart and knots let go with a crack: nobody beside the wedge, both hands at the controls."],
            Doing = "split this",
        };
    }

    /// <summary>Concrete broken.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigCrushConcrete job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        double F = job.Strength * job.Area;
        w?.Step("F", job.Split ? "force to split it" : "force to crush it", "f A", F, Dimension.Force, ConcreteSource, ("f", job.Strength, Dimension.Stress), ("A", job.Area, Dimension.Area));
        double x = 0.003 * job.Height;
        Band band = job.Characteristic ? new(F, 1.25 * F, 1.6 * F) : Band.Around(F, 0.15, 0.15);
        var work = new CurveResistance(new(0, 0), new(x, band.Likely), new(1.05 * x, 0));
        return new Demand
        {
            Resistance = work,
            WorkHeight = job.Height,
            Curve = work.Points,
            Peak = band,
            Spread = job.Characteristic ? "19 in 20 pieces are stronger than their class, some by half, and age adds" : "15 % either way",
            Facts = [new("by its class", F, Dimension.Force, "what it must reach to pass")],
            Flags = [new Remark("this breaks a piece; it is no test to a standard, which wants a machine that is calibrated and loads at a steady rate")],
            LetsGo = band,
            Cautions = ["Concrete bursts: a cage of mesh all round, eye protection, nobody near."],
            Doing = "break this",
        };
    }

    /// <summary>Compression and splitting of cubes and cylinders.</summary>
    public static readonly Citation ConcreteSource = new("EN 12390-3, EN 12390-6", "compressive and tensile splitting strength", Standing.FromMemory);
}
