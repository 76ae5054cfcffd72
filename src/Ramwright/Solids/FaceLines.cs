namespace Ramwright.Solids;

/// <summary>
/// Faces of parts stay where they are; those of rounded roots and of what was not described, edges of welds, of washers and of dies that all but coincide with one are laid on it, so that no slivers are left between what nobody measures
/// that closely.
/// </summary>
internal sealed class FaceLines
{
    /// <summary>An edge nearer to a face than the frame's extent over this is laid on it: a millimetre in three metres.</summary>
    private const double Share = 3000;

    private readonly List<double>[] _kept;
    private readonly double[] _near;

    public FaceLines(IReadOnlyList<SolidPart> parts, IEnumerable<Cuboid> exact)
    {
        Cuboid[] own = [.. parts.SelectMany(p => p.Blocks.Except(p.Loose))], fixedTo = [.. own, .. parts.SelectMany(p => p.Cuts), .. exact];
        _kept = [.. Enumerable.Range(0, 3).Select(axis => fixedTo.SelectMany(b => (double[])[b.From(axis), b.To(axis)]).Where(double.IsFinite).ToList())];
        _near = [.. Enumerable.Range(0, 3).Select(axis => own.Length == 0 ? 0 : (own.Max(b => b.To(axis)) - own.Min(b => b.From(axis))) / Share)];
    }

    /// <summary>A box with its edges laid on faces that are near; along an axis where nothing would be left of it, it stays as it is.</summary>
    public Cuboid Laid(Cuboid box)
    {
        for (int axis = 0; axis < 3; axis++)
        {
            double from = Near(axis, box.From(axis)), to = Near(axis, box.To(axis));
            if (to > from || box.From(axis) == box.To(axis))
                box = box.With(axis, from, to);
            _kept[axis].AddRange(((double[])[box.From(axis), box.To(axis)]).Where(double.IsFinite));
        }

        return box;
    }

    /// <summary>A part with its loose boxes laid.</summary>
    public SolidPart Laid(SolidPart part) => part.Loose.Count == 0 ? part : part with { Blocks = [.. part.Blocks.Select(b => part.Loose.Contains(b) ? Laid(b) : b)] };

    private double Near(int axis, double at)
    {
        double best = at, least = _near[axis];
        foreach (double kept in _kept[axis])
            if (Math.Abs(kept - at) < least)
                (best, least) = (kept, Math.Abs(kept - at));
        return best;
    }
}
