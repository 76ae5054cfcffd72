using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Collects the rungs, and for each of them how many squeezes the wanted force allows.</summary>
internal sealed class FatigueList(List<Rung> rungs, Rig rig, FrameResponse response)
{
    private readonly FatigueFactors _factors = new(rig.Factors.Fatigue, rig.Factors.FatigueLoad);

    public FatigueStrength Strength(double fy, DetailCategory? direct, DetailCategory? shear = null, double ks = 1) =>
        new(rig.Loading.Squeezes, fy, direct, shear, ks);

    public bool SlottedInto(RigMember member) =>
        response.Plan.Joints.Any(j => j.Joint is RigSlottedJoint && j.Onto.Part == member.Part);

    public Places At(IEnumerable<PlanStation> stations) => Places.Of(response, stations);

    /// <summary>Where the fixed ends of the joints stand.</summary>
    public PlanStation[] OfBeam(PlanJoint[] joints) =>
    [
        .. StationsOf(joints[0].Beam).Where(s => joints.Any(j => j.Numbers.Contains(s.Beam) && Math.Abs(s.X - j.X) < 1e-9)),
    ];

    /// <summary>Where the other part is looked at nearest to each joint.</summary>
    public PlanStation[] OfOnto(PlanJoint[] joints)
    {
        var near = new List<PlanStation>();
        PlanStation[] all = [.. StationsOf(joints[0].Onto).Where(s => s.Cut is PlanCut.Joint or PlanCut.Both)];
        foreach (PlanJoint joint in joints)
        {
            double[] off = [.. all.Select(s => (response.Axes(s.Beam).At(s.X) - joint.Centre).Length)];
            double least = off.Length == 0 ? 0 : off.Min();
            for (int i = 0; i < all.Length; i++)
            {
                // the strands of a pair are equally near
                if (off[i] <= least * (1 + 1e-6) + 1e-6 && !near.Contains(all[i]))
                    near.Add(all[i]);
            }
        }

        return [.. near];
    }

    private IEnumerable<PlanStation> StationsOf(RigMember member) =>
        response.Plan.Parts.First(p => p.Member.Part == member.Part).Stations;

    public void Stations(
        string id, string part, string where, RungGroup group, Places places, FatigueStrength strength,
        Func<PlanStation, Actions, Working?, (double Sigma, double Tau)> stress) =>
        Stations(id, part, where, group, places, strength, (_, s, a, w) => stress(s, a, w));

    /// <summary>The same, where the stress hangs on more of the load case.</summary>
    public void Stations(
        string id, string part, string where, RungGroup group, Places places, FatigueStrength strength,
        Func<FrameSolution, PlanStation, Actions, Working?, (double Sigma, double Tau)> stress)
    {
        var most = new Most();
        Worst? worst = Worst.Case(places, (solution, s, a, w) => Limit(strength, stress(solution, s, a, w), most, w));
        Put(worst, id, part, where, group, strength, most, plural: false);
    }

    public void Joint(
        string id, string part, string where, PlanJoint[] joints, FatigueStrength strength,
        Func<int, JointEnd, Working?, (double Sigma, double Tau)> stress, bool plural = false)
    {
        var most = new Most();
        Worst? worst = Worst.Joint(response, joints, (i, end, w) => Limit(strength, stress(i, end, w), most, w));
        Put(worst, id, part, where, RungGroup.Joints, strength, most, plural);
    }

    /// <summary>Rungs by hot-spot stress, where its factors were kept.</summary>
    public void HotSpots(PlanJoint[] joints, string id, string name, RigWeld weld) => HotSpotRungs.Add(this, rig, response, joints, id, name, weld);

    /// <summary>Says on both of two rungs of one place where they differ by more than a share.</summary>
    public void Compare(string one, string other, double much)
    {
        int a = rungs.FindIndex(r => r.Id == one), b = rungs.FindIndex(r => r.Id == other);
        if (a < 0 || b < 0)
            return;
        double share = rungs[a].SafeTo / rungs[b].SafeTo - 1;
        if (Math.Abs(share) <= much)
            return;
        Rung spot = rungs[a], plain = rungs[b];
        string words = $"By hot-spot stress this place is safe to {(share < 0 ? "less" : "more")} than by plain stress: {spot.SafeTo / plain.SafeTo:0.00} times as much. "
            + (share < 0 ? "Stress gathers there more than the table of details has in mind." : "Stress gathers there less than the table of details has in mind; the lower of the two stands.");
        rungs[a] = spot with { Work = w => { spot.Work(w); w.Note($"{words} The other rung is {plain.Id}."); } };
        rungs[b] = plain with { Work = w => { plain.Work(w); w.Note($"{words} The other rung is {spot.Id}."); } };
    }

    private Limit? Limit(FatigueStrength strength, (double Sigma, double Tau) stress, Most most, Working? w)
    {
        Limit? limit = strength.Force(stress.Sigma, stress.Tau, _factors, w);
        if (w is null && limit is { } here && here.SafeTo < most.Safe)
            (most.Safe, most.Sigma, most.Tau) = (here.SafeTo, stress.Sigma, stress.Tau);
        return limit;
    }

    private void Put(Worst? worst, string id, string part, string where, RungGroup group, FatigueStrength strength, Most most, bool plural)
    {
        string from = where.Length == 0 ? "" : " " + where;
        DetailCategory detail = strength.Detail;
        double? At(double force) => strength.Squeezes(most.Sigma, most.Tau, force, _factors);
        worst?.Into(rungs, new Words(id + "-fatigue", part, $"{(plural ? "crack" : "cracks")} in time{from}", $"may crack{from} within {Squeezes} squeezes", plural), group, FactorFrom, detail.Source,
            new FatigueLife(id + "-fatigue", part, where, $"{detail.What}; {detail.Source}", At(rig.Wanted)) { At = At });
    }

    private string FactorFrom => field ??=
        $"{_factors.Mf:0.##} on the fatigue strength ({FatigueFactors.StrengthSource}), {_factors.Ff:0.##} on the stress range ({FatigueFactors.LoadSource})";

    private string Squeezes => field ??= $"{rig.Loading.Squeezes:#,0}";

    private sealed class Most
    {
        public double Safe = double.PositiveInfinity, Sigma, Tau;
    }
}
