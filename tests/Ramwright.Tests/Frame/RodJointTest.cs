using Ramwright.Frame;
using Ramwright.Workings;

namespace Ramwright.Tests.Frame;

/// <summary>Stiffness of rods and of what they clamp, against worked problems.</summary>
public class RodJointTest
{
    private static Reference Worked(string id, string problem) =>
        new(id, $"Shigley's Mechanical Engineering Design, 9th ed., solutions to chapter 8, {problem}", Trust.FoundAndRecomputed);

    [Fact]
    public void ARodWithAPlainPart()
    {
        var w = new Working();
        double k = RodJoint.Rod(84.3e-6, 113e-6, 15e-3, 30e-3, 207e9, w);

        Worked("V-01", "problem 8-22").Near("k_b of M12, 15 mm thread and 30 mm shank, MN/m", 466.8, k / 1e6, 1e-3);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void FrustaOfClampedPlates()
    {
        Worked("V-02", "problem 8-22").Near("frustum t 20, d 12, D 18, MN/m", 4470, RodJoint.Frustum(12e-3, 18e-3, 20e-3, 207e9) / 1e6, 1e-3);
        Worked("V-02", "problem 8-22").Near("frustum of cast iron t 22.5, d 12, D 18, MN/m", 2074, RodJoint.Frustum(12e-3, 18e-3, 22.5e-3, 100e9) / 1e6, 1e-3);
        Worked("V-03", "problem 8-25 and after").Near("frustum t 20, d 10, D 15, MN/m", 3503, RodJoint.Frustum(10e-3, 15e-3, 20e-3, 207e9) / 1e6, 1e-3);
    }

    [Fact]
    public void TheRodsShare()
    {
        Worked("V-04", "problem 8-22").Near("C", 0.253, RodJoint.Share(466.8e6, 1379e6), 2e-3);
        Worked("V-05", "problem 8-24").Near("C", 0.267, RodJoint.Share(3.94, 10.79), 3e-3);
    }

    [Theory]
    [InlineData(10e-3, 30e-3)]
    [InlineData(36e-3, 65e-3)]
    [InlineData(20e-3, 200e-3)]
    public void APlateIsTwoFrustaBackToBack(double d, double l) =>
        new Reference("V-06", "Shigley eq. 8-20 against 8-22", Trust.Recomputed)
            .Near($"d {d * 1e3:0} l {l * 1e3:0}, N/m", RodJoint.Frustum(d, 1.5 * d, l / 2) / 2, RodJoint.Plate(d, l), 1e-3);

    [Fact]
    public void ASleeveIsABar()
    {
        var w = new Working();
        double k = RodJoint.Sleeve(70e-3, 40e-3, 0.7, w: w);

        new Reference("V-07", "E A/L", Trust.Recomputed).Near("sleeve 70/40, 700 long, MN/m", 777.54, k / 1e6, 1e-4);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void WhatCannotBeIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RodJoint.Rod(1e-4, 1e-4, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RodJoint.Sleeve(0.04, 0.04, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RodJoint.Frustum(0.02, 0.02, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RodJoint.Share(double.NaN, 1));
    }
}
