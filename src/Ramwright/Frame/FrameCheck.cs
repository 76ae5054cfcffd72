using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>What is refused at the door of the solver.</summary>
internal static class FrameCheck
{
    public static string Name(int number, FrameMember m) => $"Member {number} ({m.Part})";

    /// <summary>Everything about a frame that can be judged without solving it.</summary>
    public static void Model(FrameModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (model.Members.Count == 0)
            throw new ArgumentException("The frame has no members.", nameof(model));
        for (int i = 0; i < model.Nodes.Count; i++)
            if (!IsFinite(model.Nodes[i].At))
                throw new ArgumentException($"Node {i} ({model.Nodes[i].Name}) has no finite place.", nameof(model));
        for (int i = 0; i < model.Members.Count; i++)
            Member(model, i, model.Members[i]);
        for (int i = 0; i < model.Supports.Count; i++)
            if ((uint)model.Supports[i].Node >= (uint)model.Nodes.Count)
                throw new ArgumentException(
                    $"Support {i} names node {model.Supports[i].Node}; there are {model.Nodes.Count} nodes.", nameof(model));
    }

    public static void Ends(FrameModel model, int number, FrameMember m)
    {
        int nodes = model.Nodes.Count;
        if ((uint)m.From >= (uint)nodes || (uint)m.To >= (uint)nodes)
            throw new ArgumentException($"{Name(number, m)} runs from node {m.From} to node {m.To}; there are {nodes} nodes.");
    }

    private static void Member(FrameModel model, int number, FrameMember m)
    {
        Ends(model, number, m);
        if (m.From == m.To)
            throw new ArgumentException($"{Name(number, m)} starts and ends at node {m.From}.");
        if (!IsFinite(m.Up) || !IsFinite(m.ArmFrom) || !IsFinite(m.ArmTo))
            throw new ArgumentException($"{Name(number, m)} has an Up or an arm that is not finite.");
        Above(m.E, "E", number, m);
        Above(m.G, "G", number, m);
        SectionProperties s = m.Section;
        Above(s.A, "A", number, m);
        Above(s.Iy, "Iy", number, m);
        Above(s.Iz, "Iz", number, m);
        Above(s.It, "It", number, m);
        if (!(s.Asy > 0) || !(s.Asz > 0))
            throw new ArgumentException($"{Name(number, m)}: Asy and Asz must be above zero (infinite: no shear deflection).");
        Fixity(m.FixityFrom, "first", number, m);
        Fixity(m.FixityTo, "second", number, m);
        Connected(m, number);
    }

    /// <summary>Refuses a member that its nodes cannot keep from moving however well they are held themselves.</summary>
    private static void Connected(FrameMember m, int number)
    {
        EndFixity a = m.FixityFrom, b = m.FixityTo;
        string? loose =
            a.N == 0 && b.N == 0 ? "slide along itself: N is let go at both ends"
            : a.T == 0 && b.T == 0 ? "spin about itself: T is let go at both ends"
            : Loose(a.Vy, a.Mz, b.Vy, b.Mz) ? "move across its y: too many of Vy and Mz are let go"
            : Loose(a.Vz, a.My, b.Vz, b.My) ? "move across its z: too many of Vz and My are let go"
            : null;
        if (loose is not null)
            throw new ArgumentException($"{Name(number, m)} can {loose}.");
    }

    private static bool Loose(double V1, double M1, double V2, double M2)
    {
        int free = (V1 == 0 ? 1 : 0) + (M1 == 0 ? 1 : 0) + (V2 == 0 ? 1 : 0) + (M2 == 0 ? 1 : 0);
        return free > 2 || (V1 == 0 && V2 == 0);
    }

    /// <summary>One load case against the frame it acts on.</summary>
    public static void Case(FrameModel model, LoadCase c)
    {
        ArgumentNullException.ThrowIfNull(c);
        for (int i = 0; i < c.OnNodes.Count; i++)
        {
            NodalLoad p = c.OnNodes[i];
            if ((uint)p.Node >= (uint)model.Nodes.Count)
                throw new ArgumentException($"Case '{c.Name}': a load names node {p.Node}; there are {model.Nodes.Count} nodes.");
            if (!IsFinite(p.Force) || !IsFinite(p.Moment))
                throw new ArgumentException($"Case '{c.Name}': the load on node {p.Node} is not finite.");
        }
        for (int i = 0; i < c.OnMembers.Count; i++)
        {
            MemberLoad q = c.OnMembers[i];
            if ((uint)q.Member >= (uint)model.Members.Count)
                throw new ArgumentException($"Case '{c.Name}': a load names member {q.Member}; there are {model.Members.Count}.");
            if (!IsFinite(q.PerMetre))
                throw new ArgumentException($"Case '{c.Name}': the load on member {q.Member} is not finite.");
        }
    }

    /// <summary>Where along a beam something lies: lets rounding past its ends through, returns it clipped.</summary>
    public static double Along(double x, double L, string name)
    {
        if (!(x >= -1e-9 * L && x <= L * (1 + 1e-9)))
            throw new ArgumentOutOfRangeException(name, x, $"The beam is {L:G6} m long.");
        return Math.Clamp(x, 0, L);
    }

    private static void Above(double value, string what, int number, FrameMember m)
    {
        if (!(value > 0) || !double.IsFinite(value))
            throw new ArgumentException($"{Name(number, m)}: {what} is {value:G4}; it must be above zero and finite.");
    }

    private static void Fixity(EndFixity f, string end, int number, FrameMember m)
    {
        if (!(f.N >= 0 && f.Vy >= 0 && f.Vz >= 0 && f.T >= 0 && f.My >= 0 && f.Mz >= 0))
            throw new ArgumentException($"{Name(number, m)}: a hold at its {end} end is below zero or not a number.");
    }

    public static bool IsFinite(Vector v) => double.IsFinite(v.X) && double.IsFinite(v.Y) && double.IsFinite(v.Z);
}
