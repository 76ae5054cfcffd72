using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>The frame's members as lengths, its gussets as plates: the very pieces that are drawn, weighed and bent.</summary>
internal static class MemberParts
{
    /// <summary>Lengths nearer than this are alike, m.</summary>
    private const double Alike = 1e-6;

    private sealed record Member(Piece Piece, LengthHole[] Holes);

    public static void Draw(PartDraft draft)
    {
        foreach (List<GussetPlate> alike in Grouped(draft.Body.Pieces.OfType<GussetPlate>(), (a, b) => a.Gusset == b.Gusset && a.Beam == b.Beam))
        {
            GussetPlate one = alike[0];
            draft.Add(new PlatePart
            {
                Name = one.Name.Split(',')[0],
                Of = one.Member.Part,
                Count = alike.Count,
                Steel = one.Gusset.Steel,
                Thickness = one.Gusset.Thickness,
                Blank = one.Outline,
                Places = [.. alike.Select(Middle)],
                Notes = ["The right-angled corner is cut sharp: clip it where a weld has to run through behind it, builder to decide."],
            });
        }

        Fastening[] fastenings = [.. Fastening.Of(draft)];
        foreach (IGrouping<string, Fastening> joint in fastenings.Where(f => !f.OnlyOnto).GroupBy(f => f.Joint.Key))
        {
            PlanJoint one = joint.First().Joint;
            foreach (string part in new[] { one.Beam.Part, one.Onto.Part })
            {
                int missing = joint.Count(f => PassesBy(f, part, draft));
                if (missing > 0)
                    draft.Misfit($"{missing} of the {joint.Count()} bolts or pins of the {one.Name.Split(',')[0]} pass the {part} by: as the file spaces them they do not all meet steel.");
                int broken = joint.Count(f => BreaksOut(f, part, draft));
                if (broken > 0)
                    draft.Misfit($"{broken} of the {joint.Count()} holes of the {one.Name.Split(',')[0]} in the {part} break out of its edge or end: move them in, or take smaller bolts.");
            }

            double air = joint.Max(f => Air(f, draft));
            if (one.Joint is RigBoltedJoint bolts && air > bolts.Thread.D / 3)
            {
                draft.Misfit($"The bolts of the {one.Name.Split(',')[0]} cross {Readout.Text(air, Dimension.Length, draft.Units)} of air between {one.Beam.Part} and {one.Onto.Part}, and would bend there; "
                    + "they are only checked in shear. Let the faces meet (channels toes together, another apart), or fill the gap with solid packing that is fixed to one side.");
            }
        }

        IEnumerable<Member> members = draft.Body.Pieces.Where(p => p is not GussetPlate && !EndPlates.IsPlate(draft.Rig.Frame, p.Member.Part))
            .Select(p => new Member(p, MemberHoles.Of(p, draft, fastenings)));
        foreach (List<Member> alike in Grouped(members, AreAlike))
            draft.Add(Length(alike, draft));
    }

    private static bool PassesBy(Fastening f, string part, PartDraft draft)
    {
        Piece[] pieces = [.. draft.Body.Pieces.Where(p => p.Member.Part == part && f.Concerns(p))];
        return pieces.Length > 0 && !pieces.Any(p => f.Walls(p).Count > 0);
    }

    // a third of the bolt is as much as may lie between the parts before its shear suffers; EN 1993-1-8:2005, 3.6.1(12)
    private static double Air(Fastening f, PartDraft draft)
    {
        if (f.Joint.Joint.Fit != BeamFit.Lapped)
            return 0;
        (WallMet Wall, string Part)[] met =
        [
            .. draft.Body.Pieces.Where(f.Concerns).SelectMany(p => f.Walls(p).Select(w => (Wall: w, p.Member.Part))).OrderBy(m => m.Wall.From),
        ];
        return Enumerable.Range(0, Math.Max(0, met.Length - 1)).Where(i => met[i].Part != met[i + 1].Part)
            .Select(i => met[i + 1].Wall.From - met[i].Wall.To).DefaultIfEmpty(0).Max();
    }

    // the hole's rim must meet the same walls as its middle, along the piece and across it
    private static bool BreaksOut(Fastening f, string part, PartDraft draft)
    {
        foreach (Piece piece in draft.Body.Pieces.Where(p => p.Member.Part == part && f.Concerns(p)))
        {
            if (f.Walls(piece).Count == 0)
                continue;
            double r = f.Hole / 2 * (1 + 1e-9);
            Vector across = f.Joint.Normal.Cross(piece.Along);
            if (((Vector[])[r * piece.Along, -r * piece.Along, r * across, -r * across]).Any(rim => (f with { At = f.At + rim }).Walls(piece).Count == 0))
                return true;
        }

        return false;
    }

    private static LengthPart Length(List<Member> alike, PartDraft draft)
    {
        (Piece one, LengthHole[] holes) = (alike[0].Piece, alike[0].Holes);
        bool rod = one.Member.Part == "tie rod";
        EndCut end = rod ? RodEnd(draft.Rig.Frame as RigTieRodFrame, draft.Units) : End(one, draft);
        return new LengthPart
        {
            Name = one.Member.Shape is Pair ? $"{one.Member.Part}, one half" : one.Member.Part,
            Of = one.Member.Part,
            Count = alike.Count,
            Steel = one.Member.Steel,
            Section = one.Shape,
            Length = one.Length,
            First = end,
            Second = end,
            Holes = holes,
            Places = [.. alike.Select(a => Middle(a.Piece))],
            Notes = one.Member.Net is null ? []
                : ["Holes and slots that the file gives under openings are not placed by it: mark them on the part, where they are meant to be."],
        };
    }

    private static EndCut End(Piece piece, PartDraft draft)
    {
        PlanJoint? fixedBy = draft.Plan.Joints.FirstOrDefault(j => j.Beam.Part == piece.Member.Part && j.Joint.Fit != BeamFit.Lapped);
        return fixedBy?.Joint switch
        {
            RigWeldedJoint { Weld.Kind: WeldKind.Butt } => new EndCut("square, bevelled for a butt weld"),
            RigOnePieceJoint => new EndCut("runs on into the corner"),
            RigBoltedJoint { EndPlate: not null } => new EndCut("square, end plate welded on"),
            _ => EndCut.Square,
        };
    }

    // the thread runs through the nut with threads to spare, the plate, and on to the plain part
    private static EndCut RodEnd(RigTieRodFrame? frame, UnitSystem units)
    {
        if (frame?.Rod is not { } rod)
            return EndCut.Square;
        if (rod.Shank is null)
            return new EndCut("square, threaded throughout") { Thread = rod.Thread, Threaded = 0 };
        double through = Math.Max(frame.Crown.Shape.Properties.Height, frame.Bed.Shape.Properties.Height);
        double length = 2 * rod.NutHeight + through + rod.FreeThread;
        return new EndCut($"thread {rod.Thread.Name}, {Readout.Text(length, Dimension.Length, units)} long") { Thread = rod.Thread, Threaded = length };
    }

    private static bool AreAlike(Member a, Member b) =>
        a.Piece.Member.Part == b.Piece.Member.Part && a.Piece.Shape == b.Piece.Shape && Math.Abs(a.Piece.Length - b.Piece.Length) < Alike
        && a.Holes.Length == b.Holes.Length && a.Holes.Zip(b.Holes).All(p => MemberHoles.Same(p.First, p.Second));

    internal static Vector Middle(Piece piece) => (piece.From + piece.To) / 2;

    private static List<List<T>> Grouped<T>(IEnumerable<T> pieces, Func<T, T, bool> alike)
    {
        var groups = new List<List<T>>();
        foreach (T piece in pieces)
        {
            if (groups.Find(g => alike(g[0], piece)) is { } group)
                group.Add(piece);
            else
                groups.Add([piece]);
        }

        return groups;
    }
}
