using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Frame;

/// <summary>Sideways moment of the flanges of an open section under torque, ends held against warping.</summary>
public class HeldWarpingTest
{
    private static readonly Citation MadeUp = Citation.Practice("made up");
    private static readonly SectionProperties I = new ISection(0.2, 0.2, 0.009, 0.015, 0) { Name = "I", Source = MadeUp }.Properties;

    /// <summary>A short beam twists by its flanges alone: each is a beam built in at its end and led straight at mid-length, under T/h_s, whose end moment is T/h_s · L/4.</summary>
    [Fact]
    public void AShortBeamsFlangesBendAsBuiltInBeams()
    {
        const double L = 0.1;
        double apart = 2 * Math.Sqrt(I.Iw / I.Iz);

        new Reference("FW-held", "built-in beam, end moment F L/8 under a force F = 2 T/h_s at mid-length, both flanges together", Trust.Recomputed)
            .Near("sideways moment for one of torque", 2 * (2 / apart * L / 8), WarpingTorsion.MomentHeld(I, L), 0.01);
    }

    [Fact]
    public void ALongBeamTwistsBySaintVenant()
    {
        // far from the end the torque is Saint-Venant's, and what warping holds fades over 1/k: 2/(k h_s)
        double k = Math.Sqrt(I.It / (2.6 * I.Iw)), apart = 2 * Math.Sqrt(I.Iw / I.Iz);

        Near.Relative(2 / (k * apart), WarpingTorsion.MomentHeld(I, 50), 1e-6, "end of a long beam");
        Assert.Equal(0, WarpingTorsion.MomentHeld(new Flat(0.2, 0.03) { Name = "flat", Source = MadeUp }.Properties, 1));
    }
}
