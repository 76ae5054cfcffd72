using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>What ties the halves of a pair besides its joints.</summary>
internal static class SolidTies
{
    private const double Plate = 0.012;

    /// <summary>Plates between the halves of uprights that stand toes together, at the edges of the beams that clasp them.</summary>
    public static void PlatesBetween(SolidDrawing drawing, RigClosedFrame frame, double height, double axis)
    {
        if (frame.Upright.Shape is not Pair { ToesTogether: true, Half: Channel } pair || frame.CrownJoint.Fit != BeamFit.Lapped)
            return;
        IReadOnlyList<Wall> walls = Wall.Of(pair);
        double inside = walls.Where(w => w.IsWeb && w.Y0 > 0).Min(w => w.Y0), toes = pair.Apart / 2;
        Wall flange = walls.First(w => !w.IsWeb && w.Z0 > 0), web = walls.First(w => w.IsWeb);
        // plates are cut out at the rounded roots
        double root = walls.FirstOrDefault(w => w.IsRoot) is { IsRoot: true } r ? r.Z1 - r.Z0 : 0;
        foreach (int side in (int[])[-1, 1])
        {
            var blocks = new List<Cuboid>();
            foreach ((double z, SectionProperties beam) in ((double, SectionProperties)[])[(height, frame.Crown.Shape.Properties), (0, frame.Bed.Shape.Properties)])
                foreach (double at in (double[])[z - beam.Bottom, z + beam.Top - Plate])
                {
                    double x = side * axis;
                    blocks.Add(new Cuboid(x + web.Z0 + root, x + web.Z1 - root, -inside, inside, at, at + Plate));
                    if (root > 0)
                    {
                        blocks.Add(new Cuboid(x + web.Z0, x + web.Z0 + root, -inside + root, inside - root, at, at + Plate));
                        blocks.Add(new Cuboid(x + web.Z1 - root, x + web.Z1, -inside + root, inside - root, at, at + Plate));
                    }

                    if (toes > 0)
                    {
                        blocks.Add(new Cuboid(x + web.Z1, x + flange.Z1, -toes, toes, at, at + Plate));
                        blocks.Add(new Cuboid(x - flange.Z1, x + web.Z0, -toes, toes, at, at + Plate));
                    }
                }

            int plates = drawing.AddStandIn($"plates between the halves of the {(side < 0 ? "left" : "right")} upright", blocks);
            foreach (int u in drawing.Of(frame.Upright))
                drawing.JoinWhole(plates, u);
        }

        drawing.Note(new Remark("The halves of the uprights are taken as tied by plates {0} thick at the beams' edges.", Remark.Of(Plate, Dimension.Length)));
    }
}
