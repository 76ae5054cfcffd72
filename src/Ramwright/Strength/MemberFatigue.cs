using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Nominal stresses of a member, as a crack feels them.</summary>
/// <remarks>The worst of the four corners of the box around the section, and the mean shear taken to act there too: see <see cref="MemberSection.Yield"/>.</remarks>
public static class MemberFatigue
{
    /// <summary>Direct stress at the worst edge and mean shear stress, per newton at the ram, Pa.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="s">The section.</param>
    /// <param name="w">Where to write it down.</param>
    public static (double Sigma, double Tau) Edge(Actions a, SectionProperties s, Working? w = null)
    {
        (double sigma, double tau) = (Direct(a, s, w), MemberSection.MeanShear(a, s));
        if (w is not null)
            MemberSection.ShearStep(a, s, tau, w, "Δτ_1");
        return (sigma, tau);
    }

    /// <summary>Direct stress at the worst edge of what is left beside holes and slots, per newton at the ram, Pa.</summary>
    /// <param name="a">Actions per newton at the ram, about the gross centroid.</param>
    /// <param name="gross">The whole section.</param>
    /// <param name="net">What is left of it.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Net(Actions a, SectionProperties gross, SectionProperties net, Working? w = null) =>
        Direct(NetSection.AboutNet(a, gross, net, w), net, w);

    /// <summary>Direct stress at the worst edge, per newton at the ram, Pa.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="s">The section.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Direct(Actions a, SectionProperties s, Working? w = null)
    {
        (double sigma, double y, double z) = MemberSection.WorstEdge(Acting.Finite(a), s);
        if (w is not null)
            MemberSection.EdgeStep(a, s, sigma, y, z, w, "Δσ_1");
        return sigma;
    }
}
