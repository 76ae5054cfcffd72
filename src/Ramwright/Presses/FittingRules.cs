using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a mount and in what hangs on the ram.</summary>
internal static class FittingRules
{
    public static void Check(Press said, List<Fault> faults)
    {
        switch (said.Cylinder?.Mount)
        {
            case FlangeMount flange:
                Flange(flange, said.Cylinder, faults);
                break;
            case FootMount foot:
                Foot(foot, faults);
                break;
            case CollarMount collar:
                Collar(collar, faults);
                break;
            case CradleMount cradle:
                JointRules.Weld(cradle.Weld, "cylinder.mount.weld", faults);
                break;
            case BracketMount bracket:
                Edge(bracket.Edge, bracket.Thread, "cylinder.mount.edge", faults);
                break;
        }

        if (said.Ram is { } ram)
            Ram(ram, said.Cylinder, faults);
    }

    private static void Flange(FlangeMount said, Cylinder cylinder, List<Fault> faults)
    {
        if (said.Circle <= cylinder.BarrelOutside)
        {
            faults.Add(new Fault("cylinder.mount.circle", "the bolts would stand inside the barrel", "a bolt circle wider than barrel-outside",
                Against: "cylinder.barrel-outside"));
        }

        if (said.Outside <= said.Circle)
            faults.Add(new Fault("cylinder.mount.outside", "the bolts would stand outside the flange", "a flange wider than its bolt circle", Against: "cylinder.mount.circle"));
        if (said.Count is { } n && said.Circle is { } circle && said.Thread is { } name && ThreadText.TryRead(name, out ThreadCall call)
            && Math.Sin(Math.PI / n) * circle <= call.D)
        {
            faults.Add(new Fault("cylinder.mount.count", "so many bolts would stand inside each other", "fewer bolts, or a wider circle", Against: "cylinder.mount.circle"));
        }
    }

    private static void Foot(FootMount said, List<Fault> faults)
    {
        if (said.Hole >= said.Outside)
            faults.Add(new Fault("cylinder.mount.hole", "the recess leaves no face to bear on", "a hole smaller than the outside", Against: "cylinder.mount.outside"));
        if (said.Span is not null && said.Plate is null)
            faults.Add(new Fault("cylinder.mount.span", "there is no plate to span anything", "plate: its thickness, or no span"));
    }

    private static void Collar(CollarMount said, List<Fault> faults)
    {
        if (said.Thread is null && (said.Diameter is null || said.Pitch is null))
        {
            faults.Add(new Fault("cylinder.mount.thread", "the collar's thread is not named", "thread: M120x3, or diameter and pitch for one that is not metric"));
        }
        else if (said.Thread is not null && said.Diameter is not null)
        {
            faults.Add(new Fault("cylinder.mount.diameter", "the collar has two threads", "thread, or diameter with pitch", Against: "cylinder.mount.thread"));
        }

        if (said.Pitch > said.Diameter / 4)
            faults.Add(new Fault("cylinder.mount.pitch", "the thread is too coarse for its diameter", "one inch over the threads per inch", Against: "cylinder.mount.diameter"));
        if (said.Engagement > said.Plate)
            faults.Add(new Fault("cylinder.mount.engagement", "more thread is in mesh than the plate is thick", "no more than plate", Against: "cylinder.mount.plate"));
    }

    private static void Ram(RamEnd said, Cylinder? cylinder, List<Fault> faults)
    {
        if (said.DieHolder is { Thread: null, SetScrew: null })
            faults.Add(new Fault("ram.die-holder", "nothing is said of what holds it", "thread of its screw, or set-screw"));
        if (said.AntiTwist?.Length <= cylinder?.Rod / 2)
            faults.Add(new Fault("ram.anti-twist.length", "the pad would lie inside the ram", "an arm longer than half the rod", Against: "cylinder.rod"));
        if (said.AntiTwist is { } arm)
            JointRules.Weld(arm.Weld, "ram.anti-twist.weld", faults);
        if (said.Saddle?.Hole >= said.Saddle?.Diameter)
            faults.Add(new Fault("ram.saddle.hole", "the hole leaves no face to bear on", "a hole smaller than the diameter", Against: "ram.saddle.diameter"));
    }

    private static void Edge(double? edge, string? thread, string path, List<Fault> faults)
    {
        if (edge is { } e && thread is { } name && ThreadText.TryRead(name, out ThreadCall call) && e <= call.D / 2)
            faults.Add(new Fault(path, "the hole would break out of the edge", "at least one and a half bolt diameters, from the hole's centre", Against: "cylinder.mount.thread"));
    }
}
