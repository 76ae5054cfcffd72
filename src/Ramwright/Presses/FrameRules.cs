using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a frame and the load it carries.</summary>
internal static class FrameRules
{
    public static void Check(PressFrame said, Loading? loading, Shelf? shelf, List<Fault> faults)
    {
        switch (said)
        {
            case ClosedFrame closed:
                Closed(closed, loading, shelf, faults);
                break;
            case OpenFrontFrame open:
                OpenFront(open, loading, shelf, faults);
                break;
            case FreeFrame free:
                FreeFrameRules.Check(free, shelf, faults);
                break;
            case TieRodFrame rods:
                TieRodRules.Check(rods, loading, shelf, faults);
                break;
        }
    }

    private static void Closed(ClosedFrame said, Loading? loading, Shelf? shelf, List<Fault> faults)
    {
        if (said.DieWidth > said.Width)
            faults.Add(new Fault("frame.die-width", "the dies do not fit between the uprights", "dies narrower than the frame's width", Against: "frame.width"));
        if (loading?.OffCentreAcross >= said.Width / 2)
        {
            faults.Add(new Fault("loading.off-centre-across", "the work would stand inside the upright",
                "less than half the clear width", Against: "frame.width"));
        }

        Gussets(said, loading, faults);
        Members(said, shelf, faults, (said.Crown, "crown"), (said.Bed, "bed"), (said.Upright, "upright"));
        JointRules.Check(said.CrownJoint, "frame.crown-joint", shelf, faults);
        JointRules.Check(said.BedJoint, "frame.bed-joint", shelf, faults);
        if (said.BedPins is { } pins)
            Pins(said, pins, faults);
    }

    // gussets must leave room for the dies, for the work and for each other
    private static void Gussets(ClosedFrame said, Loading? loading, List<Fault> faults)
    {
        foreach ((Joint? joint, string key) in ((Joint?, string)[])[(said.CrownJoint, "crown-joint"), (said.BedJoint, "bed-joint")])
        {
            if (joint is not WeldedJoint { Gusset: { LegAlong: { } leg } gusset })
                continue;
            string path = $"frame.{key}.gusset.leg-along";
            double reach = said.DieWidth / 2 + (key == "bed-joint" ? loading?.OffCentreAcross ?? 0 : 0) ?? loading?.OffCentreAcross ?? 0;
            if (leg >= said.Width / 2)
                faults.Add(new Fault(path, "the gussets of both sides run into each other", "less than half the clear width", Against: "frame.width"));
            else if (leg + reach > said.Width / 2)
                faults.Add(new Fault(path, "the dies, or the work off centre, stand on the gussets", "shorter legs or narrower dies", Against: "frame.width"));
            if (gusset.LegUp >= said.Daylight / 2)
                faults.Add(new Fault($"frame.{key}.gusset.leg-up", "the gussets take up the daylight", "less than half the daylight", Against: "frame.daylight"));
        }
    }

    private static void Pins(ClosedFrame said, BedPins pins, List<Fault> faults)
    {
        const string path = "frame.bed-pins";
        if (said.BedJoint is not null)
            faults.Add(new Fault(path, "the bed is said to be joined and to rest on pins", "one of the two", Against: "frame.bed-joint"));
        if (pins.Pitch <= pins.Diameter)
            faults.Add(new Fault(path + ".pitch", "the holes run into each other", "at least two pin diameters", Against: path + ".diameter"));
        if (pins.Edge <= pins.Diameter / 2)
            faults.Add(new Fault(path + ".edge", "the lowest hole would break out of the upright's end", "at least one and a half pin diameters", Against: path + ".diameter"));
        if ((pins.Count - 1) * pins.Pitch >= said.Daylight)
            faults.Add(new Fault(path + ".count", "at its highest the bed would stand in the ram", "rows that end below the ram", Against: "frame.daylight"));
    }

    private static void OpenFront(OpenFrontFrame said, Loading? loading, Shelf? shelf, List<Fault> faults)
    {
        if (said.Throat > said.ArmReach)
        {
            faults.Add(new Fault("frame.throat", "the ram's centre line lies beyond the tips of the arms",
                "a throat smaller than arm-reach; both are measured from the front of the column", Against: "frame.arm-reach"));
        }

        if (loading?.OffCentreDeep >= said.Throat)
        {
            faults.Add(new Fault("loading.off-centre-deep", "the work would stand inside the column", "less than the throat",
                Against: "frame.throat"));
        }

        if (said.ArmJoint is WeldedJoint { Gusset: { } gusset })
        {
            if (gusset.LegAlong + (said.DieDepth ?? said.DieWidth ?? 0) / 2 + (loading?.OffCentreDeep ?? 0) > said.Throat)
                faults.Add(new Fault("frame.arm-joint.gusset.leg-along", "the dies, or the work off centre, stand on the gusset", "a shorter leg", Against: "frame.throat"));
            if (gusset.LegUp >= said.Daylight / 2)
                faults.Add(new Fault("frame.arm-joint.gusset.leg-up", "the gussets take up the daylight", "less than half the daylight", Against: "frame.daylight"));
        }

        Members(said, shelf, faults, (said.Column, "column"), (said.UpperArm, "upper-arm"), (said.LowerArm, "lower-arm"));
        JointRules.Check(said.ArmJoint, "frame.arm-joint", shelf, faults);
    }

    internal static void Members(PressFrame said, Shelf? shelf, List<Fault> faults, params ReadOnlySpan<(Member? Member, string Key)> members)
    {
        foreach ((Member? member, string key) in members)
            JointRules.Weld(member?.Stiffened?.Weld, $"frame.{key}.stiffened.weld", faults);

        if (shelf is not null)
        {
            foreach ((Member? member, string key) in members)
                Apart(member, key, said.Section, shelf, faults);
        }

        Sections(said, faults, members);
    }

    // Only a pair has a gap.
    private static void Apart(Member? member, string key, string? common, Shelf shelf, List<Fault> faults)
    {
        if (member?.Apart is not { } apart || (member.Section ?? common) is not { } name)
            return;
        if (SectionText.TryRead(name, shelf, out _, out _) && !SectionText.TryRead(name, shelf, apart, out _, out ReadingFault? fault))
            faults.Add(new Fault($"frame.{key}.apart", fault.Found, fault.Wanted, Against: member.Section is null ? "frame.section" : $"frame.{key}.section"));
    }

    // Without a section for all, each member must name its own.
    private static void Sections(PressFrame said, List<Fault> faults, ReadOnlySpan<(Member? Member, string Key)> members)
    {
        if (said.Section is not null)
            return;
        bool silent = true;
        foreach ((Member? member, _) in members)
            silent &= member is null;
        if (silent)
        {
            faults.Add(new Fault("frame.section", "no section is named for the frame or any member of it",
                "section: HEB 160 under frame for every member, or a section under each"));
            return;
        }

        foreach ((Member? member, string key) in members)
        {
            if (member?.Section is null)
            {
                faults.Add(new Fault($"frame.{key}.section", $"no section is named for {key}",
                    $"{key}: {{ section: HEB 160 }}, or one section under frame for every member that names none",
                    Against: "frame.section"));
            }
        }
    }
}
