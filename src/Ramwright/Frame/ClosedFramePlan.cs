using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>
/// Crown and bed between two uprights, centreline to centreline. Beams bend about their y in the plane of the frame;
/// uprights turn their top edge outward.
/// </summary>
internal static class ClosedFramePlan
{
    public static FramePlan Of(RigClosedFrame frame, Rig rig)
    {
        SectionProperties crown = frame.Crown.Shape.Properties;
        SectionProperties bed = frame.Bed.Shape.Properties;
        SectionProperties upright = frame.Upright.Shape.Properties;

        double half = frame.Width / 2 + upright.Bottom;
        double height = bed.Top + frame.Daylight + frame.RamDrop + crown.Bottom;
        double off = Math.Min(rig.Loading.Across, 0.95 * half);
        bool split = off > 0;

        var nodes = new List<Node>
        {
            new("bed, left end", new Vector(-half, 0, 0)),
            new("bed, under the ram", Vector.Zero),
            new("bed, right end", new Vector(half, 0, 0)),
            new("crown, left end", new Vector(-half, 0, height)),
            new("crown, above the ram", new Vector(0, 0, height)),
            new("crown, right end", new Vector(half, 0, height)),
        };
        if (split)
            nodes.Add(new Node("bed, under off-centre work", new Vector(off, 0, 0)));

        var beams = new List<FrameMember>();
        int Beam(RigMember part, int from, int to, Vector up, EndFixity start, EndFixity end)
        {
            beams.Add(new FrameMember
            {
                Part = part.Part, From = from, To = to, Section = part.Shape.Properties, Up = up, FixityFrom = start, FixityTo = end,
            });
            return beams.Count - 1;
        }

        EndFixity crownEnd = Hold(frame.CrownJoint), bedEnd = Hold(frame.BedJoint), rigid = EndFixity.Rigid;
        int crownLeft = Beam(frame.Crown, 3, 4, Vector.Up, crownEnd, rigid);
        int crownRight = Beam(frame.Crown, 4, 5, Vector.Up, rigid, crownEnd);
        int bedLeft = Beam(frame.Bed, 0, 1, Vector.Up, bedEnd, rigid);
        int bedMiddle = split ? Beam(frame.Bed, 1, 6, Vector.Up, rigid, rigid) : -1;
        int bedRight = Beam(frame.Bed, split ? 6 : 1, 2, Vector.Up, rigid, bedEnd);
        int left = Beam(frame.Upright, 0, 3, -Vector.Across, rigid, rigid);
        int right = Beam(frame.Upright, 2, 5, Vector.Across, rigid, rigid);

        double contact = Math.Max(bed.Top, height - crown.Bottom - frame.RamDrop - rig.Cylinder.Stroke);
        var loads = new UnitLoads(new Vector(0, 0, height), Vector.Zero, new Vector(0, 0, contact));
        var span = new Span(half, off, frame.DieWidth, crownLeft, crownRight, bedLeft, bedMiddle, bedRight);
        var cases = loads.Cases(rig.Loading).Select(span.Case).ToArray();

        double face = upright.Bottom;       // a beam's clear span starts at the upright's inner face
        double mid = height / 2;
        var parts = new List<PlanPart>
        {
            new(frame.Crown, [crownLeft, crownRight], 2 * half,
            [
                new(crownLeft, face, "at the left upright", PlanCut.Joint), new(crownLeft, half, "under the cylinder", PlanCut.Openings),
                new(crownRight, 0, "under the cylinder", PlanCut.Openings), new(crownRight, half - face, "at the right upright", PlanCut.Joint),
            ]),
            new(frame.Bed, split ? [bedLeft, bedMiddle, bedRight] : [bedLeft, bedRight], 2 * half, BedStations()),
            new(frame.Upright, [left, right], height,
            [
                new(left, bed.Top, "above the bed", PlanCut.Both), new(left, mid, "at half height", PlanCut.Openings), new(left, height - crown.Bottom, "below the crown", PlanCut.Both),
                new(right, bed.Top, "above the bed", PlanCut.Both), new(right, mid, "at half height", PlanCut.Openings), new(right, height - crown.Bottom, "below the crown", PlanCut.Both),
            ]),
        };

        PlanStation[] BedStations()
        {
            var at = new List<PlanStation>
            {
                new(bedLeft, face, "at the left upright", PlanCut.Joint), new(bedLeft, half, "under the work", PlanCut.Openings),
                new(bedRight, half - off - face, "at the right upright", PlanCut.Joint),
            };
            if (split)
            {
                at.Add(new PlanStation(bedMiddle, 0, "under the work", PlanCut.Openings));
                at.Add(new PlanStation(bedMiddle, off, "under off-centre work", PlanCut.Openings));
                at.Add(new PlanStation(bedRight, 0, "under off-centre work", PlanCut.Openings));
            }
            else
            {
                at.Add(new PlanStation(bedRight, 0, "under the work", PlanCut.Openings));
            }

            return [.. at];
        }

        PlanJoint[] joints =
        [
            Corner("crown joint, left", "frame.crown-joint", frame.CrownJoint, frame.Crown, crownLeft, face, left, -1, height),
            Corner("crown joint, right", "frame.crown-joint", frame.CrownJoint, frame.Crown, crownRight, half - face, right, 1, height),
            Corner("bed joint, left", "frame.bed-joint", frame.BedJoint, frame.Bed, bedLeft, face, left, -1, 0),
            Corner("bed joint, right", "frame.bed-joint", frame.BedJoint, frame.Bed, bedRight, (split ? half - off : half) - face, right, 1, 0),
        ];

        PlanJoint Corner(string name, string key, RigJoint joint, RigMember beam, int beamNumber, double beamX, int uprightNumber, int side, double z)
        {
            SectionProperties s = beam.Shape.Properties;
            var corner = new Vector(side * half, 0, z);
            bool top = z > 0;
            switch (joint.Fit)
            {
                case BeamFit.Over:      // the upright's end stands against the beam's inner face
                    return new PlanJoint(name, key, joint, frame.Upright, beam, uprightNumber, top ? height - s.Bottom : s.Top,
                        corner + (top ? -s.Bottom : s.Top) * Vector.Up, Vector.Up, side * Vector.Deep, side * Vector.Across);
                case BeamFit.Lapped:    // the beam's halves clasp the upright
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beamNumber, beamX, corner, Vector.Deep, -Vector.Across, Vector.Up);
                default:                // the beam's end stands against the upright's inner face
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beamNumber, beamX,
                        corner - side * upright.Bottom * Vector.Across, Vector.Across, Vector.Deep, Vector.Up);
            }
        }

        return new FramePlan(
            new FrameModel(nodes, beams, [new Support(1, true, true, true, true, true, true)]),
            cases, parts, joints, Upper: 4, Lower: 1,
            ["The frame is taken as beams from centre line to centre line; corners turn with the members joined there.",
             "Weight is left out: it is small beside the ram force, and presses the parts together.",
             .. frame.CrownJoint is RigBoltedJoint || frame.BedJoint is RigBoltedJoint ? (string[])["Bolted corners are taken not to slip."] : []]);
    }

    private static EndFixity Hold(RigJoint joint) => joint is RigPinnedJoint ? EndFixity.PinnedY : EndFixity.Rigid;

    /// <summary>Lays the halves of a case on crown and bed, spread over the die's width.</summary>
    private sealed record Span(
        double Half, double Off, double Width, int CrownLeft, int CrownRight, int BedLeft, int BedMiddle, int BedRight)
    {
        public LoadCase Case(UnitLoads.Pair pair)
        {
            var onNodes = new List<NodalLoad>();
            var onBeams = new List<MemberLoad>();
            if (Width <= 0)
                onNodes.Add(new NodalLoad(4, pair.UpperForce, pair.UpperMoment));
            else
                Spread(onBeams, pair.UpperForce, 0, [(CrownLeft, -Half, 0), (CrownRight, 0, Half)], pair.UpperMoment, onNodes, 4);

            // work off to one side presses on the bed there, not at the middle
            bool aside = pair.Off.X > 0 && BedMiddle >= 0;
            Vector moment = aside ? pair.LowerMoment - (Off * Vector.Across).Cross(pair.LowerForce) : pair.LowerMoment;
            int node = aside ? 6 : 1;
            if (Width <= 0)
            {
                onNodes.Add(new NodalLoad(node, pair.LowerForce, moment));
            }
            else
            {
                (int, double, double)[] bed = BedMiddle >= 0
                    ? [(BedLeft, -Half, 0), (BedMiddle, 0, Off), (BedRight, Off, Half)]
                    : [(BedLeft, -Half, 0), (BedRight, 0, Half)];
                Spread(onBeams, pair.LowerForce, aside ? Off : 0, bed, moment, onNodes, node);
            }

            return new LoadCase(pair.Name, onNodes, onBeams);
        }

        private void Spread(
            List<MemberLoad> onBeams, Vector force, double centre, ReadOnlySpan<(int Beam, double From, double To)> beams,
            Vector moment, List<NodalLoad> onNodes, int node)
        {
            // the part of the die that would hang over the beam's end is left out, so that the whole force stays on it
            double reach = Math.Min(Width / 2, Half - Math.Abs(centre));
            double a = centre - reach, b = centre + reach;
            Vector perMetre = force / (b - a);
            foreach ((int beam, double from, double to) in beams)
            {
                double start = Math.Max(a, from), end = Math.Min(b, to);
                if (end > start)
                    onBeams.Add(new MemberLoad(beam, perMetre, start - from, end - from));
            }

            onNodes.Add(new NodalLoad(node, Vector.Zero, moment));
        }
    }
}
