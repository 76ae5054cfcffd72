using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>
/// How the steel of a frame moves under one newton at the ram: every piece goes with the beam that stands for it, its sections staying
/// flat and square to it; a gusset goes with the two members of its corner. Nothing is added to what the solver found.
/// </summary>
public sealed class BodyMovement
{
    private readonly FrameSolution _solution;
    private readonly FrameModel _model;
    private readonly Dictionary<string, (int Beam, MemberAxes Axes)[]> _beams = new(StringComparer.Ordinal);

    /// <summary>Takes a load case of a solved frame.</summary>
    /// <param name="response">The frame.</param>
    /// <param name="solution">Number of the case.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such case.</exception>
    public BodyMovement(FrameResponse response, int solution)
    {
        ArgumentNullException.ThrowIfNull(response);
        if ((uint)solution >= (uint)response.Solutions.Count)
            throw new ArgumentOutOfRangeException(nameof(solution), solution, $"There are {response.Solutions.Count} cases.");
        _solution = response.Solutions[solution];
        _model = response.Plan.Model;
        foreach (IGrouping<string, int> part in Enumerable.Range(0, _model.Members.Count).GroupBy(i => _model.Members[i].Part))
            _beams[part.Key] = [.. part.Select(i => (i, MemberAxes.Of(_model, i)))];
    }

    /// <summary>Whether beams stand for a piece; a sleeve or a plate may have none.</summary>
    public bool Moves(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return piece is GussetPlate plate ? _beams.ContainsKey(plate.Beam) && _beams.ContainsKey(plate.Upright) : _beams.ContainsKey(piece.Member.Part);
    }

    /// <summary>Where a point of a piece goes for one newton, m/N.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="x">Along it from its first end, m.</param>
    /// <param name="y">Across, m, from its centroid.</param>
    /// <param name="z">Up, m, from its centroid.</param>
    /// <exception cref="ArgumentException">No beams stand for it: see <see cref="Moves"/>.</exception>
    public Vector Of(Piece piece, double x, double y = 0, double z = 0)
    {
        ArgumentNullException.ThrowIfNull(piece);
        if (!Moves(piece))
            throw new ArgumentException($"no beams stand for the {piece.Name}", nameof(piece));
        return piece is GussetPlate plate ? InCorner(plate, x, y, z) : With(piece.Member.Part, piece.At(x, 0, 0), piece.At(x, y, z));
    }

    // a plate is welded to both members: one tip goes with the beam, the other with the upright, the rest evenly in between
    private Vector InCorner(GussetPlate plate, double x, double y, double z)
    {
        double a = plate.Gusset.LegAlong, b = plate.Gusset.LegUp, along = y / a + 1.0 / 3, up = z / b + 1.0 / 3;
        Vector root = plate.At(x, -a / 3, -b / 3), beamTip = root + a * plate.Side, uprightTip = root + b * plate.Up;
        Vector corner = 0.5 * (With(plate.Beam, root, root) + With(plate.Upright, root, root));
        return (1 - along - up) * corner + along * With(plate.Beam, beamTip, beamTip) + up * With(plate.Upright, uprightTip, uprightTip);
    }

    // a point goes with that beam of its part which is nearest to the middle of its piece there
    private Vector With(string part, Vector middle, Vector point)
    {
        (int Beam, MemberAxes Axes)[] beams = _beams[part];
        (int beam, double along, double nearest) = (-1, 0, double.MaxValue);
        foreach ((int i, MemberAxes axes) in beams)
        {
            double at = Math.Clamp((middle - axes.Start).Dot(axes.X), 0, axes.Length);
            double off = (middle - axes.At(at)).Length;
            if (off < nearest)
                (beam, along, nearest) = (i, at, off);
        }

        MemberAxes found = beams.First(b => b.Beam == beam).Axes;
        Vector arm = point - found.At(along);
        return _solution.DisplacementAlong(beam, along) + _solution.RotationAlong(beam, along).Cross(arm);
    }
}
