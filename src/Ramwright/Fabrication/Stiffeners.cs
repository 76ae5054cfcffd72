using Ramwright.Frame;
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
            if (WebPlate.In(one.Shape) is not { } plate)
            {
                draft.Undecided($"Shape of the stiffening plates of the {member.Key}: {one.Shape.Name} has no flanges for them to stand between.");
                continue;
            }

            int places = Places(draft.Plan, member.Key, member.Count());
            draft.Add(new PlatePart
            {
                Name = $"stiffener of the {member.Key}",
                Of = member.Key,
                Count = places * plate.Sides,
                Steel = one.Member.Steel,
                Thickness = one.Member.Stiffened!.Value,
                Blank = plate.Outline,
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
}
