using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>Where the press hangs level: straight above the centre of gravity of all that is placed.</summary>
internal static class LiftingPoint
{
    public static Lifting Of(IReadOnlyList<Part> parts, PartDraft draft)
    {
        double mass = parts.Sum(p => p.Count * (p.Mass ?? 0)), placed = 0;
        Vector moment = Vector.Zero;
        foreach (Part part in parts)
        {
            foreach (Vector at in part.Places)
            {
                placed += part.Mass ?? 0;
                moment += (part.Mass ?? 0) * at;
            }
        }

        Vector centre = placed > 0 ? moment / placed : Vector.Zero;
        double top = draft.Body.Pieces.Max(p => Math.Max(p.From.Z, p.To.Z) + (Math.Abs(p.Along.Z) < 0.5 ? p.Outline.Loops.Max(l => l.Max(c => c.Z)) : 0));
        double floor = draft.Body.Pieces.Min(p => Math.Min(p.From.Z, p.To.Z) + (Math.Abs(p.Along.Z) < 0.5 ? p.Outline.Loops.Min(l => l.Min(c => c.Z)) : 0));
        floor = parts.OfType<PlatePart>().Where(p => p.Of == StandParts.Feet).SelectMany(p => p.Places.Select(at => at.Z - p.Thickness / 2)).Append(floor).Min();
        Vector eye = centre with { Z = top };
        bool onSteel = draft.Body.Pieces.Any(p => WallsMet.Of(p, eye, Vector.Up).Count > 0);
        string[] cautions =
        [
            $"The eye is rated for at least {Readout.Text(mass, Dimension.Mass, draft.Units)}, pulled straight"
                + (onSteel ? "." : "; straight above the centre of gravity there is no steel to screw it into: bridge it by a bar or plate bolted across, builder to decide."),
            $"Parts that are listed weigh {Readout.Text(mass, Dimension.Mass, draft.Units)} together; weigh the press before the first lift, and count oil and dies as well.",
            "Lift by an eye or sling rated for the whole mass, straight above the centre of gravity; try it a hand's width off the floor first, and nobody stands under it or in the way of its swing.",
            "A press is top-heavy: it turns over in a sling that grips it below its centre of gravity.",
        ];
        return new Lifting(mass, centre, placed, eye, cautions) { Floor = floor };
    }
}
