using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What punching and shearing ask of the ram.</summary>
public static class CutDemand
{
    /// <summary>The demand.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigCut job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        bool hot = job.Heat is not null;
        double t = job.Thickness, L = job.Edge;
        var law = new ShidaFlow(Math.Clamp(job.Carbon, ShidaFlow.LeastCarbon, ShidaFlow.MostCarbon));
        const double strain = 0.5, rate = 5;
        Band S;
        if (hot)
        {
            double Y = law.Held(strain, rate, job.Heat!.Value, w);
            double τ = Y / Math.Sqrt(3);
            w?.Step("S", "shear strength, hot", "Y / √3", τ, Dimension.Stress, Cutting.Mises, ("Y", Y, Dimension.Stress));
            S = new(0.8 * τ, τ, 0.8 * Y * 1.2);
        }
        else
        {
            Band R_m = WorkStrength.Tensile(job.Steel);
            w?.Take("R_m", $"tensile strength of {job.Steel.Name}, as bars really are", R_m.Likely, Dimension.Stress, WorkStrength.TensileSource);
            S = new(0.7 * R_m.Low, Cutting.ShearStrength(R_m.Likely, 0.75, w), 0.8 * R_m.High);
        }

        double whole = Cutting.Force(S.Likely, L, t, w);
        (double least, double greatest) = Cutting.PeakShare(job.Slope, t);
        double share = (least + greatest) / 2, F = whole * share;
        if (job.Slope > 0)
            w?.Step("F_s", "force with slope on the tool, middle of its range", "F k_s", F, Dimension.Force, Cutting.ToolDesign, ("F", whole, Dimension.Force), ("k_s", share, Dimension.Number));
        // work stays m F t whatever the slope; straight rise, then a level, then it breaks through
        double end = Cutting.WorkShare * whole * t / F + 0.1 * t;
        var work = new CurveResistance(new(0, 0), new(0.2 * t, F), new(end, F), new(end + 0.001 * t, 0));
        Band peak = new(whole * least * S.Low / S.Likely, F, whole * greatest * S.High / S.Likely);
        var facts = new List<Fact>
        {
            new("clearance a side", Cutting.Clearance(0.075, t), Dimension.Length, job.IsPunch ? "7.5 % of the thickness; 5 to 10 % is usual" : "between the blades"),
            new("work", Cutting.Work(Cutting.WorkShare, whole, t), Dimension.Energy, "about half of force times thickness; soft steel takes more"),
        };
        var flags = new List<Remark>();
        if (job.IsPunch)
            facts.Insert(0, new("stripping", 0.2 * F, Dimension.Force, "to pull the punch out: 10 to 20 % of the force, held by the stripper"));
        if (job.Hole is { } d)
        {
            double σ = Cutting.PunchStress(S.Likely, t, d, hot ? null : w);
            facts.Add(new("stress on the punch", σ, Dimension.Stress, new Remark("hardened tool steel stands about {0}", Remark.Of(Cutting.PunchStands, Dimension.Stress))));
            if (σ > Cutting.PunchStands)
                flags.Add(new Remark("the punch would have to stand {0}; hardened tool steel stands about {1}: drill it, or punch it hot", Remark.Of(σ, Dimension.Stress), Remark.Of(Cutting.PunchStands, Dimension.Stress)));
        }

        if (!hot && !job.Steel.HasPapers)
            flags.Add(new Remark($"{job.Steel.Name} steel may be three times as strong, and chip the punch"));
        if (hot)
            flags.AddRange(law.Range.Outside(strain, rate, job.Heat!.Value).Select(o => o with { Words = $"{law.Name}'s formula for the flow stress: {o.Words}; its value at that end is taken" }));
        return new Demand
        {
            Resistance = work,
            Temperature = job.Heat ?? 20,
            WorkHeight = t,
            Curve = work.Points,
            Peak = peak,
            Spread = hot ? "the formula and the heat" : WorkStrength.Spread(job.Steel) + "; shear strength is 0.7 to 0.8 of tensile",
            Facts = facts,
            Flags = flags,
            LetsGo = hot ? null : peak,
            Cautions =
            [
                "It breaks through all at once: the frame recoils, the punch or a chip of it flies. Shield it, wear eye protection, nobody in front.",
                .. job.IsPunch ? ["Fit a stripper before the first hole: a punch stuck in the plate lifts the plate with the ram."] : Array.Empty<string>(),
                .. hot ? ["Hot work: nothing that burns near the press, hoses shielded."] : Array.Empty<string>(),
            ],
            Doing = job.IsPunch ? "punch this hole" : "make this cut",
        };
    }
}
