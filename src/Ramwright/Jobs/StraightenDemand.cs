using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What taking a bow out of a shaft asks of the ram.</summary>
public static class StraightenDemand
{
    /// <summary>The demand.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigStraighten job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        Band Y = WorkStrength.Yield(job.Steel);
        double L = job.Span;
        PlasticBar likely = PlasticBar.Of(job.Bar, Y.Likely), low = PlasticBar.Of(job.Bar, Y.Low), high = PlasticBar.Of(job.Bar, Y.High);
        double most = likely.GreatestSet(L), set = Math.Min(job.Bow, 0.98 * most);
        double κ = likely.CurvatureForSet(set, L) ?? throw new InvalidOperationException("a set within the greatest one has a curvature");
        double P = likely.LoadAt(κ, L), δ = likely.SagAt(κ, L);
        double P_y = likely.F_y(L), δ_y = likely.δ_y(L);
        if (w is not null)
        {
            w.Take("Y", $"yield strength of {job.Steel.Name}, as bars really are", Y.Likely, Dimension.Stress, WorkStrength.YieldSource);
            w.Take("W_e", "elastic modulus", likely.W_e, Dimension.SectionModulus, PlasticBar.Source);
            w.Step("P_y", "load at which it begins to stay bent", "4 W_e Y / L", P_y, Dimension.Force, PlasticBar.ThreePoint, ("W_e", likely.W_e, Dimension.SectionModulus), ("Y", Y.Likely, Dimension.Stress), ("L", L, Dimension.Length));
            w.Step("δ_y", "sag at that load", "P_y L³ / (48 E I)", δ_y, Dimension.Length, PlasticBar.ThreePoint, ("P_y", P_y, Dimension.Force), ("L", L, Dimension.Length), ("E", likely.E, Dimension.Stress), ("I", likely.I, Dimension.SecondMoment));
            w.Take("P", "load that leaves the wanted set, by moment and curvature", P, Dimension.Force, PlasticBar.Source);
            w.Take("δ", "sag at that load", δ, Dimension.Length, PlasticBar.Source);
            w.Step("δ_r", "set that stays", "δ − δ_y P / P_y", δ - δ_y * P / P_y, Dimension.Length, PlasticBar.Source, ("δ", δ, Dimension.Length), ("δ_y", δ_y, Dimension.Length), ("P", P, Dimension.Force), ("P_y", P_y, Dimension.Force));
        }

        var points = new List<ForceAt> { new(0, 0), new(δ_y, P_y) };
        const int n = 20;
        for (int i = 1; i <= n; i++)
        {
            double c = likely.YieldCurvature * Math.Pow(κ / likely.YieldCurvature, (double)i / n), x = likely.SagAt(c, L);
            if (x > points[^1].Travel * (1 + 1e-9))
                points.Add(new(x, likely.LoadAt(c, L)));
        }

        var work = new CurveResistance(points);
        var flags = new List<Remark>();
        if (job.Bow > 0.98 * most)
            flags.Add(new Remark("one pressing can take out about {0} before the bar just folds: press in several places along the bow, a little at a time", Remark.Of(most, Dimension.Length)));
        if (!job.Steel.HasPapers)
            flags.Add(new Remark($"{job.Steel.Name} steel may be far stronger, or break: begin far below this force"));
        return new Demand
        {
            Resistance = work,
            WorkHeight = BendDemand.BarDepth(job.Bar),
            Curve = work.Points,
            Peak = new Band(Math.Min(P, P * low.M_p / likely.M_p), P, P * high.M_p / likely.M_p),
            Spread = WorkStrength.Spread(job.Steel),
            Facts =
            [
                new("press from the touch", δ, Dimension.Length, "down to here, then let go and measure"),
                new("past straight", δ - set, Dimension.Length, "what springs back"),
                new("begins to yield at", P_y, Dimension.Force, "below it nothing stays"),
                new("takes out", set, Dimension.Length, set < job.Bow ? "in this pressing, of the bow there is" : "all of the bow"),
            ],
            Flags = flags,
            Cautions =
            [
                "Press, let go, measure, press a little further. The bar's true strength decides; hardened shafts break without warning.",
                "A bent shaft is a spring: it rolls or jumps off its V-blocks. Chain or cradle it, stand to the side.",
            ],
            Doing = "straighten this",
        };
    }
}
