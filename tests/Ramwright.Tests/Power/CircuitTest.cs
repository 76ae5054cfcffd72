using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

/// <summary>Regenerative circuits and cylinders side by side, through the whole study.</summary>
public class CircuitTest
{
    private static readonly RigCylinder Ram = Double(0.080, 0.056) with { SealFriction = 0 };

    /// <summary>A pump of 12 L/min that only its relief valve ends.</summary>
    private static readonly RigElectricPack Twelve = Electric with
    {
        Motor = 20e3,
        LowStage = null,
        HighStage = new RigStage(12 * Lpm / 24, 1, 1),
        RatedPressure = null,
    };

    private static PowerReport Study(Regeneration regeneration) => PowerStudy.Of(Ram with { Regeneration = regeneration }, Twelve, [], Vg46);

    [Fact]
    public void RegenerativeAllTheWayHasTheForceAndSpeedOfTheRod()
    {
        PowerReport always = Study(Regeneration.Always), never = Study(Regeneration.Never);

        var force = new Reference("CY-09", "F = p A; regenerative force by the rod's area", Trust.FoundAndRecomputed);
        force.Near("study, plain push, kN", 105.56, never.TrueForce / 1e3, 0.001);
        force.Near("study, regenerative push, kN", 51.72, always.TrueForce / 1e3, 0.001);
        force.Near("study, most possible, kN", 51.72, always.MostPossibleForce / 1e3, 0.001);
        var speed = new Reference("CY-10", "course notes deriving v = Q/a_rod", Trust.FoundAndRecomputed);
        speed.Near("study, approach, mm/s", 81.20, always.ApproachSpeed * 1e3, 0.001);
        speed.Near("study, stroke, s", 3.695, always.Times.FullStroke, 0.001);
        speed.Near("study, plain approach, mm/s", 39.79, never.ApproachSpeed * 1e3, 0.001);
    }

    [Fact]
    public void RegenerativeOnTheApproachKeepsTheFullForce()
    {
        PowerReport approach = Study(Regeneration.Approach), never = Study(Regeneration.Never);

        Near.Relative(81.20e-3, approach.ApproachSpeed, 0.001);
        Assert.Equal(never.TrueForce, approach.TrueForce);
        Assert.Equal(never.Pressing.Speed, approach.Pressing.Speed);
    }

    [Fact]
    public void TeachingPageRegenerates()
    {
        // 4 cm² and a ring of 2 cm²: bore 22.568 mm, rod 15.958 mm
        double bore = Math.Sqrt(4 * 4e-4 / Math.PI), rod = Math.Sqrt(4 * 2e-4 / Math.PI);
        RigElectricPack pump = Twelve with { HighStage = new RigStage(20 * Lpm / 24, 1, 1), Relief = 80 * Bar };
        PowerReport report = PowerStudy.Of(Double(bore, rod) with { SealFriction = 0, Regeneration = Regeneration.Always }, pump, [], Vg46);

        var row = new Reference("CY-11", "teaching page, answers recomputed", Trust.FoundAndRecomputed);
        row.Near("study, regenerative, m/s", 1.667, report.ApproachSpeed, 0.001);
        row.Near("study, regenerative, kN", 1.6, report.TrueForce / 1e3, 0.001);
    }

    [Fact]
    public void ThinHosesSlowARegenerativeRamMore()
    {
        RigLine[] thin = [new(LineDuty.Pressure, 0.0064, 6, null, "hose 1"), new(LineDuty.Return, 0.0064, 6, null, "hose 2")];
        PowerReport plain = PowerStudy.Of(Ram, Air, thin, Vg46), both = PowerStudy.Of(Ram with { Regeneration = Regeneration.Always }, Air, thin, Vg46);

        SpeedAtLoad at = both.Speeds[0];
        double A = both.Areas.Push, a = both.Areas.Pull;
        // the balance of the two sides, put together by hand
        Near.Relative(at.CylinderPressure * (A - a), (at.LineLoss + at.BackPressure) * a, 1e-9);
        Near.Relative(at.Speed * (A - a), at.Flow, 1e-12);
        Near.Relative(at.Flow, both.Curve.Flow(at.PumpPressure), 1e-6);
        Assert.True(at.LineLoss > plain.Speeds[0].LineLoss);
    }

    [Theory]
    [InlineData(Regeneration.Approach), InlineData(Regeneration.Always)]
    public void WorkingHoldsWhereItRegenerates(Regeneration regeneration)
    {
        var w = new Working();
        PowerStudy.Of(Ram with { Regeneration = regeneration, SealFriction = 0.03, Count = 2 }, Electric, PackHoses, Vg46, w);
        WorkingCheck.Holds(w);
    }

    [Theory]
    [InlineData(2), InlineData(4)]
    public void CylindersSideBySideAddUp(int n)
    {
        PowerReport one = PowerStudy.Of(Ram, Twelve, [], Vg46), many = PowerStudy.Of(Ram with { Count = n }, Twelve, [], Vg46);

        Near.Relative(n * one.TrueForce, many.TrueForce, 1e-12, "force");
        Near.Relative(n * one.MostPossibleForce, many.MostPossibleForce, 1e-12, "most possible");
        Near.Relative(one.ApproachSpeed / n, many.ApproachSpeed, 1e-9, "speed");
        Near.Relative(n * one.Oil.Stroke, many.Oil.Stroke, 1e-12, "oil");
        Near.Relative(n * one.Oil.FromTank, many.Oil.FromTank, 1e-12, "tank");
        Near.Relative(n * one.PullForce, many.PullForce, 1e-12, "pull");
        Near.Relative(n * one.OilEnergy, many.OilEnergy, 1e-12, "energy");
        Near.Relative(one.LettingOff.LostTravel, many.LettingOff.LostTravel, 1e-12, "lost travel");
        Near.Relative(one.BlockedRodSide!.Value, many.BlockedRodSide!.Value, 1e-12, "blocked rod side");
    }

    [Fact]
    public void TheLabelIsThatOfEachCylinder()
    {
        RigCylinder labelled = Ram with { RatedForce = 120e3, Count = 3 };
        Near.Relative(250 * Bar * Math.PI / 4 * 0.0064, PowerStudy.Of(labelled, Twelve, [], Vg46).Label!.AtRatedPressure, 1e-12);
    }
}
