using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>Plates between flanges: under the ram force, or in line with the flanges of what meets them.</summary>
internal static class Stiffeners
{
    public static void Draw(PartDraft draft)
    {
        foreach (IGrouping<string, Piece> member in draft.Body.Pieces.Where(p => p is not GussetPlate && p.Member.Stiffened is not null).GroupBy(p => p.Member.Part))
        {
            Piece one = member.First();
            if (Between(one.Shape) is not var (outline, sides))
            {
                draft.Undecided($"Shape of the stiffening plates of the {member.Key}: {one.Shape.Name} has no flanges for them to stand between.");
                continue;
            }

            // a beam has them under the ram force; what it is joined to, in line with both its flanges
            int joints = draft.Plan.Joints.Count(j => j.Onto.Part == member.Key && j.Joint.Fit != BeamFit.Lapped);
            int places = joints > 0 ? 2 * joints : member.Count();
            draft.Add(new PlatePart
            {
                Name = $"stiffener of the {member.Key}",
                Of = member.Key,
                Count = places * sides,
                Steel = one.Member.Steel,
                Thickness = one.Member.Stiffened!.Value,
                Outline = outline,
                Rule = "fits between the flanges, as wide as they reach beside the web, clipped at the root by its radius",
            });
        }
    }

    private static (Outline Outline, int Sides)? Between(Shape shape) => shape switch
    {
        ISection i => (Clipped((i.B - i.Tw) / 2, i.WebHeight, i.R), 2),
        // the flanges' taper is ground off the plate
        Channel c => (Clipped(c.B - c.Tw, c.H - 2 * c.FlangeAt(c.Tw + (c.B - c.Tw) / 2), c.R1), 1),
        _ => null,
    };

    private static Outline Clipped(double wide, double high, double clip) => new(
    [
        clip > 0
            ? [new Corner(clip, 0), new Corner(wide, 0), new Corner(wide, high), new Corner(clip, high), new Corner(0, high - clip), new Corner(0, clip)]
            : Loops.Rectangle(0, wide, 0, high),
    ]);
}
