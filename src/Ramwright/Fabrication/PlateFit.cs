using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>Whether the holes of a plate lie within it and apart from each other.</summary>
public static class PlateFit
{
    private const double Fine = 1e-5;

    /// <summary>What does not fit, in words; null where all holes lie within the edge with steel between them.</summary>
    /// <param name="plate">The plate; its first loop is its edge.</param>
    /// <param name="units">Units it is said in.</param>
    public static string? Misfit(PlatePart plate, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(plate);
        (double Y, double Z)[] edge = new Outline([plate.Outline.Loops[0]]).Polygons(Fine)[0];
        for (int i = 0; i < plate.Holes.Count; i++)
        {
            PlateHole hole = plate.Holes[i];
            if (!Encloses(edge, hole.Y, hole.Z) || Nearest(edge, hole.Y, hole.Z) <= hole.Diameter / 2)
                return $"A hole of {Readout.Text(hole.Diameter, Dimension.Length, units)} for {hole.For} does not fit on the {plate.Name}: it runs out of the plate.";
            for (int j = 0; j < i; j++)
            {
                PlateHole other = plate.Holes[j];
                if (Math.Sqrt((hole.Y - other.Y) * (hole.Y - other.Y) + (hole.Z - other.Z) * (hole.Z - other.Z)) <= (hole.Diameter + other.Diameter) / 2)
                    return $"Holes for {other.For} and {hole.For} run into each other on the {plate.Name}.";
            }
        }

        return null;
    }

    /// <summary>Distance of a point from an edge, m.</summary>
    internal static double Nearest((double Y, double Z)[] edge, double y, double z)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < edge.Length; i++)
        {
            (double Y, double Z) a = edge[i], b = edge[(i + 1) % edge.Length];
            double dy = b.Y - a.Y, dz = b.Z - a.Z, l2 = dy * dy + dz * dz;
            double t = l2 > 0 ? Math.Clamp(((y - a.Y) * dy + (z - a.Z) * dz) / l2, 0, 1) : 0;
            double py = a.Y + t * dy - y, pz = a.Z + t * dz - z;
            least = Math.Min(least, py * py + pz * pz);
        }

        return Math.Sqrt(least);
    }

    /// <summary>Whether a point lies within a closed line.</summary>
    internal static bool Encloses((double Y, double Z)[] edge, double y, double z)
    {
        bool inside = false;
        for (int i = 0, j = edge.Length - 1; i < edge.Length; j = i++)
        {
            if ((edge[i].Z > z) != (edge[j].Z > z)
                && y < (edge[j].Y - edge[i].Y) * (z - edge[i].Z) / (edge[j].Z - edge[i].Z) + edge[i].Y)
                inside = !inside;
        }

        return inside;
    }
}
