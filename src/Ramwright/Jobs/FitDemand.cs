using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What pressing in and pulling off ask of the ram.</summary>
public static class FitDemand
{
    /// <summary>Friction that a press is sized for.</summary>
    public const double DesignFriction = 0.15;

    /// <summary>Pressure in a joint at an interference, Pa.</summary>
    public static double Pressure(RigFitJoint joint, double δ, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(joint);
        (double E_o, double ν_o) = LameFit.Of(joint.Hub);
        (double E_i, double ν_i) = LameFit.Of(joint.Shaft);
        double D = joint.HubOutside;
        if (joint.IsBearing)
            (D, δ) = LameFit.BearingRing(joint.D, joint.HubOutside, δ);
        return LameFit.Pressure(δ, joint.D, D, joint.ShaftBore, E_o, ν_o, E_i, ν_i, w);
    }

    /// <summary>Pressing in.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigPressFit job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        RigFitJoint j = job.Joint;
        double δ = (j.Least + j.Most) / 2;
        double p = Pressure(j, δ, w), F = LameFit.Force(j.Friction, p, j.D, j.Length, w);
        double low = LameFit.Force(Math.Min(j.Friction, 0.08), Pressure(j, j.Least), j.D, j.Length);
        double p_max = Pressure(j, j.Most), high = LameFit.Force(Math.Max(j.Friction, DesignFriction), p_max, j.D, j.Length);
        var work = new CurveResistance(new(0, 0), new(j.Length, F));
        double D = j.IsBearing ? LameFit.BearingRing(j.D, j.HubOutside, δ).Outside : j.HubOutside;
        double hoop = LameFit.HubHoop(p_max, j.D, D, w);
        double ΔT = LameFit.ShrinkBy(j.Most, 0.0006 * j.D, j.D, w: w);
        var facts = new List<Fact>
        {
            new("interference", δ, Dimension.Length, j.Least < j.Most ? "on the diameter, in the middle of its limits" : "on the diameter, as measured"),
            new("pressure in the joint", p, Dimension.Stress, "likely"),
            new("hoop stress in the hub", hoop, Dimension.Stress, "at its bore, with the tightest pair"),
            new("instead: heat the hub to", 20 + ΔT, Dimension.Temperature, new Remark("in a shop at {0} it then slides on; bearings no hotter than {1}", Remark.Of(20, Dimension.Temperature), Remark.Of(120, Dimension.Temperature))),
        };
        if (j.ShaftBore > 0)
        {
            facts.Add(new("bore closes by", LameFit.BoreCloses(p, j.D, j.ShaftBore, LameFit.Of(j.Shaft).E), Dimension.Length, "on the diameter: ream or hone it after pressing"));
            facts.Add(new("squeeze in the bush", -LameFit.BushHoop(p_max, j.D, j.ShaftBore), Dimension.Stress, "at its bore"));
        }

        var flags = new List<Remark>();
        if (job.HubSteel is { } steel && hoop > steel.Yield)
            flags.Add(new Remark("the hub yields at its bore ({0} against {1}): the fit gets looser than reckoned, and the hub grows", Remark.Of(hoop, Dimension.Stress), Remark.Of(steel.Yield, Dimension.Stress)));
        if (j.Hub == FitMetal.CastIron && hoop > 100e6)
            flags.Add(new Remark("{0} of hoop stress splits a hub of grey cast iron: less interference, or a wider hub", Remark.Of(hoop, Dimension.Stress)));
        if (j.Least <= 0)
            flags.Add(new Remark("the loosest pair does not hold at all: measure shaft and hole before you rely on it"));
        if (j.IsBearing)
            flags.Add(new Remark("the bearing's ring is reckoned as a thin hub, within some tens of per cent"));
        return new Demand
        {
            Resistance = work,
            WorkHeight = 2 * j.Length,
            Curve = work.Points,
            Peak = new Band(Math.Min(low, F), F, Math.Max(high, F)),
            Spread = j.Least < j.Most ? "the limits of the fit, and friction from oiled to dry" : "friction from oiled to dry",
            Facts = facts,
            Flags = flags,
            Cautions =
            [
                "Start it square and watch it: a part that tips jams, then jumps or shatters. Bearings and hard rings split and fly: cover them, face shield on.",
                .. j.IsBearing ? ["Press on the ring that is tight, never through the balls."] : Array.Empty<string>(),
            ],
            Doing = "press this in",
        };
    }

    /// <summary>Pulling or pushing off.</summary>
    /// <param name="job">The job.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigPull job, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        CurveResistance work;
        Band peak;
        Band? letsGo = null;
        var facts = new List<Fact>();
        if (job.Joint is { } j)
        {
            double δ = (j.Least + j.Most) / 2, p = Pressure(j, δ, w), F = LameFit.Force(j.Friction, p, j.D, j.Length, w);
            w?.Step("F_s", "force as it sits now", "k F", job.Seized * F, Dimension.Force, LameFit.FrictionSource, ("k", job.Seized, Dimension.Number), ("F", F, Dimension.Force));
            double high = LameFit.Force(Math.Max(j.Friction, DesignFriction), Pressure(j, j.Most), j.D, j.Length);
            peak = new Band(Math.Min(LameFit.Force(j.Friction, Pressure(j, j.Least), j.D, j.Length), job.Seized * F), job.Seized * F, Math.Max(3 * high, job.Seized * high));
            double rest = Math.Max(job.Travel, 0.1e-3);
            // breaks loose, then slides with friction alone over what is still engaged
            double slide = F * Math.Max(0, 1 - 0.1 * rest / j.Length);
            work = job.Travel < j.Length * (1 - 1e-9)
                ? new CurveResistance(new(0, 0), new(0.02 * rest, job.Seized * F), new(0.1 * rest, slide), new(rest, F * (1 - rest / j.Length)))
                : new CurveResistance(new(0, 0), new(0.02 * rest, job.Seized * F), new(0.1 * rest, slide), new(rest, 0));
            if (job.Seized > 1)
                letsGo = new Band(0, job.Seized * F - slide, Math.Max(job.Seized * F - slide, peak.High - slide));
            facts.Add(new("pressure in the joint", p, Dimension.Stress, "as when new"));
            facts.Add(new("as when new", F, Dimension.Force, "to slide the whole joint"));
            facts.Add(new("or heat the hub by", LameFit.ShrinkBy(j.Most, 0, j.D), Dimension.Number, "kelvin more than the shaft, and it is loose"));
        }
        else
        {
            peak = Band.Around(job.Force, 0.3, 0.5);
            letsGo = Band.Around(0.5 * job.Force, 0.3, 0.5);
            work = new CurveResistance(new(0, 0), new(0.05 * job.Travel, job.Force), new(job.Travel, 0.5 * job.Force));
            w?.Take("F", "force as you say", job.Force, Dimension.Force, Citation.Practice("stated"));
        }

        return new Demand
        {
            Resistance = work,
            WorkHeight = job.Joint?.Length ?? 0,
            Curve = work.Points,
            Peak = peak,
            Spread = job.Joint is null ? "what was said is a guess too" : "rust and years: 1 to 3 times what it took when new",
            Facts = facts,
            LetsGo = letsGo,
            Cautions =
            [
                "It lets go with a bang and everything under tension jumps: sling the part, stand out of the line of rod and shaft, cover the puller.",
                "Never heat or strike a loaded rod or jaw.",
            ],
            Doing = job.ByRod ? "pull this off" : "push this off",
        };
    }
}
