namespace Ramwright.Solids;

/// <summary>Planes of the grid for reading stress before the toes of welds; one that would leave a sliver beside a face goes, and stress is taken from that face and the plane beside it.</summary>
internal static class ToeLines
{
    /// <summary>Those that leave no sliver.</summary>
    /// <param name="toes">The toes.</param>
    /// <param name="parts">Whose faces are planes already.</param>
    /// <param name="bonds">Whose edges are planes already.</param>
    /// <param name="others">Planes that must be.</param>
    public static IEnumerable<Cuboid> Of(IReadOnlyList<WeldToe> toes, IReadOnlyList<SolidPart> parts, IReadOnlyList<Bond> bonds, IEnumerable<Cuboid> others)
    {
        if (toes.Count == 0)
            return [];
        Cuboid[] boxes = [.. parts.SelectMany(p => p.Blocks.Concat(p.Cuts)), .. bonds.Select(b => b.Where), .. others];
        var lines = new List<Cuboid>();
        for (int axis = 0; axis < 3; axis++)
        {
            List<double> known = [.. boxes.SelectMany(b => new[] { b.From(axis), b.To(axis) }).Where(double.IsFinite)];
            // a hair more than what is refused, so that rounding does not decide
            double least = 1.01 * (known.Max() - known.Min()) / GridPlanes.SliverShare;
            foreach (double at in toes.SelectMany(t => t.Along == axis ? t.Planes : t.Across == axis ? t.Depths : []).Order())
            {
                if (known.Any(k => Math.Abs(k - at) < least))
                    continue;
                known.Add(at);
                lines.Add(Cuboid.Everywhere.With(axis, at, at));
            }
        }

        return lines;
    }
}
