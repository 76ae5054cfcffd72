using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>
/// Pins through what clasps and what is clasped: each a bar of four sides that fills its holes, with the round's area and, up and down, its second moment. Load holds it on one side
/// of each hole only, and there it is joined, along a strip so narrow that beam and upright turn nearly freely on it.
/// </summary>
internal static class SolidPins
{
    /// <summary>Width of the strip that bears, of the pin's diameter.</summary>
    private const double Bearing = 0.25;

    /// <summary>How far about a hole stress means nothing, of the diameter.</summary>
    private const double Beside = 0.5;

    /// <summary>How far a pin stands out on either side, of its diameter.</summary>
    private const double Out = 0.25;

    /// <summary>Sides of the four-sided bar for a diameter, across and in depth: π d/(2√3) and (√3/2) d have the area of the round and its second moment for bending in the depth.</summary>
    public static (double Across, double Deep) Sides(double d) => (Math.PI * d / (2 * Math.Sqrt(3)), d * Math.Sqrt(3) / 2);

    /// <summary>Puts the pin of one corner in.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="name">What the pin is called.</param>
    /// <param name="pin">Its joint.</param>
    /// <param name="beams">Halves that clasp.</param>
    /// <param name="uprights">What is clasped.</param>
    /// <param name="x">Where across, m.</param>
    /// <param name="z">Where up, m.</param>
    /// <param name="beamPushes">1 where load pushes the beam up, −1 where it pushes it down.</param>
    public static void Add(SolidDrawing drawing, string name, RigPinnedJoint pin, IReadOnlyList<int> beams, IReadOnlyList<int> uprights, double x, double z, int beamPushes)
    {
        Cuboid hole = Hole(pin.Diameter, x, z);
        Cuboid[] Met(IReadOnlyList<int> parts) => [.. parts.SelectMany(p => drawing.Parts[p].Blocks).Where(b => b.And(hole).IsSolid)];
        (Cuboid[] beam, Cuboid[] upright) = (Met(beams), Met(uprights));
        if (beam.Length == 0 || upright.Length == 0)
            throw new SolidFaultException($"the {name} passes {(beam.Length == 0 ? drawing.Parts[beams[0]].Name : drawing.Parts[uprights[0]].Name)} by without meeting steel: it cannot be drawn");
        foreach (int part in beams.Concat(uprights))
            if (drawing.Parts[part].Blocks.Any(b => b.And(hole).IsSolid))
                drawing.Cut(part, [hole]);
        Walls(drawing, name, pin, beam, upright);

        double from = beam.Concat(upright).Min(b => b.Y0) - Out * pin.Diameter, to = beam.Concat(upright).Max(b => b.Y1) + Out * pin.Diameter;
        int bar = drawing.Add(name, pin.Steel.Fy(pin.Diameter), [hole with { Y0 = from, Y1 = to }]);
        double half = Bearing * pin.Diameter / 2;
        Cuboid strip = Cuboid.Everywhere with { X0 = x - half, X1 = x + half };
        foreach ((IReadOnlyList<int> parts, int side) in ((IReadOnlyList<int>, int)[])[(beams, -beamPushes), (uprights, beamPushes)])
        {
            double face = side > 0 ? hole.Z1 : hole.Z0;
            int[] bearing = [.. parts.Where(p => drawing.Parts[p].Blocks.Any(b => b.And(hole).IsSolid && (side > 0 ? b.Z1 > face + GridPlanes.Same : b.Z0 < face - GridPlanes.Same)))];
            if (bearing.Length == 0)
                throw new SolidFaultException($"the {name} breaks out of {drawing.Parts[parts[0]].Name}: no steel is left on the side that it bears on");
            foreach (int part in bearing)
                drawing.JoinIn(bar, part, strip with { Z0 = face, Z1 = face });
        }

        drawing.Blind.Add(hole with { X0 = hole.X0 - Beside * pin.Diameter, X1 = hole.X1 + Beside * pin.Diameter, Z0 = hole.Z0 - Beside * pin.Diameter, Z1 = hole.Z1 + Beside * pin.Diameter });
        drawing.Note("Pins are drawn four-sided, with the round's area and stiffness in bending, without play; they bear on the side that load presses on, along a strip a quarter of "
            + "their diameter wide, and stand free elsewhere, so that corners turn on them nearly freely. Friction would make the frame stiffer. Stress in the pins and within half a diameter of their holes means nothing here: the ladder has their bearing, shear and bending.");
    }

    /// <summary>A hole of the usual kind with nothing in it.</summary>
    public static void Empty(SolidDrawing drawing, IReadOnlyList<int> parts, double d, double x, double z)
    {
        foreach (int part in parts)
            drawing.Cut(part, [Hole(d, x, z)]);
    }

    private static Cuboid Hole(double d, double x, double z)
    {
        (double across, double deep) = Sides(d);
        return Cuboid.Everywhere with { X0 = x - across / 2, X1 = x + across / 2, Z0 = z - deep / 2, Z1 = z + deep / 2 };
    }

    // plates that make a wall thicker round the hole are not among the pieces
    private static void Walls(SolidDrawing drawing, string name, RigPinnedJoint pin, Cuboid[] beam, Cuboid[] upright)
    {
        (double outer, double middle) = (beam.Sum(b => b.Along(1)) / 2, upright.Sum(b => b.Along(1)));
        if (outer < 0.9 * pin.Outer || middle < 0.9 * pin.Middle)
            drawing.Note($"The {name.Replace("left ", "", StringComparison.Ordinal).Replace("right ", "", StringComparison.Ordinal)} bears on more steel by the file than the sections have: plates that make the walls thicker are not drawn.");
    }
}
