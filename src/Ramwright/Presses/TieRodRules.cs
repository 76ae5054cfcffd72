using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a tie-rod frame.</summary>
internal static class TieRodRules
{
    public static void Check(TieRodFrame said, Loading? loading, Shelf? shelf, List<Fault> faults)
    {
        if (said.DieWidth > said.RodsAcross)
            faults.Add(new Fault("frame.die-width", "the dies do not fit between the rods", "dies narrower than rods-across", Against: "frame.rods-across"));
        if (loading?.OffCentreAcross >= said.RodsAcross / 2)
        {
            faults.Add(new Fault("loading.off-centre-across", "the work would stand on the rods or outside them",
                "less than half of rods-across", Against: "frame.rods-across"));
        }

        Plate(said, said.CrownPlate, said.Crown, "crown", faults);
        Plate(said, said.BedPlate, said.Bed, "bed", faults);
        var beams = new List<(Member?, string)>();
        if (said.CrownPlate is null)
            beams.Add((said.Crown, "crown"));
        if (said.BedPlate is null)
            beams.Add((said.Bed, "bed"));
        if (beams.Count > 0)
            FrameRules.Members(said, shelf, faults, [.. beams]);
        if (said.Rod is { } rod)
            Rod(said, rod, shelf, faults);
    }

    private static void Plate(TieRodFrame said, EndPlate? plate, Member? beam, string key, List<Fault> faults)
    {
        if (plate is null)
            return;
        string path = $"frame.{key}-plate";
        if (beam is not null)
            faults.Add(new Fault(path, $"the {key} is said twice, as a beam and as a plate", "one of the two", Against: "frame." + key));
        if (plate.Hole >= plate.Width)
            faults.Add(new Fault(path + ".hole", "the hole leaves nothing of the plate", "a hole smaller than the width", Against: path + ".width"));
        if (said.RodsDeep >= plate.Width)
            faults.Add(new Fault("frame.rods-deep", $"the rods stand outside the {key} plate", "less than the plate's width", Against: path + ".width"));
        if (plate.Length <= said.RodsAcross)
            faults.Add(new Fault(path + ".length", "the plate does not reach the rods", "more than rods-across", Against: "frame.rods-across"));
        if (plate.Hole >= plate.Length)
            faults.Add(new Fault(path + ".hole", "the hole leaves nothing of the plate", "a hole smaller than the length", Against: path + ".length"));
    }

    private static void Rod(TieRodFrame frame, TieRod said, Shelf? shelf, List<Fault> faults)
    {
        const string path = "frame.rod";
        if (said is { Class: not null, Steel: not null })
            faults.Add(new Fault(path + ".steel", "class and steel both name the strength of the rod", "the class where the rod is marked, else the steel", Against: path + ".class"));
        if (said is { Preload: not null, Torque: not null })
            faults.Add(new Fault(path + ".torque", "preload and torque both say how hard the rod is tightened", "one of the two", Against: path + ".preload"));
        if (said is { Sleeve: not null, Seat: not null and not RodSeat.Sleeve })
            faults.Add(new Fault(path + ".seat", "crown and bed cannot stand against both this and the sleeve", "seat: sleeve, or no sleeve", Against: path + ".sleeve"));
        if (said is { Seat: RodSeat.Sleeve, Sleeve: null })
            faults.Add(new Fault(path + ".seat", "no sleeve is described", new Remark("sleeve: { outside: {0}, inside: {1} }", Remark.About(0.07, Dimension.Length), Remark.About(0.04, Dimension.Length))));
        if (said.Sleeve?.Inside >= said.Sleeve?.Outside)
            faults.Add(new Fault(path + ".sleeve.inside", "the sleeve has no wall", "an inside smaller than the outside", Against: path + ".sleeve.outside"));
        if (said.Thread is not { } thread || !ThreadText.TryRead(thread, out ThreadCall call))
            return;
        double d = call.D;
        if (said.Sleeve?.Inside < Math.Max(d, said.Shank ?? 0))
            faults.Add(new Fault(path + ".sleeve.inside", "the rod does not go through the sleeve", "an inside larger than thread and shank", Against: path + ".thread"));
        if (said.Shank < 0.7 * d || said.Shank > 2 * d)
            faults.Add(new Fault(path + ".shank", "thread and plain part do not belong to one rod", "a shank about as thick as the thread", Against: path + ".thread"));
        if (said.Washer?.Outside <= RodSupport.Flats * d)
            faults.Add(new Fault(path + ".washer.outside", "the washer is no wider than the nut", "about three rod diameters", Against: path + ".thread"));
        if (frame.RodsAcross <= 2 * d)
            faults.Add(new Fault("frame.rods-across", "the nuts would stand inside each other", "more than two rod diameters", Against: path + ".thread"));
        if (frame.RodsDeep <= 2 * d)
            faults.Add(new Fault("frame.rods-deep", "the nuts would stand inside each other", "more than two rod diameters, or no rods-deep for two rods", Against: path + ".thread"));
        if (frame.Daylight <= 2 * said.FreeThread)
            faults.Add(new Fault(path + ".free-thread", "the threads of both ends meet", "less than half the daylight, or no shank where it is threaded throughout", Against: "frame.daylight"));
        if (shelf is not null && said.Class is { } name && !shelf.TryClass(name, d, out _) && JointRules.Sizes(name, shelf, call.Form) is { Length: > 0 } sizes)
            faults.Add(new Fault(path + ".class", $"class {name} is not made in this size", $"class {name} {sizes}, or another class", Against: path + ".thread"));
    }
}
