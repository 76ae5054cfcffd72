using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>What holds the cylinder.</summary>
internal static class MountParts
{
    private const string Cylinder = "cylinder";

    /// <summary>Room round a barrel that passes through a plate, m; common practice.</summary>
    private const double Room = 2e-3;

    public static void Draw(PartDraft draft)
    {
        switch (draft.Rig.Cylinder.Mount)
        {
            case RigFlangeMount flange:
                Flange(flange, draft);
                break;
            case RigFootMount { Plate: { } plate } foot:
                draft.Add(Plate("plate over the cylinder", plate, foot.Steel, draft, PlateShape.Rectangle(foot.Span > 0 ? foot.Span + foot.Width : foot.Width, foot.Width),
                    foot.Span > 0 ? "runs on past what it spans by half its width on either side" : "square, as wide as the file says"));
                break;
            case RigCradleMount cradle:
                Cradle(cradle, draft);
                break;
            case RigBracketMount bracket:
                Bracket(bracket, draft);
                break;
            case RigCollarMount collar:
                Collar(collar, draft);
                break;
            case null:
                draft.Undecided("How the cylinder is held: the file has no mount under cylinder.");
                break;
        }

        if (draft.Rig.Cylinder.Mount is not RigFootMount && draft.Rig.Cylinder.Foot is { Thickness: { } t } bearing)
        {
            bool round = bearing.Along == bearing.Across;
            draft.Add(Plate("bearing plate of the cylinder", t, bearing.Steel, draft,
                round ? PlateShape.Disc(bearing.Along) : PlateShape.Rectangle(bearing.Along, bearing.Across), round ? "round" : ""));
        }
    }

    private static void Flange(RigFlangeMount mount, PartDraft draft)
    {
        double hole = ScrewThread.UsualHole(mount.Bolts.Thread.D);
        string bolt = $"bolt {mount.Bolts.Thread.Name}";
        IReadOnlyList<PlateHole> ring = PlateShape.Ring(mount.Circle, mount.Bolts.Count, hole, bolt);
        PlateHole[] holes = [new PlateHole(0, 0, mount.Barrel, "the barrel"), .. ring];
        draft.Add(Plate("flange of the cylinder", mount.Plate, mount.Steel, draft, PlateShape.Disc(mount.Outside), "") with
        {
            Holes = holes,
            Notes = ["Bore it to the barrel you have, and have it on the barrel before it is bolted up: measure, do not trust the drawing of either."],
        });
        double? gap = draft.Rig.Frame is RigClosedFrame { Crown.Shape: Pair pair } ? pair.Apart : null;
        if (gap is null or <= 0)
            return;

        PlateHole[] through = [new PlateHole(0, 0, mount.Barrel + Room, "the barrel, with room"), .. ring];
        double wide = Math.Max(draft.Rig.Frame is RigClosedFrame closed ? closed.Crown.Shape.Properties.Width : 0, mount.Outside);
        draft.Add(Plate("plate under the cylinder's flange", mount.Plate, mount.Steel, draft, PlateShape.Rectangle(mount.Outside + mount.Plate, wide),
            "bridges the two halves of the crown, as thick as the flange and as long as the flange and its thickness; common practice, not checked in the ladder") with
        {
            Holes = through,
            Origin = PartOrigin.Proposed,
        });
    }

    private static void Cradle(RigCradleMount mount, PartDraft draft)
    {
        double high = draft.Rig.Frame.RamDrop > mount.CheekHole ? draft.Rig.Frame.RamDrop : mount.CheekWidth;
        PlateHole[] cheek = mount.CheekHole > 0 ? [new PlateHole(0, 0, mount.CheekHole, "as the file says")] : [];
        draft.Add(Plate("cheek of the cradle", mount.Cheek, mount.Steel, draft, PlateShape.Rectangle(mount.CheekWidth, high),
            "as long as the ram hangs below the crown; the length is the builder's to decide") with
        {
            Count = 2,
            Holes = cheek,
            Origin = PartOrigin.Proposed,
            Places = [],
        });
        draft.Undecided("Length of the cradle's cheeks, and how they are fixed to the crown.");
        PlateHole[] cross = mount.Hole > 0 ? [new PlateHole(0, 0, mount.Hole, "the ram")] : [];
        draft.Add(Plate("cross plate of the cradle", mount.Cross, mount.Steel, draft, PlateShape.Rectangle(mount.Apart, mount.CrossWidth), "fits between the cheeks") with { Holes = cross });
    }

    private static void Bracket(RigBracketMount mount, PartDraft draft)
    {
        double leg = mount.Edge + mount.Reach + mount.Plate / 2;
        var bent = new BentPlate(mount.Width, mount.Plate, [leg, leg], [Math.PI / 2], mount.BendRadius);
        if (!bent.IsPossible)
        {
            draft.Misfit($"The brackets of the cylinder cannot be bent: legs of {Readout.Text(leg, Dimension.Length, draft.Units)} and a radius of {Readout.Text(mount.BendRadius, Dimension.Length, draft.Units)} in plate of {Readout.Text(mount.Plate, Dimension.Length, draft.Units)}.");
            return;
        }

        double hole = ScrewThread.UsualHole(mount.Bolts.Thread.D);
        PlateHole[] holes =
        [
            .. Enumerable.Range(0, mount.Bolts.Count).Select(i => new PlateHole(mount.Edge, mount.Width * ((i + 0.5) / mount.Bolts.Count - 0.5), hole, $"bolt {mount.Bolts.Thread.Name}")),
        ];
        draft.Add(bent.AsPart(holes) with
        {
            Name = "bracket of the cylinder",
            Of = Cylinder,
            Count = mount.Brackets,
            Steel = mount.Steel,
            Origin = PartOrigin.Proposed,
            Rule = "the pulled leg as long as the bolted one; its length and how it takes hold of the cylinder are the builder's to decide",
        });
        draft.Undecided("How the brackets take hold of the cylinder, and how long their pulled legs are.");
    }

    private static void Collar(RigCollarMount mount, PartDraft draft)
    {
        double width = mount.Width > 0 ? mount.Width : 2 * mount.Thread.D, span = mount.Span > 0 ? mount.Span : width;
        PlateHole[] holes = [new PlateHole(0, 0, mount.Thread.D1, $"thread {mount.Thread.Name}") { Thread = mount.Thread }];
        PlatePart plate = Plate("plate of the cylinder's collar", mount.Plate, mount.Steel, draft, PlateShape.Rectangle(span, width),
            mount.Width > 0 ? "as long as it spans: add what it rests on" : "square, twice the collar wide: the file does not say what it spans");
        draft.Add(plate with
        {
            Holes = holes,
            Origin = mount.Width > 0 ? PartOrigin.Described : PartOrigin.Proposed,
            Notes = ["Cut the hole small, then bore it and cut the thread on a lathe to the collar you have."],
        });
        if (!(mount.Width > 0))
            draft.Undecided("What the collar's plate rests on, and how it is fixed to the upper arm or crown: say width and span under cylinder.mount.");
    }

    private static PlatePart Plate(string name, double t, Steel steel, PartDraft draft, Outline blank, string rule) => new()
    {
        Name = name,
        Of = Cylinder,
        Count = 1,
        Steel = steel,
        Thickness = t,
        Blank = blank,
        Rule = rule,
        Places = [draft.Body.RamFace + draft.Rig.Frame.RamDrop * Vector.Up],
    };
}
