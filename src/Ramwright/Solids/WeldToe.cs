namespace Ramwright.Solids;

/// <summary>The toe of a weld on the face of a wall: stress at the toe itself grows without end as cells shrink, so that it is carried on from places before it.</summary>
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
    /// <summary>How much wall there must be, in lengths to the farthest place that is read: beside the other, and from end to end of what is welded at both.</summary>
    private const double Free = 2, FreeFromEndToEnd = 4;

    /// <summary>
    /// Planes on an edge, in lengths to the nearest place: on all four sides of the corner in which the parts meet, and before the toe. Cells of a millimetre there come within 3 % of what ever finer
    /// ones would give, of two millimetres 12 % too high; one side left coarse costs as much again, for what the corner is missing is felt all round it.
    /// </summary>
    private static readonly double[] Round = [0.25, 0.5, 1, 2], Before = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3];

    /// <summary>Whether it runs across the thickness of a plate on its narrow edge; else it stands on a face. A square bar counts as an edge, which is read nearer to the toe.</summary>
    public bool OnEdge { get; init; }

    /// <summary>How stress before it is read.</summary>
    public ToeReading Reading => OnEdge ? ToeReading.Edge : ToeReading.Face;

    /// <summary>Of the weld, m: the parts themselves meet so far before the toe. None where the weld goes through the whole wall.</summary>
    public double Leg { get; init; }

    /// <summary>Whether the weld goes through the whole wall; else it is a fillet.</summary>
    public bool IsButt => Leg == 0;

    /// <summary>How far the weld runs along its toe, m: from here.</summary>
    public double From { get; init; } = double.NegativeInfinity;

    /// <summary>To here, m.</summary>
    public double To { get; init; } = double.PositiveInfinity;

    /// <summary>Where along the member a place is that is read, m.</summary>
    /// <param name="place">Its number from 0, the nearest first.</param>
    public double Place(int place) => At + Away * Reading.Before(place, Thickness);

    /// <summary>Planes along the member that the grid should have for it, m: two cells at least up to each place, so that the one at the toe itself, whose stress means nothing, is not read.</summary>
    internal IEnumerable<double> Planes
    {
        get
        {
            double near = Reading.Before(0, Thickness), far = Length;
            return OnEdge
                ? [.. Before.Select(b => At + Away * b * near), .. Round.SelectMany(r => new[] { At - Away * (Leg + r * near), At - Away * (Leg - r * near) })]
                : ((double[])[0, near / 2, near, (near + far) / 2, far]).Select(b => At + Away * b);
        }
    }

    /// <summary>Planes square to the face that the grid should have for it, m.</summary>
    internal IEnumerable<double> Depths => OnEdge ? Round.SelectMany(r => new[] { Face - r * Reading.Before(0, Thickness), Face + r * Reading.Before(0, Thickness) }) : [];

    internal static IEnumerable<WeldToe> Of(int part, string name, IReadOnlyList<Cuboid> boxes, int along, double at, int away, double leg)
    {
        // the outermost faces up and down, or across, whichever way the member bends: square to it and not to its thickness from front to back
        int across = along == 2 ? 0 : 2;
        double low = boxes.Min(b => b.From(across)), high = boxes.Max(b => b.To(across));
        foreach ((double face, int outward) in ((double, int)[])[(low, -1), (high, 1)])
        {
            Cuboid box = boxes.First(b => Math.Abs((outward < 0 ? b.From(across) : b.To(across)) - face) < GridPlanes.Same);
            WeldToe toe = On(box, part, $"{name}, {(across == 0 ? outward < 0 ? "left face" : "right face" : outward < 0 ? "lower face" : "upper face")}", along, at + away * leg, away, across, face, outward) with { Leg = leg };
            if (box.Along(along) >= FreeFromEndToEnd * toe.Length + leg)
                yield return toe;
        }
    }

    /// <summary>On the face of the member that runs on, beside what is welded to it.</summary>
    /// <param name="part">Number of the part.</param>
    /// <param name="name">Which joint and side, for the reader.</param>
    /// <param name="boxes">Boxes of the part, flanges before webs: where a web ends in the face the flange beside it is the wall, and where there is only a web, that is.</param>
    /// <param name="along">Axis along the member.</param>
    /// <param name="at">Where the other's edge is along it, m.</param>
    /// <param name="away">1 or −1: away from the other.</param>
    /// <param name="leg">Of the weld, m.</param>
    /// <param name="across">Axis square to the face.</param>
    /// <param name="face">Where the face is along it, m.</param>
    /// <param name="outward">1 or −1: out of the steel, towards the other.</param>
    /// <param name="other">The part that is welded to it.</param>
    /// <returns>The toe; null where the member ends too near, or has no wall there.</returns>
    internal static WeldToe? Beside(int part, string name, IEnumerable<Cuboid> boxes, int along, double at, int away, double leg, int across, double face, int outward, SolidPart other)
    {
        int third = 3 - along - across;
        double from = other.Blocks.Min(b => b.From(third)), to = other.Blocks.Max(b => b.To(third));
        foreach (Cuboid box in boxes.Where(b => Math.Abs((outward < 0 ? b.From(across) : b.To(across)) - face) <= GridPlanes.Same && b.To(third) > from && b.From(third) < to))
        {
            WeldToe toe = On(box, part, name, along, at + away * leg, away, across, face, outward) with { From = from, To = to, Leg = leg };
            if ((away > 0 ? box.To(along) - at : at - box.From(along)) >= Free * toe.Length + leg)
                return toe;
        }

        return null;
    }

    private static WeldToe On(Cuboid wall, int part, string name, int along, double at, int away, int across, double face, int outward)
    {
        double deep = wall.Along(across), wide = wall.Along(3 - along - across);
        return new WeldToe(part, name, along, at, away, Math.Min(deep, wide), across, face, outward, wall) { OnEdge = wide <= deep };
    }

    // from the toe to the farthest place
    private double Length => Reading.Before(Reading.Count - 1, Thickness);
}
