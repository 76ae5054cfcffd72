using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Stock;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>The right front quarter of a closed frame, and only the upper half of that where crown and bed are alike.</summary>
internal static class ClosedSolid
{
    private const int Crown = 0, Bed = 1, Upright = 2, UpperBolster = 3, LowerBolster = 4, Plates = 5;

    public static SolidFrame Of(Study study, RigClosedFrame frame, bool offToFront = false)
    {
        SectionProperties crown = frame.Crown.Shape.Properties, bed = frame.Bed.Shape.Properties, upright = frame.Upright.Shape.Properties;
        double height = bed.Top + frame.Daylight + frame.RamDrop + crown.Bottom, half = frame.Width / 2, axis = half + upright.Bottom;
        double outer = half + upright.Height, die = frame.DieWidth / 2;
        bool alike = frame.Crown.Shape == frame.Bed.Shape && frame.CrownJoint.Fit == frame.BedJoint.Fit;
        double middle = height / 2;
        var front = Cuboid.Everywhere with { X0 = 0, Y0 = 0, Z0 = alike ? middle : double.NegativeInfinity };
        var blocks = new List<(int Body, Cuboid Box)>();
        void Add(int body, IEnumerable<Cuboid> boxes) =>
            blocks.AddRange(boxes.Select(b => b.And(front)).Where(b => b.IsSolid).Select(b => (body, b)));

        IReadOnlyList<Wall> crownWalls = Wall.Of(frame.Crown.Shape), bedWalls = Wall.Of(frame.Bed.Shape), uprightWalls = Wall.Of(frame.Upright.Shape);
        double Reach(RigJoint joint) => joint.Fit == BeamFit.Between ? half : outer;
        Add(Crown, crownWalls.Select(w => w.AlongX(0, Reach(frame.CrownJoint), height)));
        double foot = frame.BedJoint.Fit == BeamFit.Over ? bed.Top : -bed.Bottom;
        double top = height + (frame.CrownJoint.Fit == BeamFit.Over ? -crown.Bottom : crown.Top);
        Add(Upright, uprightWalls.Select(w => w.Upright(foot, top, axis)));
        if (!alike)
            Add(Bed, bedWalls.Select(w => w.AlongX(0, Reach(frame.BedJoint), 0)));

        List<Bond> bonds = [.. Joined(Crown, crownWalls, height, frame.CrownJoint)];
        if (!alike)
            bonds.AddRange(Joined(Bed, bedWalls, 0, frame.BedJoint));

        IEnumerable<Bond> Joined(int beam, IReadOnlyList<Wall> walls, double z, RigJoint joint)
        {
            if (study.Joining == Joining.Whole)
                return [new Bond(beam, Upright, Cuboid.Everywhere)];
            if (study.Joining == Joining.Bolts)
            {
                double p = study.Pitch / 2, s = study.Strip / 2;
                return from x in (double[])[-p, p]
                       from up in (double[])[-p, p]
                       select new Bond(beam, Upright, Cuboid.Everywhere with { X0 = axis + x - s, X1 = axis + x + s, Z0 = z + up - s, Z1 = z + up + s });
            }

            double a = study.Strip;
            return joint.Fit == BeamFit.Between
                ? walls.SelectMany(w => Edges(w.Y0, w.Y1, w.Z0, w.Z1, a).Where(e => e.A1 > 0).Select(e => new Bond(beam, Upright,
                    Cuboid.Everywhere with { Y0 = e.A0, Y1 = e.A1, Z0 = z + e.B0, Z1 = z + e.B1 })))
                : uprightWalls.SelectMany(w => Edges(w.Z0, w.Z1, w.Y0, w.Y1, a).Where(e => e.B1 > 0).Select(e => new Bond(beam, Upright,
                    Cuboid.Everywhere with { X0 = axis + e.A0, X1 = axis + e.A1, Y0 = e.B0, Y1 = e.B1 })));
        }

        // A single part is pressed on its webs; a pair through a bolster that ties its halves.
        Cuboid[] under = [new Cuboid(-die, die, 0, 0, 0, 0)];
        double bolster = 0.05;
        (int Body, double At, Cuboid[] On) Pressed(int body, int pad, RigMember member, IReadOnlyList<Wall> walls, double face, int inward)
        {
            Cuboid[] webs = [.. walls.Where(w => w.IsWeb).Select(w => Cuboid.Everywhere with { X0 = -die, X1 = die, Y0 = w.Y0, Y1 = w.Y1 })];
            if (member.Shape is not Pair)
                return (body, face, webs);
            double y = member.Shape.Properties.Right, at = face + inward * bolster;
            Add(pad, [new Cuboid(-die, die, -y, y, Math.Min(face, at), Math.Max(face, at))]);
            bonds.Add(new Bond(pad, body, Cuboid.Everywhere));
            return (pad, at, webs);
        }

        (int Body, double At, Cuboid[] On) upper = Pressed(Crown, UpperBolster, frame.Crown, crownWalls, height - crown.Bottom, -1);
        (int Body, double At, Cuboid[] On) lower = alike ? default : Pressed(Bed, LowerBolster, frame.Bed, bedWalls, bed.Top, 1);
        // the halves of a paired upright are tied by plates between them at the beams' edges
        if (frame.Upright.Shape is Pair { ToesTogether: true } pair)
        {
            double inside = upright.Right - pair.Half.Thinnest, plate = 0.012;
            foreach ((double z, SectionProperties beam, bool drawn) in ((double, SectionProperties, bool)[])[(height, crown, true), (0, bed, !alike)])
                foreach (double at in (double[])[z - beam.Bottom, z + beam.Top - plate])
                    if (drawn)
                        Add(Plates, PlateBetween(pair, uprightWalls, axis, inside, at, at + plate));
            bonds.Add(new Bond(Plates, Upright, Cuboid.Everywhere));
        }

        var mesh = new BrickMesh(blocks, [], bonds, [.. under, .. upper.On, .. lower.On ?? []], study.Fine, study.Coarse, study.Middles);
        var model = new SolidModel(mesh);
        model.HoldPlane(0, 0, 0);
        if (offToFront)
        {
            // front and back move against each other: nothing in the middle plane moves across it or up
            model.HoldPlane(1, 0, 0);
            model.HoldPlane(1, 0, 2);
        }
        else
        {
            model.HoldPlane(1, 0, 1);
        }

        Dictionary<int, double> crownSection = mesh.Face(Crown, 0, 0, Cuboid.Everywhere);
        Dictionary<int, double> onUpper = Faces(mesh, upper);
        Dictionary<int, double>? bedSection = null, onLower = null;
        if (offToFront)
            model.Tilt(onUpper, 0.25);
        else
            model.Push(onUpper, 0.25 * Vector.Up);
        if (alike)
        {
            model.HoldPlane(2, middle, 2);
        }
        else
        {
            bedSection = mesh.Face(Bed, 0, 0, Cuboid.Everywhere);
            onLower = Faces(mesh, lower);
            model.Push(onLower, -0.25 * Vector.Up);
            model.Held.Add((bedSection.Keys.Min(), 2));
        }

        // under the die, but half way to the upright where a bolster is one with the beam there; and at the middle of the upright's clear length
        double x = frame.Crown.Shape is Pair || frame.Bed.Shape is Pair ? (die + half) / 2 : 1e-6, mid = (bed.Top + height - crown.Bottom) / 2 + 1e-6;
        string where = x > die ? "between die and upright" : "at mid-span";
        List<Place> places =
        [
            new($"crown, {where}", new Cut("CROWN", Crown, 0, x), 2, 1, frame.Crown, new Vector(x, 0, height)),
            new("upright, at half height", new Cut("UPRIGHT", Upright, 2, mid), 0, 1, frame.Upright, new Vector(axis, 0, mid)),
        ];
        if (!alike)
            places.Add(new($"bed, {where}", new Cut("BED", Bed, 0, x), 2, 1, frame.Bed, new Vector(x, 0, 0)));
        model.Cuts.AddRange(places.Select(p => p.Cut));
        return new SolidFrame
        {
            Model = model,
            Upper = onUpper,
            Lower = onLower,
            UpperSection = crownSection,
            LowerSection = bedSection,
            Turning = 0,
            Places = places,
        };
    }

    // what the channels leave free between their webs: over the whole depth in the gap, between the flanges beside it
    private static IEnumerable<Cuboid> PlateBetween(Pair pair, IReadOnlyList<Wall> walls, double axis, double inside, double from, double to)
    {
        Wall web = walls.First(w => w.IsWeb), flange = walls.First(w => !w.IsWeb);
        return
        [
            new Cuboid(axis + web.Z0, axis + web.Z1, -inside, inside, from, to),
            new Cuboid(axis + web.Z1, axis + flange.Z1, -pair.Apart / 2, pair.Apart / 2, from, to),
            new Cuboid(axis - flange.Z1, axis + web.Z0, -pair.Apart / 2, pair.Apart / 2, from, to),
        ];
    }

    private static Dictionary<int, double> Faces(BrickMesh mesh, (int Body, double At, Cuboid[] On) pressed)
    {
        var all = new Dictionary<int, double>();
        foreach (Cuboid on in pressed.On.Where(b => !(b.Y1 <= 0)))
            foreach ((int node, double share) in mesh.Face(pressed.Body, 2, pressed.At, on))
                all[node] = all.GetValueOrDefault(node) + share;
        return all;
    }

    /// <summary>The strips along the four edges of a rectangle.</summary>
    internal static IEnumerable<(double A0, double A1, double B0, double B1)> Edges(double a0, double a1, double b0, double b1, double strip) =>
    [
        (a0, Math.Min(a1, a0 + strip), b0, b1), (Math.Max(a0, a1 - strip), a1, b0, b1),
        (a0, a1, b0, Math.Min(b1, b0 + strip)), (a0, a1, Math.Max(b0, b1 - strip), b1),
    ];
}
