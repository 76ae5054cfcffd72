using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>One straight length of one section where it stands in the press: what is sawn, drawn, weighed and meshed.</summary>
/// <param name="Name">What it is called: <c>crown</c>, <c>left upright</c>.</param>
/// <param name="Member">The member it is, or half is.</param>
/// <param name="Shape">Its section; one half of a pair.</param>
/// <param name="From">Centroid at its first end, m.</param>
/// <param name="To">Centroid at its second end, m.</param>
/// <param name="Up">Where its section's z points.</param>
/// <param name="Mirrored">Whether the section stands left for right.</param>
public record Piece(string Name, RigMember Member, Shape Shape, Vector From, Vector To, Vector Up, bool Mirrored)
{
    /// <summary>Along it, from its first end.</summary>
    public Vector Along => (To - From).Unit;

    /// <summary>Where its section's y points.</summary>
    public Vector Side => Up.Cross(Along);

    /// <summary>Length, m.</summary>
    public double Length => (To - From).Length;

    /// <summary>Mass, kg.</summary>
    public virtual double Mass => Shape.Properties.A * Length * Steel.Density;

    /// <summary>Its section about its centroid, y along <see cref="Side"/> and z along <see cref="Up"/>.</summary>
    public virtual Outline Outline => Mirrored ? Shape.CentredOutline.Mirrored() : Shape.CentredOutline;

    /// <summary>A point of its section, global, m.</summary>
    /// <param name="x">Along it from its first end, m.</param>
    /// <param name="y">Across, m.</param>
    /// <param name="z">Up, m.</param>
    public Vector At(double x, double y, double z) => From + x * Along + y * Side + z * Up;

    /// <summary>The pieces of a member: one a strand.</summary>
    internal static IEnumerable<Piece> Of(string name, RigMember member, Vector from, Vector to, Vector up)
    {
        Vector y = up.Cross((to - from).Unit);
        foreach (Strand strand in member.Shape.Strands)
        {
            Vector aside = strand.Y * y + strand.Z * up;
            yield return new Piece(name, member, strand.Shape, from + aside, to + aside, up, strand.Mirrored);
        }
    }
}
