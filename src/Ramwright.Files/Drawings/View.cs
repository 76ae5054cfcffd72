using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>A straight look at the press, laid on paper at a scale.</summary>
/// <param name="Name">What it is called under the drawing.</param>
/// <param name="Right">What points right on paper.</param>
/// <param name="Toward">What points at the eye.</param>
/// <param name="Scale">Millimetres of paper for a metre of press.</param>
/// <param name="X">Where the press's origin lies on paper, mm.</param>
/// <param name="Y">Where the press's origin lies on paper, mm.</param>
internal sealed record View(string Name, Vector Right, Vector Toward, double Scale, double X = 0, double Y = 0)
{
    public static View Front(double scale) => new("front", Vector.Across, -Vector.Deep, scale);

    public static View Side(double scale) => new("side, from the right", Vector.Deep, Vector.Across, scale);

    /// <summary>Up on paper is up.</summary>
    public static Vector Upward => Vector.Up;

    public (double X, double Y) On(Vector v) => (X + Scale * v.Dot(Right), Y + Scale * v.Dot(Upward));

    /// <summary>How far toward the eye, m.</summary>
    public double Nearness(Vector v) => v.Dot(Toward);
}
