using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>A level face that preload holds shut, and that is therefore drawn as one with what it stands on: true as long as it is pressed all over.</summary>
/// <param name="Part">Number of the part whose end it is.</param>
/// <param name="At">Its height, m.</param>
/// <param name="Pressure">What the preload presses it with, Pa.</param>
public sealed record ShutFace(int Part, double At, double Pressure)
{
    /// <summary>Less of a face than this is pulled in its sharp corners always, and not worth a word.</summary>
    private const double Little = 0.05;

    /// <summary>Share of its area that the load pulls apart.</summary>
    /// <param name="solution">How the solid moves under one newton at the ram.</param>
    /// <param name="force">Ram force, N.</param>
    public double Parted(SolidSolution solution, double force)
    {
        ArgumentNullException.ThrowIfNull(solution);
        SolidMesh mesh = solution.Mesh;
        (double all, double parted) = (0, 0);
        for (int c = 0; c < mesh.CellCount; c++)
        {
            if (mesh.PartOf(c) != Part)
                continue;
            Cuboid box = mesh.CellBox(c);
            bool low = Math.Abs(box.Z0 - At) < GridPlanes.Same;
            if (!low && Math.Abs(box.Z1 - At) >= GridPlanes.Same)
                continue;
            double area = box.Along(0) * box.Along(1);
            all += area;
            parted += solution.Stress(c, 0, 0, low ? -1 : 1).ZZ * force > Pressure ? area : 0;
        }

        return all > 0 ? parted / all : 0;
    }

    /// <summary>What to say of the faces that part.</summary>
    internal static IEnumerable<Remark> Notes(PressSolid solid, SolidSolution solution, double force)
    {
        (double most, int part) = solid.Shut.Select(s => (s.Parted(solution, force), s.Part)).OrderByDescending(s => s.Item1).FirstOrDefault();
        if (most > Little)
            yield return new Remark($"At the wanted force the end of the {solid.Parts[part].Name} is pulled apart over {{0}} of its face: the frame opens further than is shown here. "
                + "More preload, or the beams' figures.", Remark.Of(most, Dimension.Ratio));
    }
}
