using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a joint.</summary>
internal static class JointRules
{
    // Throat over leg of an equal-legged fillet; a tenth off is rounding to whole millimetres.
    private static readonly double ThroatOverLeg = Math.Sqrt(0.5);
    private const double Rounding = 0.1;

    /// <summary>A thinner fillet must not carry load: EN 1993-1-8:2005, 4.5.2(2), m.</summary>
    internal const double LeastThroat = 3e-3;
    private const double ReadingError = 1e-9;

    public static void Check(Joint? said, string path, Shelf? shelf, List<Fault> faults)
    {
        switch (said)
        {
            case WeldedJoint welded:
                Weld(welded.Weld, path + ".weld", faults);
                if (welded.Gusset is { } gusset)
                    Gusset(welded, gusset, path, faults);
                break;
            case SlottedJoint slotted:
                Weld(slotted.Weld, path + ".weld", faults);
                break;
            case BoltedJoint bolted:
                Bolts(bolted, path, shelf, faults);
                break;
        }
    }

    private static void Gusset(WeldedJoint joint, Gusset said, string path, List<Fault> faults)
    {
        Weld(said.Weld, path + ".gusset.weld", faults);
        if (joint.Fit == BeamFit.Lapped)
            faults.Add(new Fault(path + ".gusset", "a beam that clasps the upright leaves no inner corner for a gusset", "fit: between or fit: over, or no gusset", Against: path + ".fit"));
        if (said is { LegAlong: { } a, LegUp: { } u } && Math.Max(a, u) > RigGusset.MostRatio * Math.Min(a, u) * (1 + ReadingError))
        {
            faults.Add(new Fault(path + ".gusset.leg-up", "one leg of the gusset is more than twice the other, and no limit is known for so slender a triangle",
                "legs nearer to each other", Against: path + ".gusset.leg-along"));
        }
    }

    internal static void Weld(Weld? said, string path, List<Fault> faults)
    {
        if (said is null)
            return;
        if (said.Kind == WeldKind.Butt)
        {
            string? size = said.Leg is not null ? "leg" : said.Throat is not null ? "throat" : null;
            if (size is not null)
            {
                faults.Add(new Fault($"{path}.{size}", $"a full-penetration butt weld has no {size}: it is as thick as the plate",
                    "kind: fillet with its leg or throat, or kind: butt alone", Against: path + ".kind"));
            }
        }
        else if (said.Leg is null && said.Throat is null)
            faults.Add(new Fault(path, "the weld has no size", new Remark("leg: {0} or throat: {1}, or kind: butt if it goes right through the plate", Remark.About(8e-3, Dimension.Length), Remark.About(6e-3, Dimension.Length))));
        else if (said is { Leg: { } leg, Throat: { } throat } && Math.Abs(throat / (ThroatOverLeg * leg) - 1) > Rounding)
        {
            faults.Add(new Fault(path + ".throat", "leg and throat do not belong to one fillet: the throat is 0.7 of the leg",
                "one of the two: the leg is the side you see, the throat is measured through the middle", Against: path + ".leg"));
        }
        else if (said.Throat < LeastThroat * (1 - ReadingError))
            faults.Add(new Fault(path + ".throat", TooThin, new Remark("throat: {0} or more", Remark.About(3e-3, Dimension.Length))));
        else if (said.Throat is null && said.Leg * ThroatOverLeg < LeastThroat * (1 - ReadingError))
            faults.Add(new Fault(path + ".leg", TooThin, new Remark("leg: {0} or more; the throat is 0.7 of it", Remark.About(4.5e-3, Dimension.Length))));
    }

    private static readonly Remark TooThin = new("a fillet with a throat under {0} must not carry load (EN 1993-1-8, 4.5.2)", Remark.Of(3e-3, Dimension.Length));

    private static void Bolts(BoltedJoint said, string path, Shelf? shelf, List<Fault> faults)
    {
        if (said is { Fit: BeamFit.Lapped, EndPlate: not null })
            faults.Add(new Fault(path + ".end-plate", "a beam that clasps the upright has no end plate", "fit: between or fit: over, or no end-plate", Against: path + ".fit"));
        Weld(said.EndPlate?.Weld, path + ".end-plate.weld", faults);
        if (said.Thread is not { } thread || !ThreadText.TryRead(thread, out ThreadCall call))
            return;
        double d = call.D;
        string against = path + ".thread";
        if (said.Pitch <= d)
            faults.Add(new Fault(path + ".pitch", "the bolts would stand inside each other", "at least two and a half bolt diameters", Against: against));
        if (said.Gauge <= d)
            faults.Add(new Fault(path + ".gauge", "the bolts would stand inside each other", "at least two and a half bolt diameters", Against: against));
        if (said.Edge <= d / 2)
        {
            faults.Add(new Fault(path + ".edge", "the hole would break out of the edge", "at least one and a half bolt diameters, from the hole's centre",
                Against: against));
        }

        if (said.Friction is not null && said.Class is not ("8.8" or "10.9"))
        {
            faults.Add(new Fault(path + ".friction", "only bolts of class 8.8 and 10.9 are tightened so hard that the faces hold by friction",
                "class: 8.8 or class: 10.9, or no friction", Against: said.Class is null ? null : path + ".class"));
        }

        if (shelf is not null && said.Class is { } name && !shelf.TryClass(name, d, out _))
        {
            string sizes = Sizes(name, shelf, call.Form);
            if (sizes.Length > 0)
                faults.Add(new Fault(path + ".class", $"class {name} is not made in this size", $"class {name} {sizes}, or another class", Against: against));
        }
    }

    internal static string Sizes(string name, Shelf shelf, ThreadForm form)
    {
        double above = double.PositiveInfinity, upTo = 0;
        foreach (PropertyClass row in shelf.Classes)
        {
            if (!Shelf.SameName(row.Name, name))
                continue;
            above = Math.Min(above, row.Above);
            upTo = Math.Max(upTo, row.UpTo);
        }

        string Size(double m) => form == ThreadForm.Metric ? $"M{m * 1000:0.#}" : $"{m / 0.0254:0.###} in";
        return upTo <= 0 ? "" : above > 0 ? $"above {Size(above)} and up to {Size(upTo)}" : $"up to {Size(upTo)}";
    }
}
