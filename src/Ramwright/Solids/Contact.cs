namespace Ramwright.Solids;

/// <summary>Where boxes of two parts stand face to face: a flat box, nothing thick along one axis.</summary>
/// <param name="Axis">Along which it is flat.</param>
/// <param name="Where">The rectangle.</param>
internal readonly record struct Contact(int Axis, Cuboid Where)
{
    /// <summary>All rectangles in which two parts touch.</summary>
    public static IEnumerable<Contact> Between(IReadOnlyList<Cuboid> one, IReadOnlyList<Cuboid> other)
    {
        foreach (Cuboid a in one)
            foreach (Cuboid b in other)
                for (int axis = 0; axis < 3; axis++)
                {
                    double at = Math.Abs(a.To(axis) - b.From(axis)) < GridPlanes.Same ? a.To(axis)
                        : Math.Abs(a.From(axis) - b.To(axis)) < GridPlanes.Same ? a.From(axis) : double.NaN;
                    if (double.IsNaN(at))
                        continue;
                    Cuboid both = a.And(b).With(axis, at, at);
                    if (both.Along((axis + 1) % 3) > GridPlanes.Same && both.Along((axis + 2) % 3) > GridPlanes.Same)
                        yield return new Contact(axis, both);
                }
    }

    /// <summary>The strips along its edges that a fillet of a throat joins; the whole where they would meet.</summary>
    public IEnumerable<Cuboid> Strips(double throat)
    {
        (int u, int v) = ((Axis + 1) % 3, (Axis + 2) % 3);
        Cuboid box = Where;
        if (box.Along(u) <= 2.5 * throat || box.Along(v) <= 2.5 * throat)
            return [box];
        return
        [
            box.With(u, box.From(u), box.From(u) + throat), box.With(u, box.To(u) - throat, box.To(u)),
            box.With(v, box.From(v), box.From(v) + throat), box.With(v, box.To(v) - throat, box.To(v)),
        ];
    }
}
