using CsCheck;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class SnapThroughTest
{
    [Fact]
    public void EnergyOfTwoSpringsInARow()
    {
        // 200 kN on a frame of 250 kN/mm, and 3 L of oil of 1.5 GPa above a bore of 100 mm
        var r = new Reference("SN-1", "elastic energy, F²/2k and p²V/2K worked apart; energy into motion", Trust.Recomputed);
        double A = Math.PI / 4 * 0.01, p = 200e3 / A;
        SnapThrough snap = SnapThrough.Of(200e3, 1 / 250e6, 3e-3 / (1.5e9 * A * A), 20);

        r.Near("frame, J", 80, snap.InFrame, 1e-9);
        r.Near("oil, J", 648.46, snap.InOil, 1e-4);
        r.Near("oil by pressure, J", StoredEnergy.InOil(p, 3e-3), snap.InOil, 1e-9);
        r.Near("frame by stiffness, J", StoredEnergy.InFrame(200e3, 250e6), snap.InFrame, 1e-9);
        r.Near("free travel, mm", 0.8 + 6.4846, snap.FreeTravel * 1e3, 1e-4);
        r.Near("half of force times travel, J", 200e3 * snap.FreeTravel / 2, snap.Energy, 1e-12);
        r.Near("greatest speed of 20 kg, m/s", 8.5350, snap.RamSpeed, 1e-4);
        r.Near("greatest speed of 1 kg, m/s", 38.170, snap.SpeedOf(1), 1e-4);
    }

    // The same by marching in time: a mass let go between the spring of the frame and nothing swings back as far as it was stretched.
    [Fact]
    public void TheRecoilOfAFrameIsItsOwnForce()
    {
        double k = 250e6, m = 300, x = 200e3 / k, v = 0, dt = 1e-7, least = x;
        for (int i = 0; i < 100_000; i++)
        {
            v -= k / m * x * dt;
            x += v * dt;
            least = Math.Min(least, x);
        }

        new Reference("SN-2", "undamped swing marched in time", Trust.Recomputed)
            .Near("reversed force, kN", -k * least / 1e3, SnapThrough.Of(200e3, 1 / k, 0, 1).Recoil / 1e3, 1e-3);
        Near.Relative(200e3, SnapThrough.Of(200e3, 1 / k, 0, 1).GreatestReversal, 1e-12, "with no oil the frame has only itself to catch");
    }

    [Fact]
    public void TheReversedForceHoldsTheWholeEnergy() =>
        Gen.Select(Gen.Double[1e3, 1e7], Gen.Double[1e-10, 1e-7], Gen.Double[0, 1e-7], Gen.Double[1, 500]).Sample((F, frame, oil, mass) =>
        {
            SnapThrough snap = SnapThrough.Of(F, frame, oil, mass);

            Near.Relative(snap.Energy, frame * snap.GreatestReversal * snap.GreatestReversal / 2, 1e-9, "energy at the reversal");
            Near.Relative(snap.Energy, mass * snap.RamSpeed * snap.RamSpeed / 2, 1e-9, "energy of the ram");
            Near.Relative(4 * snap.Energy, snap.At(2 * F).Energy, 1e-9, "twice the force");
            Near.Relative(SnapThrough.Of(2 * F, frame, oil, mass).FreeTravel, snap.At(2 * F).FreeTravel, 1e-9, "twice the force");
        });

    [Fact]
    public void WorkingFollowsFromItsText()
    {
        var w = new Working();
        SnapThrough.Of(200e3, 4e-9, 3e-8, 20, w);
        WorkingCheck.Holds(w);
        Assert.Throws<ArgumentOutOfRangeException>(() => SnapThrough.Of(double.NaN, 4e-9, 3e-8, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => SnapThrough.Of(1, 0, 3e-8, 20));
    }
}
