using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Fits that cannot be.</summary>
internal static class FitRules
{
    public static void Check(PressFit said, string path, PressFrame? frame, List<Fault> faults)
    {
        if (said.Joint is { } joint)
            Check(joint, $"{path}.joint", faults);
        JobRules.OnTheBed(said.Joint?.HubOutside, "the hub", $"{path}.joint.hub-outside", frame, faults);
        if (said.Joint?.Length is { } length)
            JobRules.Fits(2 * length, "shaft over hub", $"{path}.joint.length", said, frame, faults);
    }

    public static void Check(Pull said, string path, Cylinder? cylinder, List<Fault> faults)
    {
        if (said.Joint is null && said.Force is null)
            faults.Add(new Fault($"{path}.joint", "nothing says what the pull needs", new Remark("joint: with its diameter, length and fit; or force: {0}", Remark.About(80e3, Dimension.Force))));
        else if (said.Joint is not null && said.Force is not null)
            faults.Add(new Fault($"{path}.force", "both a joint and a known force", "one of the two", Against: $"{path}.joint"));
        if (said.Joint is { } joint)
            Check(joint, $"{path}.joint", faults);
        if (said.ByRod == true && cylinder is not null and not HollowPlunger)
            faults.Add(new Fault($"{path}.by-rod", "a rod cannot go through this plunger", "by-rod: no, or a cylinder of kind hollow-plunger", Against: "cylinder"));
    }

    private static void Check(FitJoint said, string path, List<Fault> faults)
    {
        if (said.HubOutside <= said.Diameter)
            faults.Add(new Fault($"{path}.hub-outside", "the hub has no wall", "an outside greater than the joint's diameter", Against: $"{path}.diameter"));
        if (said.ShaftBore >= said.Diameter)
            faults.Add(new Fault($"{path}.shaft-bore", "the shaft has no wall", "a bore smaller than the joint's diameter", Against: $"{path}.diameter"));
        if (said.Interference is null && said.Fit is null)
        {
            faults.Add(new Fault($"{path}.interference", "how much bigger the shaft is than the hole is not said", new Remark("interference: {0} as measured, or fit: H7/p6", Remark.About(0.04e-3, Dimension.Length))));
            return;
        }

        if (said.Interference is not null && said.Fit is not null)
            faults.Add(new Fault($"{path}.fit", "both a measured interference and a fit by name", "what was measured", Against: $"{path}.interference"));
        if (said.Interference > 0.004 * said.Diameter)
            faults.Add(new Fault($"{path}.interference", new Remark("{0} is more than 4 thousandths of the diameter: no fit, the hub would yield or split", Remark.Of(said.Interference.Value, Dimension.Length)), "shaft less hole, on the diameter", Against: $"{path}.diameter"));
        if (said.Fit is { } fit && said.Diameter is { } d && IsoFit.Of(fit, d) is null)
        {
            bool known = IsoFit.Names.Any(n => Shelf.SameName(n, fit));
            faults.Add(known
                ? new Fault($"{path}.fit", new Remark("the table of fits goes from {0} to {1}", Remark.Of(IsoFit.Smallest, Dimension.Length), Remark.Of(IsoFit.Largest, Dimension.Length)), "the interference as measured, as interference", Against: $"{path}.diameter")
                : new Fault($"{path}.fit", $"no press fit is called \"{fit}\" here", string.Join(" or ", IsoFit.Names) + "; any other as measured, as interference", NearestWord.Among(fit, IsoFit.Names)));
        }
    }
}
