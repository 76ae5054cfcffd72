using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Tie rods, their nuts, their preload, and plates that span them from front to back.</summary>
internal static class TieRodRungs
{
    private static readonly Citation Response = Citation.Mechanics("beam frame solved for one newton at the ram; the answer is linear");

    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        if (rig.Frame is not RigTieRodFrame frame || response.Plan.Rods.Count == 0)
            return;
        try
        {
            Rods(rungs, rig, frame, response);
        }
        catch (ArgumentException cannot) when (cannot is not ArgumentOutOfRangeException)
        {
            throw new PressFaultsException([new Fault("frame.rod", cannot.Message.Split(" (Parameter", 2)[0], "less preload, thicker rods or higher nuts")]);
        }

        Plate(rungs, rig, frame.CrownPlate, frame.Crown, frame.RodsDeep, frame.DieWidth);
        Plate(rungs, rig, frame.BedPlate, frame.Bed, frame.RodsDeep, frame.DieDepth);
    }

    /// <summary>The rod with the preload to fear, as <see cref="PreloadedRod.Cycle"/> and its limits want it.</summary>
    internal static PreloadedRod Strained(PlanRod rod) => new(
        rod.Rod.As, rod.Rod.Proof, rod.Rod.Fu, rod.Rod.PreloadMost, rod.Rod.PreloadMost > 0 ? rod.Stiffness.ShareMost : 1);

    private static void Rods(List<Rung> rungs, Rig rig, RigTieRodFrame frame, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        RigTieRod made = frame.Rod;
        RodStiffness k = response.Plan.Rods[0].Stiffness;
        bool preloaded = made.PreloadMost > 0;
        PreloadedRod rod = Strained(response.Plan.Rods[0]);
        string broken = Factoring.Break(rig);

        Rung? Worst(Words words, RungGroup group, string factor, Citation source, Func<Actions, Working?, Limit?> check) =>
            Tightest(response, check)?.Into(words, group, factor, source);

        void Keep(Rung? rung)
        {
            if (rung is not null)
                rungs.Add(rung);
        }

        Keep(Worst(new Words("tie-rod-pull", "tie rods", "are stretched for good", "are stretched for good", Plural: true), RungGroup.Frame, broken,
            PreloadedRod.Source, (a, w) =>
            {
                Split(w);
                return rod.Stretches(a.N, factors, w);
            }));
        Keep(Worst(new Words("tie-rod-bending", "tie rods", "yield at the edge of the thread, pulled and bent", "yield at the edge of the thread, pulled and bent,", Plural: true),
            RungGroup.Frame, Factoring.Load(rig), PreloadedRod.Source, (a, w) =>
            {
                Split(w);
                return rod.Bends(a.N, Bent(a, w), factors, w);
            }));

        ThreadFit fit = RamRungs.Fit(made.Thread);
        Keep(Worst(new Words("tie-rod-thread", "nuts of the tie rods", "strip their thread", "strip their thread", Plural: true), RungGroup.Frame, broken,
            NutAndThread.Source, (a, w) => NutAndThread.Strips(Math.Max(a.N, 0), fit, made.NutHeight, made.Fu, made.NutFu, factors, w)));
        double strips = NutAndThread.ShearShare * Math.Min(
            NutAndThread.OuterArea(fit, made.NutHeight) * made.Fu, NutAndThread.InnerArea(fit, made.NutHeight) * made.NutFu);
        if (!(made.PreloadMost < strips))
            throw new ArgumentException("the nuts strip under the preload alone");

        Fatigue();

        if (made.PreloadLeast > 0)
        {
            string seat = made.Seat == RodSeat.Sleeve ? "sleeves" : made.Seat == RodSeat.Shoulder ? "shoulders" : "inner nuts";
            string opens = $"lift off their {seat}";
            Keep(Worst(new Words("preload", "tie-rod joints", opens, opens, Plural: true), RungGroup.Stiffness,
                "none: the rods then take the whole pull at every squeeze", Preload.JointSource, (a, w) =>
                {
                    Split(w);
                    return Preload.Opens(a.N, made.PreloadLeast, k.ShareLeast, w);
                }));
        }

        void Fatigue()
        {
            var gamma = new FatigueFactors(rig.Factors.Fatigue, rig.Factors.FatigueLoad);
            PreloadedRod counted = rod with { Preload = made.PreloadLeast, Share = made.PreloadLeast > 0 ? k.ShareMost : 1 };
            double? At(double force)
            {
                double range = 0;
                foreach (FrameSolution solution in response.Solutions)
                {
                    foreach (PlanRod one in response.Plan.Rods)
                    {
                        Actions a = one.Actions(solution);
                        double bent = Bent(a) * 32 / (Math.PI * Math.Pow(made.StressDiameter, 3));
                        range = Math.Max(range, force * bent + 2 * counted.Cycle(Math.Max(0, force * a.N)).Amplitude);
                    }
                }

                return range * gamma.Both > FatigueCurve.Cap(DetailCategory.Thread, made.Proof)
                    ? 0
                    : FatigueCurve.Life(DetailCategory.Thread, range * gamma.Both, DetailCategory.ThreadSize(made.Thread.D));
            }

            Rung? rung = Worst(new Words("tie-rod-fatigue", "tie rods", "crack in time in their thread", $"may crack in their thread within {rig.Loading.Squeezes:#,0} squeezes", Plural: true),
                RungGroup.Frame, $"{gamma.Mf:0.##} on the fatigue strength ({FatigueFactors.StrengthSource}), {gamma.Ff:0.##} on the stress range ({FatigueFactors.LoadSource})",
                DetailCategory.Thread.Source, (a, w) =>
                {
                    Split(w);
                    return counted.Cracks(a.N, Bent(a, w), made.Thread, rig.Loading.Squeezes, gamma, w);
                });
            Keep(rung is null ? null : rung with { Fatigue = new FatigueLife(rung.Id, rung.Part, "in their thread", $"{DetailCategory.Thread.What}; {DetailCategory.Thread.Source}", At(rig.Wanted)) { At = At } });
        }

        double Bent(Actions a, Working? w = null)
        {
            double M = Math.Sqrt(a.My * a.My + a.Mz * a.Mz);
            w?.Step("M", "bending where the rod leaves the nut, per newton", "√(M_y² + M_z²)", M, Dimension.Moment, Response,
                ("M_y", a.My, Dimension.Moment), ("M_z", a.Mz, Dimension.Moment));
            return M;
        }

        void Split(Working? w)
        {
            if (w is not null && preloaded)
                RodStiffness.Of(frame, w);
            if (w is not null && preloaded && made.Seat != RodSeat.Sleeve)
                w.Take("C", "share of a pull that the rod feels where crown or bed is clamped", k.ShareMost, Dimension.Number, RodJoint.ShareSource);
        }
    }

    internal sealed record Place(Limit Limit, string CaseName, Action<Working> Work)
    {
        public Rung Into(Words words, RungGroup group, string factor, Citation source)
        {
            string aside = CaseName == "centred" ? "" : ", " + CaseName;
            return new Rung
            {
                Id = words.Id,
                Part = words.Part,
                Mode = words.Mode + aside,
                Brief = words.Mode,
                Load = CaseName == "centred" ? "" : CaseName,
                Saying = words.Saying.TrimEnd(',') + aside + (words.Saying.EndsWith(',') && aside.Length == 0 ? "," : ""),
                Plural = words.Plural,
                Group = group,
                GivesAt = Limit.GivesAt,
                SafeTo = Limit.SafeTo,
                FactorFrom = factor,
                Source = source,
                Work = Work,
            };
        }
    }

    /// <summary>Every rod in every load case; left and right are equal but for rounding, and the first found keeps the place.</summary>
    internal static Place? Tightest(FrameResponse response, Func<Actions, Working?, Limit?> check)
    {
        Place? worst = null;
        foreach (FrameSolution solution in response.Solutions)
        {
            foreach (PlanRod rod in response.Plan.Rods)
            {
                Actions a = rod.Actions(solution);
                if (check(a, null) is not { } limit || (worst is not null && worst.Limit.SafeTo * (1 - 1e-9) <= limit.SafeTo))
                    continue;
                worst = new Place(limit, solution.Case.Name, w =>
                {
                    w.Note($"Worst rod: {rod.Name}. Worst load case: {solution.Case.Name}. Actions are those of one newton at the ram.");
                    check(a, w);
                });
            }
        }

        return worst;
    }

    private static void Plate(List<Rung> rungs, Rig rig, RigEndPlate? plate, RigMember member, double deep, double patch)
    {
        if (plate is null || !(deep > 0))
            return;
        PartialFactors factors = Factoring.Of(rig);
        double spread = Math.Min(patch, deep);
        Limit? Check(Working? w) => CornerPlate.Yields(1, deep, spread, plate.Length, plate.Hole, plate.Thickness, member.Fy, factors, w);
        if (Check(null) is not { } limit)
            return;
        const string what = "bends from front to back between the rods";
        rungs.Add(new Rung
        {
            Id = Rung.IdOf(member.Part) + "-plate-deep",
            Part = member.Part,
            Mode = what,
            Saying = what,
            Group = RungGroup.Frame,
            GivesAt = limit.GivesAt,
            SafeTo = limit.SafeTo,
            FactorFrom = Factoring.Load(rig),
            Source = CornerPlate.Source,
            Work = w => Check(w),
        });
    }
}
