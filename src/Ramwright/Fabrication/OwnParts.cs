using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>The builder's own parts, added or put in the place of those that were drawn up.</summary>
internal static class OwnParts
{
    public static void Put(PartDraft draft)
    {
        foreach (RigOwnPart own in draft.Rig.OwnParts)
        {
            Part? instead = null;
            if (own.InPlaceOf.Length > 0 && (instead = draft.Named(own.InPlaceOf)) is null)
                draft.Misfit($"{own.Name} is to be made in place of {own.InPlaceOf}, and no part is called that; the names are those of the cut list.");
            if (Drawn(own, draft) is not { } part)
                continue;
            if (instead is null)
                draft.Add(part);
            else
                draft.Replace(instead, part with { Of = instead.Of, Places = [.. instead.Places.Take(part.Count)] });
        }
    }

    private static Part? Drawn(RigOwnPart own, PartDraft draft)
    {
        switch (own)
        {
            case RigOwnPlate plate:
                PlateHole[] holes = Holes(plate.Holes);
                return new PlatePart
                {
                    Name = own.Name,
                    Of = "own parts",
                    Count = own.Count,
                    Steel = own.Steel,
                    Origin = PartOrigin.Listed,
                    Thickness = plate.Thickness,
                    Blank = new Outline([plate.Edge]),
                    Holes = holes,
                };
            case RigOwnBentPlate bent:
                var flat = new BentPlate(bent.Width, bent.Thickness, bent.Legs, bent.Bends, bent.Radius);
                if (!flat.IsPossible)
                {
                    draft.Misfit($"{own.Name} cannot be bent: its legs are too short for a radius of {Readout.Text(bent.Radius, Dimension.Length, draft.Units)} in plate of {Readout.Text(bent.Thickness, Dimension.Length, draft.Units)}, or the radius is less than a tenth of the thickness.");
                    return null;
                }

                // the file measures up from the lower edge; the flat pattern is drawn about its middle line
                return flat.AsPart([.. Holes(bent.Holes).Select(h => h with { Z = h.Z - bent.Width / 2 })]) with
                {
                    Name = own.Name,
                    Of = "own parts",
                    Count = own.Count,
                    Steel = own.Steel,
                    Origin = PartOrigin.Listed,
                };
            case RigOwnLength length:
                return new LengthPart { Name = own.Name, Of = "own parts", Count = own.Count, Steel = own.Steel, Origin = PartOrigin.Listed, Section = length.Section, Length = length.Length };
            default:
                throw new NotSupportedException($"{own.GetType().Name} cannot be drawn up.");
        }
    }

    private static PlateHole[] Holes(IReadOnlyList<RigOwnHole> holes) => [.. holes.Select(h => new PlateHole(h.Right, h.Up, h.Diameter, h.For) { MarkOnly = h.Drill })];
}
