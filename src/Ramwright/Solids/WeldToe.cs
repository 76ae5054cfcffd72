namespace Ramwright.Solids;

/// <summary>The toe of a weld on the face of a wall: stress at the toe itself grows without end as cells shrink, so that it is carried on from two places before it.</summary>
/// <param name="Part">Number of the part.</param>
/// <param name="Name">Which joint and face, for the reader.</param>
/// <param name="Along">Axis along the member.</param>
/// <param name="At">Where the toe is along it, m.</param>
/// <param name="Away">1 or −1: from the joint into the member.</param>
/// <param name="Thickness">Of the wall that the toe stands on, m.</param>
/// <param name="Across">Axis square to the face.</param>
/// <param name="Face">Where the face is along it, m.</param>
/// <param name="Outward">1 or −1: out of the steel.</param>
/// <param name="Wall">The wall.</param>
public sealed record WeldToe(int Part, string Name, int Along, double At, int Away, double Thickness, int Across, double Face, int Outward, Cuboid Wall)
{
    /// <summary>How far from the toe stress is read, in thicknesses.</summary>
    public const double Near = 0.4, Far = 1.0;

    /// <summary>Whether the weld goes through the whole wall; else it is a fillet.</summary>
    public bool IsButt { get; init; }

    /// <summary>How far the weld runs along its toe, m: from here.</summary>
    public double From { get; init; } = double.NegativeInfinity;

    /// <summary>To here, m.</summary>
    public double To { get; init; } = double.PositiveInfinity;

    /// <summary>Where that is along the member, m.</summary>
    public double Place(double share) => At + Away * share * Thickness;

    /// <summary>Planes along the member that the grid should have for it, m: two cells at least up to each place, so that the one at the toe itself, whose stress means nothing, is not read.</summary>
    internal IEnumerable<double> Planes => ((double[])[0, Near / 2, Near, (Near + Far) / 2, Far]).Select(Place);

    internal static IEnumerable<WeldToe> Of(int part, string name, IReadOnlyList<(Cuboid Box, bool IsWeb)> boxes, int along, double at, int away, double leg)
    {
        // the outermost faces up and down, or across, whichever way the member bends: square to it and not to its thickness from front to back
        int across = along == 2 ? 0 : 2;
        double low = boxes.Min(b => b.Box.From(across)), high = boxes.Max(b => b.Box.To(across));
        foreach ((double face, int outward) in ((double, int)[])[(low, -1), (high, 1)])
        {
            (Cuboid box, bool web) = boxes.First(b => Math.Abs((outward < 0 ? b.Box.From(across) : b.Box.To(across)) - face) < GridPlanes.Same);
            double thick = web ? box.Along(3 - along - across) : box.Along(across);
            if (box.Along(along) < 4 * thick + leg)
                continue;
            yield return new WeldToe(part, $"{name}, {(across == 0 ? outward < 0 ? "left face" : "right face" : outward < 0 ? "lower face" : "upper face")}", along, at + away * leg, away, thick, across, face, outward, box) { IsButt = leg == 0 };
        }
    }

    /// <summary>On the face of the member that runs on, beside what is welded to it.</summary>
    /// <param name="part">Number of the part.</param>
    /// <param name="name">Which joint and side, for the reader.</param>
    /// <param name="boxes">Boxes of the part.</param>
    /// <param name="along">Axis along the member.</param>
    /// <param name="at">Where the other's edge is along it, m.</param>
    /// <param name="away">1 or −1: away from the other.</param>
    /// <param name="leg">Of the weld, m.</param>
    /// <param name="across">Axis square to the face.</param>
    /// <param name="face">Where the face is along it, m.</param>
    /// <param name="outward">1 or −1: out of the steel, towards the other.</param>
    /// <param name="other">The part that is welded to it.</param>
    /// <returns>The toe; null where the member ends too near, or has no wall there.</returns>
    internal static WeldToe? Beside(
        int part, string name, IReadOnlyList<(Cuboid Box, bool IsWeb)> boxes, int along, double at, int away, double leg, int across, double face, int outward, SolidPart other)
    {
        int third = 3 - along - across;
        double from = other.Blocks.Min(b => b.From(third)), to = other.Blocks.Max(b => b.To(third));
        // where a web ends in the face the flange beside it is the wall, and where there is only a web, that is
        foreach ((Cuboid box, bool web) in boxes.OrderBy(b => b.IsWeb))
        {
            double thick = web ? box.Along(third) : box.Along(across);
            if (Math.Abs((outward < 0 ? box.From(across) : box.To(across)) - face) > GridPlanes.Same || box.To(third) <= from || box.From(third) >= to
                || (away > 0 ? box.To(along) - at : at - box.From(along)) < 2 * thick + leg)
                continue;
            return new WeldToe(part, name, along, at + away * leg, away, thick, across, face, outward, box) { From = from, To = to, IsButt = leg == 0 };
        }

        return null;
    }
}
