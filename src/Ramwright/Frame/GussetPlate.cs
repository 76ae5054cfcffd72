using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>One triangular plate in the inner corner of a joint: a piece as long as the plate is thick, its section the triangle.</summary>
public sealed record GussetPlate : Piece
{
    private GussetPlate(string name, RigMember member, RigGusset gusset, Vector from, Vector to, Vector up)
        : base(name, member, member.Shape, from, to, up, false) => Gusset = gusset;

    /// <summary>Its legs and thickness.</summary>
    public RigGusset Gusset { get; }

    /// <summary>The part that its leg along lies on: a beam or an arm.</summary>
    public required string Beam { get; init; }

    /// <summary>The part that its leg up lies on: an upright or the column.</summary>
    public required string Upright { get; init; }

    /// <summary>Mass, kg: half of leg times leg, times thickness.</summary>
    public override double Mass => Gusset.LegAlong * Gusset.LegUp / 2 * Length * Steel.Density;

    /// <summary>The triangle about its centroid, its right angle to the lower left.</summary>
    public override Outline Outline
    {
        get
        {
            double a = Gusset.LegAlong / 3, b = Gusset.LegUp / 3;
            return new Outline([[new Corner(-a, -b), new Corner(2 * a, -b), new Corner(-a, 2 * b)]]);
        }
    }

    /// <summary>The plates of one corner, side by side as their welds are taken to stand.</summary>
    /// <param name="joint">The joint; no plates where it has no gusset.</param>
    /// <param name="beam">The beam or arm.</param>
    /// <param name="upright">The upright or column.</param>
    /// <param name="root">The inner corner, in the frame's middle plane, m.</param>
    /// <param name="along">From there along the beam, one long.</param>
    /// <param name="up">From there along the upright, one long.</param>
    /// <param name="where">Which side of the press it stands on, for its name.</param>
    internal static IEnumerable<Piece> Of(RigJoint joint, RigMember beam, RigMember upright, Vector root, Vector along, Vector up, string where = "")
    {
        if (joint.Gusset is not { } gusset)
            yield break;
        string part = $"gusset of the {beam.Part} joint";
        var member = new RigMember(part, new Flat(gusset.LegUp, gusset.Thickness) { Name = part, Source = SectionText.AsGiven }, null, gusset.Steel);
        Vector through = along.Cross(up), centroid = root + gusset.LegAlong / 3 * along + gusset.LegUp / 3 * up;
        foreach (double aside in Corners.Abreast(gusset, beam, upright))
        {
            Vector middle = centroid + aside * through, half = gusset.Thickness / 2 * through;
            yield return new GussetPlate(part + where, member, gusset, middle - half, middle + half, up) { Beam = beam.Part, Upright = upright.Part };
        }
    }
}
