using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>An open-front frame as a solid.</summary>
internal static class OpenFrontSolid
{
    /// <summary>How far a bar through a slot stands out at the back, m: the fillet there needs room.</summary>
    private const double Tail = 0.02;

    public static PressSolid Of(RigOpenFrontFrame frame, Rig rig)
    {
        var drawing = new SolidDrawing();
        bool slotted = frame.ArmJoint is RigSlottedJoint;
        SectionProperties c = frame.Column.Shape.Properties;
        double back = c.Top + c.Bottom;
        var parts = new List<(int Part, Piece Piece)>();
        foreach (Piece piece in FrameBody.Of(rig).Pieces)
        {
            Piece drawn = slotted && piece.Name.EndsWith("arm", StringComparison.Ordinal) ? piece with { From = piece.From + Tail * Vector.Deep } : piece;
            parts.Add((drawing.Add(drawn), drawn));
        }

        int[] columns = [.. parts.Where(p => p.Piece.Name == "column").Select(p => p.Part)];
        int[] arms = [.. parts.Where(p => p.Piece.Name.EndsWith("arm", StringComparison.Ordinal)).Select(p => p.Part)];
        foreach (int column in columns)
        {
            // the slot takes the web with it, over the bar's height
            if (slotted)
                drawing.Cut(column, arms.SelectMany(a => drawing.Parts[a].Blocks).Select(b => b with { Y0 = 0, Y1 = back }));
            foreach (int arm in arms)
                Join(arm, column);
        }

        foreach ((int part, Piece piece) in parts)
            if (piece is GussetPlate)
                foreach (int other in arms.Concat(columns))
                    drawing.JoinWhole(part, other);

        double die = drawing.HalfDie(frame.DieWidth);
        var under = Cuboid.Everywhere with { Y0 = -frame.Throat - die, Y1 = -frame.Throat + die };
        IReadOnlyList<DieFace> upper = drawing.Die(frame.UpperArm, -1, under, null, "plate under the upper arm", 1), lower = drawing.Die(frame.LowerArm, 1, under, frame.Bolster, "bolster", 1);
        return new PressSolid(drawing.Parts, drawing.Bonds, upper, lower, drawing.Notes)
        {
            Toes = drawing.Toes,
            Yields = drawing.Yields,
            Members = drawing.Members,
            Sections = (new DieSection(drawing.Of(frame.UpperArm), 1, -frame.Throat), new DieSection(drawing.Of(frame.LowerArm), 1, -frame.Throat)),
            UpperAt = new Vector(0, -frame.Throat, upper[0].At),
            LowerAt = new Vector(0, -frame.Throat, lower[0].At),
            Turning = 1,
        };

        void Join(int arm, int column)
        {
            string name = $"{drawing.Parts[arm].Name} joint";
            if (!slotted)
                drawing.Reach(arm, column, 1);
            switch (frame.ArmJoint)
            {
                case RigSlottedJoint slot:
                    double deep = slot.Weld.Kind == WeldKind.Fillet ? slot.Weld.Throat : Flange(frame.Column.Shape, back);
                    drawing.JoinIn(arm, column, Cuboid.Everywhere with { Y0 = 0, Y1 = deep });
                    drawing.JoinIn(arm, column, Cuboid.Everywhere with { Y0 = back - deep, Y1 = back });
                    drawing.Note("The bar is joined to the column only along a strip as deep as the throat at its front and back faces; its play in the slot is left out.");
                    drawing.Note(new Remark("The slot takes the column's web with it over the bar's height; the bar stands out {0} at the back.", Remark.Of(Tail, Dimension.Length)));
                    Toe(slot.Weld);
                    break;
                case RigWeldedJoint weld:
                    drawing.Weld(arm, column, weld.Weld);
                    if (weld.Gusset is null)
                        Toe(weld.Weld);
                    break;
                case RigPinnedJoint:
                    throw new SolidFaultException($"an arm on a single pin swings: the {name} cannot be drawn as a solid");
                default:
                    drawing.JoinWhole(arm, column);
                    drawing.Note("Faces of bolted and one-piece joints are taken as one over the whole face.");
                    break;
            }

            void Toe(RigWeld weld)
            {
                double leg = weld.Kind == WeldKind.Fillet ? weld.Throat * Math.Sqrt(2) : 0;
                drawing.Toe(arm, name, 1, 0, -1, leg);
                drawing.ToesBeside(column, arm, name, 2, 1, 0, -1, leg);
            }
        }
    }

    private static double Flange(Shape column, double depth) =>
        Wall.Of(column).Where(w => !w.IsWeb).Select(w => w.Z1 - w.Z0).DefaultIfEmpty(depth / 2).Max();
}
