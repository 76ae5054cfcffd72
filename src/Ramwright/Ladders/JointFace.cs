using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>The steel that a beam's end finds on the part it stands against.</summary>
internal static class JointFace
{
    private const double Square = 1 - 1e-6;
    private const double Flush = 1e-4;

    /// <summary>Where a weld round the beam's end finds steel; null where the face is not known.</summary>
    public static WeldLanding? Of(PlanJoint joint, RigWeld weld)
    {
        if (Seen(joint) is not { } seen)
            return null;
        double behind = Math.Min(weld.Throat, joint.Beam.Shape.Thinnest / 2);
        return new WeldLanding(seen.Bands.Select(b => (b.From, b.To)), seen.AcrossV, behind, LeastRun(weld));
    }

    /// <summary>A run shorter than that must not carry load; butt welds are held to the same 30 mm as practice has it.</summary>
    private static double LeastRun(RigWeld weld) => weld.Kind == WeldKind.Fillet ? FilletWeld.LeastLength(weld.Throat) : 30e-3;

    /// <summary>What to say of a beam that finds no steel to be welded to, and which key to change.</summary>
    public static Fault Missed(PlanJoint joint, RigWeld weld)
    {
        (RigMember beam, RigMember onto) = (joint.Beam, joint.Onto);
        Remark least = new($"the {beam.Part} and the {onto.Part} touch along an edge, or on less than the {{0}} that a weld needs (EN 1993-1-8, 4.5.1), or not at all: no weld can hold them",
            Remark.Of(LeastRun(weld), Dimension.Length));
        if (beam.Shape is Pair { Apart: > 0 } halves && Seen(joint) is { } seen)
        {
            (double low, double high) = (seen.Bands.Select(b => b.From).DefaultIfEmpty(0).Min(), seen.Bands.Select(b => b.To).DefaultIfEmpty(0).Max());
            double most = high - low - 2 * halves.Thinnest;
            // in whole millimetres
            most = Math.Floor(most * 1e3 + 1e-6) / 1e3;
            return new Fault(beam.Key + ".apart",
                new Remark($"the halves of the {beam.Part} stand {{0}} apart and the face of the {onto.Part} that they are welded to is {{1}} wide: they pass it by, or touch its edge, and no weld can hold them",
                    Remark.Of(halves.Apart, Dimension.Length), Remark.Of(high - low, Dimension.Length)),
                most > 0 && seen.Bands.Count == 1
                    ? new Remark($"{{0}} or less, so that their webs stand on the {onto.Part}; or bolts and fit: lapped, with halves as far apart as it is wide", Remark.Of(most, Dimension.Length))
                    : $"less, or none, so that their webs stand on the {onto.Part}; or a wider section for it")
            { Against = onto.Key + ".section" };
        }

        return onto.Shape is Pair { Apart: > 0 }
            ? new Fault(onto.Key + ".apart", least, $"halves of the {onto.Part} that stand under the end of the {beam.Part}") { Against = joint.Key }
            : new Fault(joint.Key + (joint.Joint.Fit == BeamFit.Between ? "" : ".fit"), least, $"a section of the {beam.Part} whose end stands on steel of the {onto.Part}") { Against = onto.Key + ".section" };
    }

    // bands of steel on the face that the end stands on; the foremost that it meets, as a beam may reach in between flanges to the web
    private static (IReadOnlyList<SeenFace> Bands, bool AcrossV)? Seen(PlanJoint joint)
    {
        if (joint.Face is not { } face)
            return null;
        // across the face, square to the run of the part
        Vector across = Math.Abs(face.Out.Dot(face.Z)) > Square ? face.Y : Math.Abs(face.Out.Dot(face.Y)) > Square ? face.Z : Vector.Zero;
        bool acrossU = Math.Abs(across.Dot(joint.U)) > Square, acrossV = Math.Abs(across.Dot(joint.V)) > Square;
        if (!acrossU && !acrossV)
            return null;
        Vector t = acrossU ? joint.U : joint.V;
        IReadOnlyList<SeenFace> all = joint.Onto.Shape.CentredOutline.Onto((t.Dot(face.Y), -face.Out.Dot(face.Y)), (t.Dot(face.Z), -face.Out.Dot(face.Z))).FromBelow();
        Extents[] ends = [.. joint.Beam.Shape.CentredOutline.Loops.Select(loop => new Outline([loop]).Extents())];
        bool Met(SeenFace f) => ends.Any(e => Math.Min(f.To, acrossU ? e.Right : e.Top) - Math.Max(f.From, acrossU ? e.Left : e.Bottom) > Flush);
        SeenFace[] met = [.. all.Where(Met)];
        double front = met.Length == 0 || met.Any(f => f.Depth < Flush) ? 0 : met.Min(f => f.Depth);
        return ([.. all.Where(f => Math.Abs(f.Depth - front) < Flush)], acrossV);
    }
}
