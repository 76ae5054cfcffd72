using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Barrel and rod.</summary>
internal static class CylinderRungs
{
    private const double E = 210e9;

    public static void Add(List<Rung> rungs, Rig rig, PowerReport power)
    {
        RigCylinder cylinder = rig.Cylinder;
        // one pressure in all of them: each carries an even share of the ram force, wherever the work stands
        double share = 1.0 / cylinder.Count;
        string rod = cylinder.Count > 1 ? "rod of each ram" : "ram's rod";
        PartialFactors factors = Factoring.Of(rig);
        double rodYield = cylinder.RodSteel.Fy(cylinder.Rod);

        if (cylinder.BarrelOutside is { } outside)
            rungs.Add(Barrel(rig, power, outside));

        double length = cylinder.BucklingLengthFactor * cylinder.Stroke;
        Limit? Buckles(Working? w)
        {
            w?.Step("L_k", "effective length of the rod, all of the stroke out", "K L", length, Dimension.Length, RodBuckling.EulerSource,
                ("K", cylinder.BucklingLengthFactor, Dimension.Number), ("L", cylinder.Stroke, Dimension.Length));
            return RodBuckling.Buckles(share, E, rodYield, cylinder.Rod, length, rig.Factors.RodBuckling, cylinder.Hole, w);
        }

        if (Buckles(null) is { } bow)
        {
            rungs.Add(new Rung
            {
                Id = "rod-buckling",
                Part = rod,
                Mode = $"bows out, fully extended, {Guided(cylinder.Guide)}",
                Brief = "bows out, fully extended",
                Saying = $"bows out when fully extended, {Guided(cylinder.Guide)},",
                Group = RungGroup.Cylinder,
                GivesAt = bow.GivesAt,
                SafeTo = bow.SafeTo,
                Source = RodBuckling.EulerSource,
                FactorFrom = RodBuckling.FactorSource.ToString(),
                Work = w => Buckles(w),
            });
        }

        if (RodBuckling.Squashes(share, rodYield, cylinder.Rod, factors, cylinder.Hole) is { } squash)
        {
            rungs.Add(new Rung
            {
                Id = "rod-yield",
                Part = rod,
                Mode = "is squeezed past its yield",
                Saying = "is squeezed past its yield",
                Group = RungGroup.Cylinder,
                GivesAt = squash.GivesAt,
                SafeTo = squash.SafeTo,
                Source = Citation.Mechanics("force over area"),
                FactorFrom = Factoring.Load(rig),
                Work = w => RodBuckling.Squashes(share, rodYield, cylinder.Rod, factors, cylinder.Hole, w),
            });
        }

        if (cylinder.RodThread is { } thread)
        {
            double root = Math.Sqrt(4 * thread.As / Math.PI);
            if (RodBuckling.Squashes(share, rodYield, root, factors) is { } crush)
            {
                rungs.Add(new Rung
                {
                    Id = "rod-thread",
                    Part = cylinder.Count > 1 ? "thread on each ram" : "thread on the ram",
                    Mode = $"{thread.Name} is crushed, if the tool bears on it",
                    Saying = $"({thread.Name}) is crushed, if the tool bears on the thread and not on the shoulder,",
                    Group = RungGroup.Cylinder,
                    GivesAt = crush.GivesAt,
                    SafeTo = crush.SafeTo,
                    Source = thread.Form.StressArea,
                    FactorFrom = Factoring.Load(rig),
                    Work = w =>
                    {
                        w.Take("A_s", $"stress area of {thread.Name}", thread.As, Dimension.Area, thread.Form.StressArea);
                        w.Step("d", "diameter of a round of that area", "√(4 A_s / π)", root, Dimension.Length, thread.Form.StressArea,
                            ("A_s", thread.As, Dimension.Area));
                        RodBuckling.Squashes(share, rodYield, root, factors, 0, w);
                    },
                });
            }
        }
    }

    private static Rung Barrel(Rig rig, PowerReport power, double outside)
    {
        RigCylinder c = rig.Cylinder;
        double sy = c.BarrelSteel.Fy((outside - c.Bore) / 2);
        double py = Strength.Barrel.YieldPressure(c.Bore, outside, sy);
        var oil = new OilForce(c, power.Areas);
        double gives = oil.Net(py), safe = oil.Net(py / rig.Factors.Barrel);
        return new Rung
        {
            Id = "barrel-yield",
            Part = "cylinder's barrel",
            Mode = "begins to yield at the bore",
            Saying = "begins to yield at the bore",
            Group = RungGroup.Cylinder,
            GivesAt = gives,
            SafeTo = safe,
            Source = Strength.Barrel.LameSource,
            // a spring that eats it all leaves no share to scale by
            PressureScale = gives > 0 ? oil.Thrust(py) / gives : 1,
            FactorFrom = Strength.Barrel.HalfYieldSource.ToString(),
            Work = w =>
            {
                Strength.Barrel.YieldPressure(c.Bore, outside, sy, w);
                double half = w.Step("p_safe", "pressure it is safe to", "p_y / n", py / rig.Factors.Barrel, Dimension.Pressure, Strength.Barrel.HalfYieldSource,
                    ("p_y", py, Dimension.Pressure), ("n", rig.Factors.Barrel, Dimension.Number));
                oil.Net(py, w);
                oil.Net(half, w);
            },
        };
    }

    private static string Guided(RamGuide guide) => guide switch
    {
        RamGuide.Free => "its end free",
        RamGuide.Pinned => "its end held sideways",
        _ => "its end guided",
    };
}
