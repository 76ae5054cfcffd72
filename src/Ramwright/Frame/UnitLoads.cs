using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>
/// One newton at the ram, in every way the work may lie: upward on the part above the ram, downward on the part below,
/// and always in balance by itself.
/// </summary>
/// <param name="Upper">Where the cylinder pushes on the crown or upper arm: its node's place, m.</param>
/// <param name="Lower">Where the lower die stands: its node's place, m.</param>
/// <param name="Contact">Where ram and work meet, ram far out, m.</param>
internal sealed record UnitLoads(Vector Upper, Vector Lower, Vector Contact)
{
    /// <summary>The pairs of force and moment for each case: on the upper and on the lower node.</summary>
    public IReadOnlyList<Pair> Cases(RigLoading loading)
    {
        var all = new List<Pair> { At("centred", Vector.Zero, Vector.Zero) };
        if (loading.Across > 0)
            all.Add(At("off to one side", loading.Across * Vector.Across, Vector.Zero));
        if (loading.Deep > 0)
            all.Add(At("off to the front", -loading.Deep * Vector.Deep, Vector.Zero));
        if (loading.SideLoad > 0)
        {
            all.Add(At("side push", Vector.Zero, loading.SideLoad * Vector.Across));
            all.Add(At("side push to the front", Vector.Zero, -loading.SideLoad * Vector.Deep));
        }

        return all;
    }

    /// <summary>The cases in words, with their amounts.</summary>
    public static Remark InWords(RigLoading loading) => new(
        "Load cases: work centred; {0} off to one side; {1} off to the front; a side push of {2} of the ram force, across and to the front, at the ram's face.",
        Remark.Of(loading.Across, Dimension.Length), Remark.Of(loading.Deep, Dimension.Length), Remark.Of(loading.SideLoad, Dimension.Ratio));

    private Pair At(string name, Vector off, Vector sideways)
    {
        Vector at = Contact + off;
        Vector up = Vector.Up + sideways;
        return new Pair(name, off, up, (at - Upper).Cross(up), -up, (at - Lower).Cross(-up));
    }

    /// <summary>The two halves of a case.</summary>
    /// <param name="Name">In words.</param>
    /// <param name="Off">Off-centre shift, m.</param>
    /// <param name="UpperForce">On the upper node, N.</param>
    /// <param name="UpperMoment">On the upper node, N·m.</param>
    /// <param name="LowerForce">On the lower node, N.</param>
    /// <param name="LowerMoment">On the lower node, N·m.</param>
    internal sealed record Pair(
        string Name, Vector Off, Vector UpperForce, Vector UpperMoment, Vector LowerForce, Vector LowerMoment);
}
