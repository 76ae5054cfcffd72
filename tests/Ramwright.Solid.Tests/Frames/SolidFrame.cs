using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Calculix;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>A frame drawn as bricks, one newton at the ram.</summary>
public sealed class SolidFrame
{
    /// <summary>The model.</summary>
    public required SolidModel Model { get; init; }
    /// <summary>Nodes under the ram on the part above, and their shares.</summary>
    public required Dictionary<int, double> Upper { get; init; }
    /// <summary>The same on the part below; null where the frame is the same above and below, and only the upper half is drawn.</summary>
    public Dictionary<int, double>? Lower { get; init; }
    /// <summary>The whole section of the upper part where the ram stands.</summary>
    public required Dictionary<int, double> UpperSection { get; init; }
    /// <summary>The same of the lower part.</summary>
    public Dictionary<int, double>? LowerSection { get; init; }
    /// <summary>Along which the dies turn out of parallel: 0 across, 1 from front to back.</summary>
    public required int Turning { get; init; }
    /// <summary>Places where stresses are compared.</summary>
    public required IReadOnlyList<Place> Places { get; init; }

    /// <summary>Draws up a study.</summary>
    public static SolidFrame Of(Study study) => (study.Drawn ?? study.Frame) switch
    {
        RigClosedFrame closed => ClosedSolid.Of(study, closed),
        RigOpenFrontFrame open => OpenFrontSolid.Of(study, open),
        RigTieRodFrame rods => TieRodSolid.Of(study, rods),
        var other => throw new ArgumentException($"no bricks are drawn up yet for {other.GetType().Name}"),
    };
}

/// <summary>A place where solid and beam are compared.</summary>
/// <param name="Where">In words.</param>
/// <param name="Cut">The cut of the solid.</param>
/// <param name="Across">The axis along which the stress changes.</param>
/// <param name="Sign">1 if the section's z points along that axis, −1 if against it.</param>
/// <param name="Member">The part.</param>
/// <param name="Centroid">The centroid of its section, global, m; the coordinate along the cut's axis does not matter.</param>
public sealed record Place(string Where, Cut Cut, int Across, int Sign, RigMember Member, Vector Centroid)
{
    /// <summary>How many times the force and moment through the cut the part carries: a plane of symmetry runs through most.</summary>
    public double Whole { get; init; } = 2;
}
