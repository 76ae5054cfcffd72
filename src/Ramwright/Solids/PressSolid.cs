using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>Where a die presses: rectangles on one level face of a part.</summary>
/// <param name="Part">Number of the part.</param>
/// <param name="At">Height of the face, m.</param>
/// <param name="On">Where on it; each box says where across and deep.</param>
public sealed record DieFace(int Part, double At, IReadOnlyList<Cuboid> On)
{
    /// <summary>A die that hangs over an edge by more than this share of its width is left in the middle, with a moment.</summary>
    private const double LeastOnSteel = 0.6;

    /// <summary>Axes, 0 and 1, along which the die may be set aside on its part: along a beam, not off its web.</summary>
    public IReadOnlyList<int> Free { get; init; } = [];

    /// <summary>The same, set aside, and cut off where the steel ends.</summary>
    internal DieFace Aside(Vector off, SolidPart part)
    {
        DieFace moved = this;
        foreach (int axis in Free)
        {
            double by = axis == 0 ? off.X : off.Y;
            (double from, double to) = (part.Blocks.Min(b => b.From(axis)), part.Blocks.Max(b => b.To(axis)));
            Cuboid[] on = [.. moved.On.Select(b => b.With(axis, Math.Max(from, b.From(axis) + by), Math.Min(to, b.To(axis) + by)))];
            if (by != 0 && on.Zip(moved.On).All(p => p.First.Along(axis) >= LeastOnSteel * p.Second.Along(axis)))
                moved = moved with { On = on };
        }

        return moved;
    }
}

/// <summary>A section of a member: the parts that it is of, the axis along it and where it is, m.</summary>
public sealed record DieSection(IReadOnlyList<int> Parts, int Axis, double At)
{
    /// <summary>None.</summary>
    internal static readonly (DieSection, DieSection) None = (new DieSection([], 0, 0), new DieSection([], 0, 0));

    /// <summary>Its nodes and the area that each stands for.</summary>
    internal Dictionary<int, double> Shares(SolidMesh mesh)
    {
        var all = new Dictionary<int, double>();
        foreach (int part in Parts)
            foreach ((int node, double share) in mesh.Face(part, Axis, At, Cuboid.Everywhere))
                all[node] = all.GetValueOrDefault(node) + share;
        return all;
    }
}

/// <summary>A press's frame as parts of steel that are joined where its joints join them, and pressed where its dies press.</summary>
/// <param name="Parts">The parts.</param>
/// <param name="Bonds">Where they are one.</param>
/// <param name="Upper">Where the ram's reaction pushes up.</param>
/// <param name="Lower">Where the work pushes down.</param>
/// <param name="Notes">What was simplified, for the reader.</param>
public sealed record PressSolid(IReadOnlyList<SolidPart> Parts, IReadOnlyList<Bond> Bonds, IReadOnlyList<DieFace> Upper, IReadOnlyList<DieFace> Lower, IReadOnlyList<Remark> Notes)
{
    /// <summary>Ends of members at welds, where stress is read.</summary>
    public IReadOnlyList<WeldToe> Toes { get; init; } = [];

    /// <summary>Member that each part is, or is half of; null for what is none.</summary>
    public IReadOnlyList<RigMember?> Members { get; init; } = [];

    /// <summary>Yield strength of each part, Pa; null for what stands for dies and plates that were not described.</summary>
    public IReadOnlyList<double?> Yields { get; init; } = [];

    /// <summary>Middle of the die's face on the upper part, m.</summary>
    public Vector UpperAt { get; init; }

    /// <summary>Middle of the die's face on the lower part, m.</summary>
    public Vector LowerAt { get; init; }

    /// <summary>Axis along which the dies turn out of parallel: 0 across, 1 from front to back.</summary>
    public int Turning { get; init; }

    /// <summary>The section of the upper part that stands behind its die, and that of the lower: how far they turn is how far the dies open out of parallel.</summary>
    public required (DieSection Upper, DieSection Lower) Sections { get; init; }

    /// <summary>Where stress means nothing, as parts are held there on less than they really bear on: it is not looked at for the weakest place.</summary>
    public IReadOnlyList<Cuboid> Blind { get; init; } = [];

    /// <summary>Faces that preload holds shut.</summary>
    public IReadOnlyList<ShutFace> Shut { get; init; } = [];

    /// <summary>Load cases whose dies the cells are to follow, besides the centred one.</summary>
    public IReadOnlyList<SolidCase> Cases { get; init; } = [];

    /// <summary>Where a case presses: work that stands off presses where it stands, as far as there is steel, and the ram's reaction above it.</summary>
    internal (IReadOnlyList<DieFace> Upper, IReadOnlyList<DieFace> Lower) Pressed(SolidCase one) =>
        ([.. Upper.Select(f => f.Aside(one.Off, Parts[f.Part]))], [.. Lower.Select(f => f.Aside(one.Off, Parts[f.Part]))]);

    internal static readonly Remark OpenFaces = new("Bolted faces hold together on a square as large as the washer's face round each bolt, and nowhere else: friction between would make them stiffer.");

    private static readonly Remark TiedFaces = new("Bolted faces are taken as one over all of their contact, as asked for: so they are while the bolts' clamping keeps them from slipping.");

    /// <summary>Parts that lie face to face and are bolted; their faces are open but round the bolts, or tied.</summary>
    public IReadOnlyList<(int A, int B)> Bolted { get; init; } = [];

    /// <summary>The same with bolted faces tied over all of their contact.</summary>
    /// <exception cref="SolidFaultException">No faces of this frame are bolted so.</exception>
    public PressSolid Tied() => Bolted.Count == 0
        ? throw new SolidFaultException("no faces of this frame are bolted side by side: there is nothing to tie")
        : this with
        {
            Bonds = [.. Bonds.Where(b => !Bolted.Contains((b.A, b.B))), .. Bolted.Distinct().Select(p => new Bond(p.A, p.B, Cuboid.Everywhere))],
            Notes = [.. Notes.Where(n => n != OpenFaces), TiedFaces],
        };

    /// <summary>Draws a press's frame up.</summary>
    /// <exception cref="SolidFaultException">A frame that cannot be drawn, with the part named.</exception>
    public static PressSolid Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.Frame switch
        {
            RigClosedFrame closed => ClosedFrameSolid.Of(closed, rig),
            RigOpenFrontFrame open => OpenFrontSolid.Of(open, rig),
            RigTieRodFrame rods => TieRodSolid.Of(rods, rig),
            RigFreeFrame free => FreeSolid.Of(free, rig),
            _ => throw new SolidFaultException($"{rig.Frame.GetType().Name} is not drawn as a solid"),
        };
    }

    /// <summary>Cuts it into cells.</summary>
    /// <param name="cells">How long they may be.</param>
    public SolidMesh Mesh(CellSizes cells)
    {
        Cuboid[] sections = [.. ((DieSection[])[Sections.Upper, Sections.Lower]).Where(d => d.Parts.Count > 0).Select(d => Cuboid.Everywhere.With(d.Axis, d.At, d.At))];
        var lines = new FaceLines(Parts, sections);
        SolidPart[] parts = [.. Parts.Select(lines.Laid)];
        Bond[] bonds = [.. Bonds.Select(b => b with { Where = lines.Laid(b.Where) })];
        IEnumerable<Cuboid> dies = Cases.Select(Pressed).Prepend((Upper, Lower)).SelectMany(p => p.Upper.Concat(p.Lower)).SelectMany(f => f.On.Select(b => b with { Z0 = f.At, Z1 = f.At }));
        Cuboid[] others = [.. sections, .. dies.Distinct().Select(lines.Laid)];
        return SolidMesh.Of(parts, bonds, cells, [.. others, .. ToeLines.Of(Toes, parts, bonds, others)]);
    }

    /// <summary>Cells of a size that suits the whole, m: some hundred thousand unknowns, a matter of seconds.</summary>
    public CellSizes Usual
    {
        get
        {
            double size = Parts.SelectMany(p => p.Blocks).Max(b => Math.Max(b.Along(0), Math.Max(b.Along(1), b.Along(2))));
            double fine = Math.Clamp(size / 130, 0.005, 0.015);
            return new CellSizes(fine, 2.5 * fine);
        }
    }

    /// <summary>Nodes under the dies and the share of the force that each takes.</summary>
    internal static Dictionary<int, double> Shares(SolidMesh mesh, IReadOnlyList<DieFace> faces)
    {
        var shares = new Dictionary<int, double>();
        foreach (DieFace face in faces)
            foreach (Cuboid on in face.On)
                foreach ((int node, double share) in mesh.Face(face.Part, 2, face.At, on))
                    shares[node] = shares.GetValueOrDefault(node) + share;
        return shares;
    }
}
