using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Solids;

/// <summary>Bars of a free frame that follow one another in a straight line with one section: one piece of steel.</summary>
/// <param name="Bars">The bars, in order from low to high along the axis.</param>
/// <param name="Axis">Along which it lies.</param>
/// <param name="From">Point at its low end.</param>
/// <param name="To">Point at its high end.</param>
internal sealed record FreeRun(IReadOnlyList<RigBar> Bars, int Axis, int From, int To)
{
    /// <summary>Section, steel and name.</summary>
    public RigMember Member => Bars[0].Member;

    /// <summary>Its bars' name, or the words that their names begin with: <c>crown left</c> and <c>crown right</c> are the crown.</summary>
    public string Name
    {
        get
        {
            string[] first = Member.Part.Split(' ');
            int same = Enumerable.Range(0, first.Length + 1).Last(n => Bars.All(b => b.Member.Part.Split(' ') is var words && words.Take(n).SequenceEqual(first.Take(n))));
            return same > 0 ? string.Join(' ', first[..same]) : Member.Part;
        }
    }

    /// <summary>All runs of a frame, in the order of its bars.</summary>
    /// <exception cref="SolidFaultException">A bar lies aslant.</exception>
    public static IReadOnlyList<FreeRun> Of(RigFreeFrame frame)
    {
        var left = frame.Bars.ToList();
        var runs = new List<FreeRun>();
        while (left.Count > 0)
        {
            RigBar first = left[0];
            int axis = AxisOf(frame, first);
            var chain = new LinkedList<RigBar>([first]);
            left.RemoveAt(0);
            while (left.FirstOrDefault(b => IsSame(frame, b, first, axis) && High(frame, b, axis) == Low(frame, chain.First!.Value, axis)) is { } before)
            {
                left.Remove(before);
                chain.AddFirst(before);
            }

            while (left.FirstOrDefault(b => IsSame(frame, b, first, axis) && Low(frame, b, axis) == High(frame, chain.Last!.Value, axis)) is { } after)
            {
                left.Remove(after);
                chain.AddLast(after);
            }

            runs.Add(new FreeRun([.. chain], axis, Low(frame, chain.First!.Value, axis), High(frame, chain.Last!.Value, axis)));
        }

        return runs;
    }

    /// <summary>Whether it goes on past a point, or only meets it.</summary>
    public bool PassesBy(int point) => point != From && point != To && Touches(point);

    /// <summary>Whether a point is on it.</summary>
    public bool Touches(int point) => Bars.Any(b => b.From == point || b.To == point);

    /// <summary>How far its section reaches beyond its centre line, along an axis, either way.</summary>
    public (double Low, double High) Reach(RigFreeFrame frame, int axis)
    {
        IReadOnlyList<Cuboid> boxes = Boxes(frame, 0, 1);
        double centre = Component(frame.Points[From].At, axis);
        return (boxes.Min(b => b.From(axis)) - centre, boxes.Max(b => b.To(axis)) - centre);
    }

    /// <summary>Its pieces, from one place along the axis to another.</summary>
    public IEnumerable<Piece> Pieces(RigFreeFrame frame, double from, double to)
    {
        Vector at = frame.Points[From].At, x = Unit(Axis), a = at + (from - Component(at, Axis)) * x, b = at + (to - Component(at, Axis)) * x;
        return Piece.Of(Name, Member, a, b, x.Cross(Bars[0].Depth.Cross(x)).Unit);
    }

    private IReadOnlyList<Cuboid> Boxes(RigFreeFrame frame, double from, double to) => [.. Pieces(frame, from, to).SelectMany(PieceBoxes.Of).Select(b => b.Box)];

    public static double Component(Vector v, int axis) => axis switch { 0 => v.X, 1 => v.Y, _ => v.Z };

    private static Vector Unit(int axis) => axis switch { 0 => Vector.Across, 1 => Vector.Deep, _ => Vector.Up };

    private static int Low(RigFreeFrame frame, RigBar bar, int axis) =>
        Component(frame.Points[bar.From].At, axis) < Component(frame.Points[bar.To].At, axis) ? bar.From : bar.To;

    private static int High(RigFreeFrame frame, RigBar bar, int axis) => Low(frame, bar, axis) == bar.From ? bar.To : bar.From;

    private static bool IsSame(RigFreeFrame frame, RigBar bar, RigBar other, int axis)
    {
        Vector along = (frame.Points[bar.To].At - frame.Points[bar.From].At).Unit;
        return Math.Abs(Component(along, axis)) > 1 - 1e-9 && bar.Depth == other.Depth && bar.Member.Shape.Equals(other.Member.Shape)
            && bar.Member.Steel == other.Member.Steel;
    }

    private static int AxisOf(RigFreeFrame frame, RigBar bar)
    {
        Vector along = (frame.Points[bar.To].At - frame.Points[bar.From].At).Unit;
        for (int axis = 0; axis < 3; axis++)
            if (Math.Abs(Component(along, axis)) > 1 - 1e-9)
                return axis;
        throw new SolidFaultException($"{bar.Member.Part}, from {frame.Points[bar.From].Name} to {frame.Points[bar.To].Name}, lies aslant: cut in steps it would bend a tenth too easily, "
            + "and beams are nearer. Solids are drawn of frames whose bars run along the press's three directions; for this one keep to the beams");
    }
}
