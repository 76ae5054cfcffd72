using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>What stands on a tie rod: nuts, washers, sleeve.</summary>
/// <param name="Rod">The rod.</param>
/// <param name="X">Where across, m.</param>
/// <param name="Y">Where deep, m.</param>
internal readonly record struct RodEnds(RigTieRod Rod, double X, double Y)
{
    /// <summary>Half the side of a square as large as a round, over its diameter.</summary>
    public static readonly double Square = Math.Sqrt(Math.PI) / 4;

    /// <summary>Half the side of the hole.</summary>
    public double Hole => ScrewThread.UsualHole(Rod.Thread.D) * Square;

    /// <summary>Thickness of the washer under an outer nut, m; 0 where there is none.</summary>
    public double Washer => Rod.Washer?.Thickness ?? 0;

    private double Nut => RodJoint.WasherFace * Rod.Thread.D * Square;

    /// <summary>A square block about the rod.</summary>
    public Cuboid Block(double half, double from, double to) => new(X - half, X + half, Y - half, Y + half, from, to);

    /// <summary>The rod itself: four-sided, with the round's area and, across the press, its second moment.</summary>
    public Cuboid Bar(double d, double from, double to)
    {
        (double across, double deep) = (d * Math.Sqrt(3) / 4, Math.PI * d / (4 * Math.Sqrt(3)));
        return new Cuboid(X - across, X + across, Y - deep, Y + deep, from, to);
    }

    /// <summary>A nut that stands on a face, outward from it.</summary>
    /// <param name="face">Where, m.</param>
    /// <param name="outward">1 up, −1 down.</param>
    public Cuboid NutOn(double face, int outward) => Block(Nut, Math.Min(face, face + outward * Rod.NutHeight), Math.Max(face, face + outward * Rod.NutHeight));

    /// <summary>A washer on a face; a square as large as a round one.</summary>
    public Cuboid WasherOn(double face, int outward) => Block(Rod.Washer!.Outside * Square, Math.Min(face, face + outward * Washer), Math.Max(face, face + outward * Washer));

    /// <summary>The sleeve: a square tube with the round one's area and stiffness in bending.</summary>
    public Cuboid[] Sleeve(Shape shape, double from, double to)
    {
        (double x, double y) = (X, Y);
        return [.. Wall.Of(shape).Select(w => new Cuboid(x + w.Y0, x + w.Y1, y + w.Z0, y + w.Z1, from, to))];
    }
}
