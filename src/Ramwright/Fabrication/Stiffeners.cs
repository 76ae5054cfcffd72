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
            if (Between(one.Shape) is not var (outline, sides, _))
            {
                draft.Undecided($"Shape of the stiffening plates of the {member.Key}: {one.Shape.Name} has no flanges for them to stand between.");
                continue;
            }

            int places = Places(draft.Plan, member.Key, member.Count());
            draft.Add(new PlatePart
            {
                Name = $"stiffener of the {member.Key}",
                Of = member.Key,
                Count = places * sides,
                Steel = one.Member.Steel,
                Thickness = one.Member.Stiffened!.Value,
                Blank = outline,
                Rule = "fits between the flanges, as wide as they reach beside the web, clipped at the root by its radius",
            });
        }
    }

    /// <summary>How often a member has them: a beam under the ram force, what it is joined to in line with both its flanges.</summary>
    /// <param name="plan">The frame.</param>
    /// <param name="part">The member.</param>
    /// <param name="pieces">Pieces of the member.</param>
    internal static int Places(FramePlan plan, string part, int pieces)
    {
        int joints = plan.Joints.Count(j => j.Onto.Part == part && j.Joint.Fit != BeamFit.Lapped);
        return joints > 0 ? 2 * joints : pieces;
    }

    /// <summary>The plate that stands between the flanges of a section, on how many sides of its web, and the edges of one that are welded, m; null where nothing can stand.</summary>
    internal static (Outline Outline, int Sides, double Welded)? Between(Shape shape) => shape switch
    {
        ISection i => ((i.B - i.Tw) / 2, i.WebHeight) is var (wide, high) ? (Clipped(wide, high, i.R), 2, 2 * (wide - i.R) + high - 2 * i.R) : null,
        // the flanges' taper is ground off the plate
        Channel c => (c.B - c.Tw, c.H - 2 * c.FlangeAt(c.Tw + (c.B - c.Tw) / 2)) is var (wide, high) ? (Clipped(wide, high, c.R1), 1, 2 * (wide - c.R1) + high - 2 * c.R1) : null,
        _ => null,
    };

    private static Outline Clipped(double wide, double high, double clip) => new(
    [
        clip > 0
            ? [new Corner(clip, 0), new Corner(wide, 0), new Corner(wide, high), new Corner(clip, high), new Corner(0, high - clip), new Corner(0, clip)]
            : Loops.Rectangle(0, wide, 0, high),
    ]);
}
