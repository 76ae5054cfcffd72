using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What bends ask of the ram: V-die, and bar over two supports.</summary>
public static class BendDemand
{
    /// <summary>Real bends over the plastic load.</summary>
    public static readonly Citation Real = Citation.Practice("real bends take 1.1 to 1.5 times the plastic load: hardening, friction, an arm that shortens");

    private const double E = 210e9;

    /// <summary>The V a job uses, m: the one said, else the best of those there are, else by rule.</summary>
    public static double Opening(RigVBend job)
    {
        ArgumentNullException.ThrowIfNull(job);
        double rule = VBending.OpeningFor(job.Thickness);
        if (job.Opening is { } said)
            return said;
        RigVeeDie? best = null;
        foreach (RigVeeDie die in job.Dies)
        {
            bool fits = die.Opening >= 4 * job.Thickness && (die.Length is null || die.Length >= job.Length);
            if (fits && (best is null || Math.Abs(Math.Log(die.Opening / rule)) < Math.Abs(Math.Log(best.Opening / rule))))
                best = die;
        }

        return best?.Opening ?? rule;
    }

    /// <summary>A bend in a V-die.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigVBend job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        double t = job.Thickness, b = job.Length, V = Opening(job), α = Math.PI - job.Angle;
        Band R_m = WorkStrength.Tensile(job.Steel), Y = WorkStrength.Yield(job.Steel);
        w?.Take("R_m", $"tensile strength of {job.Steel.Name}, as bars really are", R_m.Likely, Dimension.Stress, WorkStrength.TensileSource);
        double F = VBending.OehlerForce(R_m.Likely, t, b, V, w);
        double s = VBending.Depth(V, α, w);
        double low = VBending.GrooverForce(1.0, R_m.Low, t, b, V), high = Math.Max(VBending.OehlerForce(R_m.High, t, b, V), VBending.GrooverForce(1.42, R_m.High, t, b, V));
        double r = Math.Max(VBending.AirRadius(V), job.PunchRadius);
        // over its first tenth it springs, holds, and falls a little as the legs come down: 3/4 of peak and stroke on the whole
        var work = new CurveResistance(new(0, 0), new(0.15 * s, 0.75 * F), new(0.5 * s, F), new(0.8 * s, 0.85 * F), new(s, 0.55 * F));
        var facts = new List<Fact>
        {
            new("V to use", V, Dimension.Length, job.Opening is not null ? "as you say" : job.Dies.Any(d => Math.Abs(d.Opening - V) < 1e-9) ? "the best of your dies" : "by the rule"),
            new("along the bend", F / b, Dimension.ForcePerLength, "likely force"),
            new("inside radius", r, Dimension.Length, "about a sixth of the V, or the punch's nose"),
            new("shortest leg", VBending.ShortestLeg(V, w), Dimension.Length, "that stays on the die at 90°; better a tenth more"),
            new("outer face stretches", VBending.OuterStrain(r, t), Dimension.Ratio),
        };
        double κ = Springback.RadiusRatio(Math.Min(r, 0.49 * E * t / Y.Likely), Y.Likely, E, t, w);
        double open = α * (1 - (r + t / 2) / (r / κ + t / 2));
        facts.Add(new("springs back", open, Dimension.Angle, "overbend by about this much"));
        if (job.Angle <= 165 * Math.PI / 180)
        {
            double v = VBending.Allowance(job.Angle, r, t, w);
            facts.Add(new("bend adds", v, Dimension.Length, "to the two outside legs, by DIN 6935"));
            if (job.Leg is { } one && job.OtherLeg is { } two && one + two + v > 0)
                facts.Add(new("cut the flat to", one + two + v, Dimension.Length, "before bending"));
        }

        var flags = new List<Remark>();
        if (!VBending.InOehlersRange(t, V))
            flags.Add(new Remark("Oehler's formula is for plate of {1} to {2} in a V of 5 to 20 times its thickness: here it is stretched, and {0} is a guess",
                Remark.Of(F, Dimension.Force), Remark.Of(VBending.Thinnest, Dimension.Length), Remark.Of(VBending.Thickest, Dimension.Length)));
        if (job.Leg < VBending.ShortestLeg(V))
            flags.Add(new Remark("a leg of {0} slips into this V; it needs {1}, or a V of {2} at most", Remark.Of(job.Leg.Value, Dimension.Length), Remark.Of(VBending.ShortestLeg(V), Dimension.Length), Remark.Of(job.Leg.Value / 0.7072, Dimension.Length)));
        if (VBending.RecommendedRadius(job.Steel.Yield, t) is { } least && r < least)
            flags.Add(new Remark("an inside radius of {0} is tighter than the {1} recommended for such plate (quoted from memory, give or take a step): it may crack, across the rolling less than along it", Remark.Of(r, Dimension.Length), Remark.Of(least, Dimension.Length)));
        if (!job.Steel.HasPapers)
            flags.Add(new Remark($"{job.Steel.Name} steel may be far stronger, and may break instead of bending"));
        if (job.Dies.Count > 0 && job.Opening is null && !job.Dies.Any(d => Math.Abs(d.Opening - V) < 1e-9))
            flags.Add(new Remark("none of your dies is long and wide enough: the V of the rule is taken"));
        return new Demand
        {
            Resistance = work,
            WorkHeight = t,
            Curve = work.Points,
            Peak = new Band(Math.Min(low, F), F, Math.Max(high, F)),
            Spread = WorkStrength.Spread(job.Steel) + "; dry dies take more",
            Facts = facts,
            Flags = flags,
            Cautions =
            [
                "Do not let the punch bottom: then the pump sets the force, not the plate.",
                "The legs swing up fast; keep hands from between plate and punch, and stand beside the plate, not over it.",
            ],
            Doing = "make this bend",
        };
    }

    /// <summary>The forces of a chart for a thickness in each V, N a metre.</summary>
    /// <param name="steel">The steel.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="V">Opening, m.</param>
    public static double PerMetre(WorkSteel steel, double t, double V) => VBending.OehlerForce(WorkStrength.Tensile(steel).Likely, t, 1, V);

    /// <summary>A bar bent over two supports.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigBarBend job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        bool hot = job.Heat is not null;
        double L = job.Span, depth = BarDepth(job.Bar), travel = L / 2 * Math.Tan(job.Angle / 2), ε = depth / (2 * job.Radius);
        var law = new ShidaFlow(Math.Clamp(job.Carbon, ShidaFlow.LeastCarbon, ShidaFlow.MostCarbon));
        const double rate = 0.5;
        Band Y = hot ? Band.Around(law.Held(ε, rate, job.Heat!.Value), 0.2, 0.2) : WorkStrength.Yield(job.Steel);
        if (hot)
            law.Held(ε, rate, job.Heat!.Value, w);
        else
            w?.Take("Y", $"yield strength of {job.Steel.Name}, as bars really are", Y.Likely, Dimension.Stress, WorkStrength.YieldSource);
        double E_T = hot ? 0.1 * E : E;
        PlasticBar bar = PlasticBar.Of(job.Bar, Y.Likely, E_T);
        double F_p = bar.F_p(L, w), k = hot ? 1.1 : 1.25;
        double F = k * F_p;
        w?.Step("F", "force for a real bend", "k F_p", F, Dimension.Force, Real, ("k", k, Dimension.Number), ("F_p", F_p, Dimension.Force));
        double elastic = Math.Min(bar.δ_y(L), 0.2 * travel);
        var work = new CurveResistance(new(0, 0), new(elastic, 0.8 * F_p), new(Math.Max(2.5 * elastic, 0.3 * travel), F_p), new(travel, F));
        var facts = new List<Fact>
        {
            new("plastic moment", bar.M_p, Dimension.Moment),
            new("outer fibre stretches", ε, Dimension.Ratio, "of a bend to that radius"),
        };
        double left = bar.CurvatureLeft(job.Radius);
        if (!hot && left > 0 && 1 / left < 1e4)
            facts.Add(new("radius left", 1 / left, Dimension.Length, "after springback, where it was held to the radius"));
        if (!hot && left > 0)
            facts.Add(new("springs back", job.Angle * (1 - left * job.Radius), Dimension.Angle, "overbend by about this much"));
        var flags = new List<Remark>();
        if (!hot && !job.Steel.HasPapers)
            flags.Add(new Remark($"{job.Steel.Name} steel may be far stronger, and may break instead of bending"));
        if (left <= 0)
            flags.Add(new Remark("to a radius of {0} it only springs: it comes back straight", Remark.Of(job.Radius, Dimension.Length)));
        if (job.Bar is CircularHollow tube)
        {
            facts.Add(new("outer wall left", tube.T * TubeBending.OuterWall(tube.D, job.Radius), Dimension.Length, "of the wall it has"));
            facts.Add(new("tightest radius", TubeBending.TightestRadius(tube.D, tube.T), Dimension.Length, "without a mandrel or sand"));
            if (job.Radius < TubeBending.TightestRadius(tube.D, tube.T))
                flags.Add(new Remark("a radius of {0} is tighter than {1}: without sand or a mandrel the tube kinks", Remark.Of(job.Radius, Dimension.Length), Remark.Of(TubeBending.TightestRadius(tube.D, tube.T), Dimension.Length)));
        }
        else if (!hot && ε > 0.2)
            flags.Add(new Remark("the outer fibre stretches by a fifth or more: bend it hot, or to a wider radius"));
        if (job.Bar is RectangularHollow)
            flags.Add(new Remark("a square tube's walls fold in under the former long before the bend is full: fill it, or expect less than this force"));
        if (hot)
            flags.AddRange(law.Range.Outside(ε, rate, job.Heat!.Value).Select(o => o with { Words = $"{law.Name}'s formula for the flow stress: {o.Words}; its value at that end is taken" }));
        return new Demand
        {
            Resistance = work,
            Temperature = job.Heat ?? 20,
            WorkHeight = depth,
            Curve = work.Points,
            Peak = hot ? new(1.0 * F_p * 0.8, F, 1.3 * F_p * 1.2) : new(Math.Min(F, 1.1 * F_p * Y.Low / Y.Likely), F, 1.5 * F_p * Y.High / Y.Likely),
            Spread = hot ? "20 % for the formula and a heat guessed within 25 °C (45 °F)" : WorkStrength.Spread(job.Steel) + "; rollers and hardening add 10 to 50 %",
            Facts = facts,
            Flags = flags,
            Cautions =
            [
                "A bar under a bend is a spring: it jumps when it slips off a support or breaks. Supports that cannot tip, ends that cannot fly.",
                .. hot ? ["Hot work: nothing that burns near the press, hoses shielded."] : Array.Empty<string>(),
            ],
            Doing = "make this bend",
        };
    }

    internal static double BarDepth(Shape bar) => bar switch
    {
        Flat flat => flat.H,
        Round round => round.D,
        CircularHollow tube => tube.D,
        RectangularHollow box => box.H,
        _ => throw new ArgumentException($"bending {bar} is not reckoned here", nameof(bar)),
    };
}
