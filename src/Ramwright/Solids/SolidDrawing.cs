using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>Collects the parts and joints of a solid frame.</summary>
internal sealed class SolidDrawing
{
    private const double UsualBolster = 0.05;
    private readonly List<SolidPart> _parts = [];
    private readonly List<(Piece Piece, IReadOnlyList<(Cuboid Box, bool IsWeb)> Boxes)?> _pieces = [];
    private readonly Dictionary<int, double> _yields = [];
    private readonly List<(int A, int B)> _bolted = [];
    private readonly List<Bond> _bonds = [];
    private readonly SortedDictionary<string, Remark> _notes = [];
    private readonly List<WeldToe> _toes = [];

    public IReadOnlyList<SolidPart> Parts => _parts;
    public IReadOnlyList<Bond> Bonds => _bonds;
    public IReadOnlyList<WeldToe> Toes => _toes;
    public List<Cuboid> Blind { get; } = [];
    public List<ShutFace> Shut { get; } = [];
    public IReadOnlyList<RigMember?> Members => [.. _pieces.Select(p => p?.Piece is GussetPlate ? null : p?.Piece.Member)];
    public IReadOnlyList<double?> Yields => [.. _pieces.Select((p, i) => p?.Piece.Member.Fy ?? (_yields.TryGetValue(i, out double fy) ? fy : null))];
    public IReadOnlyList<Remark> Notes => [.. _notes.Values];

    /// <summary>Parts that lie face to face and are bolted.</summary>
    public IReadOnlyList<(int A, int B)> Bolted => _bolted;

    /// <summary>Notes what was simplified, once.</summary>
    public void Note(Remark note) => _notes.TryAdd(note.ToString(), note);

    /// <summary>The narrowest die that is drawn, m.</summary>
    private const double NarrowestDie = 0.02;

    /// <summary>Half the width of the dies as drawn, m.</summary>
    /// <param name="width">As the file has it, m; nothing where it says nothing.</param>
    public double HalfDie(double width)
    {
        if (width < NarrowestDie)
            Note(new Remark("The dies are drawn {0} wide; the beams take them as {1}, and sink in deeper under so sharp a force. Say die-width.", Remark.Of(NarrowestDie, Dimension.Length), Remark.Of(width, Dimension.Length)));
        return Math.Max(width, NarrowestDie) / 2;
    }

    /// <summary>Adds a piece; several of one name are told apart.</summary>
    public int Add(Piece piece, IReadOnlyList<Cuboid>? cuts = null)
    {
        IReadOnlyList<(Cuboid Box, bool IsWeb)> boxes = PieceBoxes.Of(piece);
        int same = _pieces.Count(p => p?.Piece.Name == piece.Name);
        _parts.Add(new SolidPart(same == 0 ? piece.Name : $"{piece.Name}, half {same + 1}", [.. boxes.Select(b => b.Box)]) { Cuts = cuts ?? [], Loose = PieceBoxes.Roots(piece) });
        _pieces.Add((piece, boxes));
        if (Wall.Simplified(piece.Shape) is { } simplified && piece is not GussetPlate)
            Note($"{char.ToUpperInvariant(simplified[0])}{simplified[1..]}.");
        if (piece is GussetPlate)
            Note("The slanted side of a gusset is drawn in steps.");
        return _parts.Count - 1;
    }

    /// <summary>Adds a block.</summary>
    public int Add(string name, params Cuboid[] blocks)
    {
        _parts.Add(new SolidPart(name, blocks));
        _pieces.Add(null);
        return _parts.Count - 1;
    }

    /// <summary>Adds what was not described and stands for something that is there.</summary>
    public int AddStandIn(string name, IReadOnlyList<Cuboid> blocks)
    {
        int part = Add(name, [.. blocks]);
        _parts[part] = _parts[part] with { Loose = blocks };
        return part;
    }

    /// <summary>Adds a part that is no piece of a member, of a known yield strength.</summary>
    public int Add(string name, double yield, IReadOnlyList<Cuboid> blocks)
    {
        _yields[_parts.Count] = yield;
        return Add(name, [.. blocks]);
    }

    /// <summary>Cuts boxes out of a part.</summary>
    public void Cut(int part, IEnumerable<Cuboid> boxes) => _parts[part] = _parts[part] with { Cuts = [.. _parts[part].Cuts, .. boxes] };

    /// <summary>Numbers of the parts that are of a member.</summary>
    public IReadOnlyList<int> Of(RigMember member) => [.. Enumerable.Range(0, _parts.Count).Where(i => _pieces[i]?.Piece is { } p && p is not GussetPlate && p.Member == member)];

    /// <summary>
    /// Lengthens a part that butts on another along an axis up to the face that is drawn there: a round tube, drawn square, is less deep, and a beam may have to reach between flanges to the web.
    /// </summary>
    public void Reach(int part, int other, int axis)
    {
        IReadOnlyList<Cuboid> own = _parts[part].Blocks, others = _parts[other].Blocks;
        if (Contact.Between(own, others).Any(c => c.Axis == axis))
            return;
        (double from, double to) = (own.Min(b => b.From(axis)), own.Max(b => b.To(axis)));
        bool up = (others.Min(b => b.From(axis)) + others.Max(b => b.To(axis))) / 2 > (from + to) / 2;
        double[] faces = [.. others.Where(o => own.Any(b => b.With(axis, -1e9, 1e9).And(o).IsSolid)).Select(o => up ? o.From(axis) : o.To(axis)).Where(f => up ? f > to : f < from)];
        if (faces.Length == 0)
            return;
        double face = up ? faces.Min() : faces.Max();
        Cuboid Long(Cuboid b) => up && b.To(axis) == to ? b.With(axis, b.From(axis), face) : !up && b.From(axis) == from ? b.With(axis, face, b.To(axis)) : b;
        _parts[part] = _parts[part] with { Blocks = [.. own.Select(Long)], Loose = [.. _parts[part].Loose.Select(Long)] };
        if (_pieces[part] is { } piece)
            _pieces[part] = (piece.Piece, [.. piece.Boxes.Select(b => (Long(b.Box), b.IsWeb))]);
        Note($"The {_parts[part].Name} is drawn on to the face of the {_parts[other].Name} that stands behind.");
    }

    /// <summary>Joins two parts wherever they touch.</summary>
    public void JoinWhole(int a, int b)
    {
        if (Contact.Between(_parts[a].Blocks, _parts[b].Blocks).Any())
            _bonds.Add(new Bond(a, b, Cuboid.Everywhere));
    }

    /// <summary>Joins two parts in a place.</summary>
    public void JoinIn(int a, int b, Cuboid where) => _bonds.Add(new Bond(a, b, where));

    /// <summary>Joins two parts where they touch, as a weld does: over the whole face, or along its edges.</summary>
    public void Weld(int a, int b, RigWeld weld)
    {
        foreach (Contact contact in Contact.Between(_parts[a].Blocks, _parts[b].Blocks))
            foreach (Cuboid where in weld.Kind == WeldKind.Fillet ? contact.Strips(weld.Throat) : [contact.Where])
                _bonds.Add(new Bond(a, b, where));
        Note(weld.Kind == WeldKind.Fillet
            ? "Fillet welds join only a strip as wide as their throat along the edges of the faces; between the strips the faces part and slide, and could close into each other unseen."
            : "Butt welds join the whole face.");
    }

    /// <summary>Joins what lies face to face on squares round bolts.</summary>
    public void Bolt(int a, int b, RigBoltedJoint joint, double x, double z)
    {
        (int along, int up) = joint.Columns;
        double square = RodJoint.WasherFace * joint.Thread.D * Math.Sqrt(Math.PI) / 2 / 2;
        Contact[] faces = [.. Contact.Between(_parts[a].Blocks, _parts[b].Blocks).Where(c => c.Axis == 1)];
        if (faces.Length == 0)
            return;
        double y = faces[0].Where.Y0;
        if (_pieces[b] is not null && !faces.Any(f => f.Where.Holds(x - joint.Pitch * (along - 1) / 2, y, z - joint.Gauge * (up - 1) / 2)))
            b = Packing(a, b, y, x, z);
        faces = [.. Contact.Between(_parts[a].Blocks, _parts[b].Blocks).Where(c => c.Axis == 1)];
        int beside = 0;
        for (int i = 0; i < along; i++)
            for (int j = 0; j < up; j++)
            {
                double bx = x + (i - (along - 1) / 2.0) * joint.Pitch, bz = z + (j - (up - 1) / 2.0) * joint.Gauge;
                beside += faces.Any(f => f.Where.Holds(bx, f.Where.Y0, bz)) ? 0 : 1;
                _bonds.Add(new Bond(a, b, Cuboid.Everywhere with { X0 = bx - square, X1 = bx + square, Z0 = bz - square, Z1 = bz + square }));
            }

        if (beside > 0)
            Note($"{beside} of {joint.Count} bolts stand beside the face where {Plain(a)} and {Plain(b)} touch, and hold nothing there but what the rim of the washer reaches: move them into steel.");
        Note(PressSolid.OpenFaces);
        _bolted.Add((a, b));
    }

    // both halves of a part, at both ends, are said once
    private string Plain(int part) => _pieces[part]?.Piece.Member.Part ?? "its packing";

    /// <summary>Ties the halves of what is clasped: the bolts go through both, with a packing in the gap, as thick as the gap and as wide as the webs.</summary>
    public void Spacer(IReadOnlyList<int> halves, RigBoltedJoint joint, double x, double z, double low, double high)
    {
        if (halves.Count != 2)
            return;
        (int front, int back) = _parts[halves[0]].Blocks.Min(b => b.Y0) < _parts[halves[1]].Blocks.Min(b => b.Y0) ? (halves[0], halves[1]) : (halves[1], halves[0]);
        double from = _parts[front].Blocks.Max(b => b.Y1), to = _parts[back].Blocks.Min(b => b.Y0);
        if (to - from > GridPlanes.Same)
        {
            Cuboid web = _pieces[front]!.Value.Boxes.Where(w => w.IsWeb).Select(w => w.Box).First();
            int packing = Add($"packing between the halves of {_pieces[front]!.Value.Piece.Name}", new Cuboid(web.X0, web.X1, from, to, Math.Max(low, web.Z0), Math.Min(high, web.Z1)));
            Bolt(front, packing, joint, x, z);
            Bolt(back, packing, joint, x, z);
            Note("Between the halves of what bolts clasp there is taken to be a packing, held by the same bolts. Leave it out, and each half turns by itself: such a frame opens up to twice as far.");
        }
        else
        {
            Bolt(front, back, joint, x, z);
        }
    }

    // where bolts pass between the flanges of what is clasped, a packing fills the place from the beam's face to the web
    private int Packing(int beam, int clasped, double y, double x, double z)
    {
        Cuboid web = _pieces[clasped]!.Value.Boxes.Where(w => w.IsWeb).Select(w => w.Box).MinBy(w => Math.Abs(w.Middle(1) - y));
        (double from, double to) = web.Middle(1) < y ? (web.Y1, y) : (y, web.Y0);
        if (to - from < GridPlanes.Same)
            return clasped;
        double low = _parts[beam].Blocks.Min(b => b.Z0), high = _parts[beam].Blocks.Max(b => b.Z1);
        Cuboid[] roots = [.. _pieces[clasped]!.Value.Boxes.Where(w => !w.IsWeb && w.Box.Y1 > from + GridPlanes.Same && w.Box.Y0 < to - GridPlanes.Same).Select(w => w.Box)];
        double left = roots.Where(r => r.Middle(0) < x).Select(r => r.X1).DefaultIfEmpty(web.X0).Max(), right = roots.Where(r => r.Middle(0) > x).Select(r => r.X0).DefaultIfEmpty(web.X1).Min();
        int packing = Add($"packing in {_parts[clasped].Name}", new Cuboid(left, right, from, to, Math.Max(low, web.Z0), Math.Min(high, web.Z1)));
        JoinWhole(packing, clasped);
        Note("Bolts that pass between flanges are taken to go through a packing as thick as the gap, held by the web behind it.");
        return packing;
    }

    /// <summary>Ends of a member's walls at a face, where a weld's toe stands and stress is read.</summary>
    public void Toe(int part, string name, int along, double at, int away, double leg)
    {
        _toes.AddRange(WeldToe.Of(part, $"{name}, {_parts[part].Name}", [.. _pieces[part]!.Value.Boxes.Select(b => b.Box)], along, at, away, leg));
    }

    /// <summary>The face of a member that runs on, on both sides of what is welded to it: there too stress is read.</summary>
    /// <param name="part">Number of the part that runs on.</param>
    /// <param name="other">Number of what is welded to it.</param>
    /// <param name="name">Which joint.</param>
    /// <param name="along">Axis along the part.</param>
    /// <param name="across">Axis square to its face.</param>
    /// <param name="face">Where the face is, m.</param>
    /// <param name="outward">1 or −1: out of the steel.</param>
    /// <param name="leg">Of the weld, m.</param>
    public void ToesBeside(int part, int other, string name, int along, int across, double face, int outward, double leg)
    {
        foreach (int away in (int[])[-1, 1])
        {
            double at = away < 0 ? _parts[other].Blocks.Min(b => b.From(along)) : _parts[other].Blocks.Max(b => b.To(along));
            string side = along == 2 ? away < 0 ? "below" : "above" : $"{(away < 0 ? "left of" : "right of")} the {_parts[other].Name}";
            if (WeldToe.Beside(part, $"{name}, {_parts[part].Name}, {side}", _pieces[part]!.Value.Boxes.OrderBy(b => b.IsWeb).Select(b => b.Box), along, at, away, leg, across, face, outward, _parts[other]) is { } toe)
                _toes.Add(toe);
        }
    }

    /// <summary>
    /// Where a die presses a member: on the webs of a single part; on a plate that lies across where there is one, or where there are two halves, which nothing else would tie there.
    /// </summary>
    public IReadOnlyList<DieFace> Die(RigMember member, int inward, Cuboid under, RigBolster? bolster, string name, int along = 0) => Die(Of(member), inward, under, bolster, name, along);

    /// <summary>The same of the parts of a member.</summary>
    public IReadOnlyList<DieFace> Die(IReadOnlyList<int> parts, int inward, Cuboid under, RigBolster? bolster, string name, int along = 0)
    {
        (double bottom, double top) = (parts.Min(p => _parts[p].Blocks.Min(b => b.Z0)), parts.Max(p => _parts[p].Blocks.Max(b => b.Z1)));
        double face = inward > 0 ? top : bottom;
        if (bolster is null && parts.Count == 1)
        {
            // a wall that stands over half the depth carries the force; where there is none, the whole face does
            Cuboid[] webs = [.. _pieces[parts[0]]!.Value.Boxes.Where(b => b.IsWeb && b.Box.Along(2) > (top - bottom) / 2)
                .Select(b => b.Box.And(under)).Where(b => b.X1 > b.X0 && b.Y1 > b.Y0)
                .Select(b => b with { Z0 = double.NegativeInfinity, Z1 = double.PositiveInfinity })];
            return [new DieFace(parts[0], face, webs.Length > 0 ? webs : [under]) { Free = Free(under) }];
        }

        double thick = bolster?.Thickness ?? UsualBolster;
        double at = face + inward * thick;
        Cuboid plate = new(0, 0, 0, 0, Math.Min(face, at), Math.Max(face, at));
        for (int axis = 0; axis < 2; axis++)
        {
            (double least, double most) = (parts.Min(p => _parts[p].Blocks.Min(b => b.From(axis))), parts.Max(p => _parts[p].Blocks.Max(b => b.To(axis))));
            double half = Math.Max(bolster?.Along ?? 0, under.Along(axis)) / 2;
            plate = axis == along && double.IsFinite(half)
                ? plate.With(axis, Math.Max(least, under.Middle(axis) - half), Math.Min(most, under.Middle(axis) + half))
                : plate.With(axis, least, most);
        }

        int pad = Add(name, plate);
        foreach (int p in parts)
            JoinWhole(pad, p);
        if (bolster is null)
            Note(new Remark($"The halves of {_pieces[parts[0]]!.Value.Piece.Member.Part} are taken as tied by a plate {{0}} thick where the die presses.", Remark.Of(thick, Dimension.Length)));
        return [new DieFace(pad, at, [plate.And(under)]) { Free = Free(under) }];
    }

    // along an axis on which the die ends it can be set aside
    private static int[] Free(Cuboid under) => [.. Enumerable.Range(0, 2).Where(axis => double.IsFinite(under.Along(axis)))];
}
