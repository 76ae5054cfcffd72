using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>A closed frame as a solid, from the same pieces that are drawn and sawn.</summary>
internal static class ClosedFrameSolid
{
    public static PressSolid Of(RigClosedFrame frame, Rig rig)
    {
        var drawing = new SolidDrawing();
        FrameBody body = FrameBody.Of(rig);
        var gussets = new List<int>();
        foreach (Piece piece in body.Pieces)
        {
            int part = drawing.Add(piece);
            if (piece is GussetPlate)
                gussets.Add(part);
        }

        double half = ClosedFrameBody.HalfSpan(frame), height = ClosedFrameBody.Height(frame);
        IReadOnlyList<int> crown = drawing.Of(frame.Crown), bed = drawing.Of(frame.Bed), uprights = drawing.Of(frame.Upright);
        Join(crown, frame.CrownJoint, frame.Crown, height);
        Join(bed, frame.BedJoint, frame.Bed, 0);
        OtherHeights();
        foreach (int part in gussets)
            foreach (int other in crown.Concat(bed).Concat(uprights))
                drawing.JoinWhole(part, other);
        SolidTies.PlatesBetween(drawing, frame, height, half);

        double die = drawing.HalfDie(frame.DieWidth);
        var under = Cuboid.Everywhere with { X0 = -die, X1 = die };
        IReadOnlyList<DieFace> upper = drawing.Die(frame.Crown, -1, under, null, "plate under the crown");
        IReadOnlyList<DieFace> lower = drawing.Die(frame.Bed, 1, under, frame.Bolster, "bolster");
        return new PressSolid(drawing.Parts, drawing.Bonds, upper, lower, drawing.Notes)
        {
            Toes = drawing.Toes,
            Blind = drawing.Blind,
            Bolted = drawing.Bolted,
            Yields = drawing.Yields,
            Members = drawing.Members,
            Sections = (new DieSection(drawing.Of(frame.Crown), 0, 0), new DieSection(drawing.Of(frame.Bed), 0, 0)),
            UpperAt = new Vector(0, 0, upper[0].At),
            LowerAt = new Vector(0, 0, lower[0].At),
        };

        // the rows of holes above the one that carries the bed
        void OtherHeights()
        {
            if (frame.BedPins is not { } rows || frame.BedJoint is not RigPinnedJoint pin)
                return;
            foreach (int u in uprights)
                for (int row = 1; row < rows.Count; row++)
                    SolidPins.Empty(drawing, [u], pin.Diameter, Math.CopySign(half, drawing.Parts[u].Blocks[0].Middle(0)), row * rows.Pitch);
            drawing.Note("The bed is drawn at its lowest height, the other holes are empty.");
        }

        void Pin(IReadOnlyList<int> beams, RigPinnedJoint joint, RigMember beam, double z)
        {
            if (joint.Fit != BeamFit.Lapped)
                throw new SolidFaultException($"{beam.Part}: a pin is drawn where two halves clasp the upright; say 'fit: lapped' and a section in two halves");
            foreach (int side in (int[])[-1, 1])
                SolidPins.Add(drawing, $"{(side < 0 ? "left" : "right")} {(z > 0 ? "crown" : "bed")} pin", joint, beams,
                    [.. uprights.Where(u => Math.Sign(drawing.Parts[u].Blocks[0].Middle(0)) == side)], side * half, z, z > 0 ? 1 : -1);
        }

        void Join(IReadOnlyList<int> beams, RigJoint joint, RigMember beam, double z)
        {
            if (joint.Fit == BeamFit.Lapped && beams.Any(p => uprights.Any(u => drawing.Parts[p].Blocks.Any(b => drawing.Parts[u].Blocks.Any(o => b.And(o).IsSolid)))))
                throw new SolidFaultException($"{beam.Part} is said to lap the uprights, but {beam.Shape.Name} would stand in them: a solid is drawn of two halves that clasp them, far enough apart; "
                    + "say such a section, or 'fit: between' or 'over'");
            if (joint is RigPinnedJoint pinned)
            {
                Pin(beams, pinned, beam, z);
                return;
            }

            foreach (int p in beams)
                foreach (int u in uprights)
                {
                    double x = Math.CopySign(half, drawing.Parts[u].Blocks[0].Middle(0));
                    if (joint.Fit == BeamFit.Between)
                        drawing.Reach(p, u, 0);
                    else if (joint.Fit == BeamFit.Over)
                        drawing.Reach(u, p, 2);
                    switch (joint)
                    {
                        case RigBoltedJoint bolted when joint.Fit == BeamFit.Lapped:
                            drawing.Bolt(p, u, bolted, x, z);
                            break;
                        case RigWeldedJoint welded:
                            drawing.Weld(p, u, welded.Weld);
                            break;
                        default:
                            drawing.JoinWhole(p, u);
                            drawing.Note("Faces of bolted and one-piece joints are taken as one over the whole face.");
                            break;
                    }
                }

            if (joint is RigBoltedJoint through && joint.Fit == BeamFit.Lapped && frame.Upright.Shape is Pair { ToesTogether: false })
                foreach (int side in (int[])[-1, 1])
                    drawing.Spacer([.. uprights.Where(u => Math.Sign(drawing.Parts[u].Blocks[0].Middle(0)) == side)], through, side * half, z,
                        z - beam.Shape.Properties.Bottom, z + beam.Shape.Properties.Top);
            if (joint is not RigWeldedJoint { Gusset: null } weld)
                return;
            double leg = weld.Weld.Kind == WeldKind.Fillet ? weld.Weld.Throat * Math.Sqrt(2) : 0;
            string at = z > 0 ? "crown joint" : "bed joint";
            if (joint.Fit == BeamFit.Between)
                foreach (int p in beams)
                    foreach (int side in (int[])[-1, 1])
                    {
                        drawing.Toe(p, $"{at}, {(side < 0 ? "left" : "right")}", 0, side * frame.Width / 2, -side, leg);
                        foreach (int u in uprights.Where(u => Math.Sign(drawing.Parts[u].Blocks[0].Middle(0)) == side))
                            drawing.ToesBeside(u, p, at, 2, 0, side * frame.Width / 2, -side, leg);
                    }
            else if (joint.Fit == BeamFit.Over)
                foreach (int u in uprights)
                {
                    double face = z > 0 ? height - frame.Crown.Shape.Properties.Bottom : frame.Bed.Shape.Properties.Top;
                    drawing.Toe(u, at, 2, face, z > 0 ? -1 : 1, leg);
                    foreach (int p in beams)
                        drawing.ToesBeside(p, u, at, 0, 2, face, z > 0 ? -1 : 1, leg);
                }
        }
    }
}
