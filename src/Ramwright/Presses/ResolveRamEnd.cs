using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles what hangs on the ram.</summary>
internal static class ResolveRamEnd
{
    public static RigRamEnd? Of(RamEnd? said, RigCylinder cylinder, RigLoading loading, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        double strip = said.DieHolder is null ? said.StripOff ?? 0
            : assume.Or(said.StripOff, "ram.strip-off", 0.1, Dimension.Ratio, "a tenth of the ram force strips most stuck dies; common practice");
        return new RigRamEnd(strip, Holder(said.DieHolder, cylinder, shelf, assume), Arm(said.AntiTwist, cylinder, loading, shelf, assume), Cap(said.Saddle, cylinder, shelf, assume));
    }

    private static RigDieHolder? Holder(DieHolder? said, RigCylinder cylinder, Shelf shelf, Assumptions assume)
    {
        const string path = "ram.die-holder";
        if (said is null)
            return null;
        RigScrews? screws = said.Thread is null ? null
            : ResolveScrews.Of(said.Thread, said.Class, assume.Or(said.Count, path + ".count", 1, Dimension.Count, "one screw in the middle"),
                said.Engagement, path, shelf, assume);
        double d = said.SetScrew is { } name ? ResolveJoint.ThreadNamed(name, shelf, path + ".set-screw").D : 0;
        int count = d > 0 ? (int)assume.Or(said.SetScrews, path + ".set-screws", 1, Dimension.Count, "one set screw") : 0;
        double face = screws is null ? said.Face ?? 0
            : assume.Or(said.Face, path + ".face", cylinder.Rod, Dimension.Length, "as wide as the ram");
        return new RigDieHolder(screws, face, d, count);
    }

    private static RigAntiTwist? Arm(AntiTwist? said, RigCylinder cylinder, RigLoading loading, Shelf shelf, Assumptions assume)
    {
        const string path = "ram.anti-twist";
        if (said is null)
            return null;
        double length = Resolver.Needed(said.Length, path + ".length");
        if (length <= cylinder.Rod / 2)
            assume.Fault(path + ".length", "the pad would lie inside the ram", "an arm longer than half the rod");
        string steel = assume.Or(said.Steel, path + ".steel", "unknown", "steel without papers is taken at the lowest structural grade");
        double height = Resolver.Needed(said.Height, path + ".height"), depth = Resolver.Needed(said.Depth, path + ".depth");
        Steel found = Resolver.SteelNamed(steel, shelf, path + ".steel", assume);
        if (said.Weld is not null)
            assume.Caution("Never weld to the ram itself: weld the anti-twist arm to a collar and clamp that on.", CautionKind.Handling);
        double twist = assume.Or(said.Twist, path + ".twist", loading.SideLoad * Math.Max(loading.Across, loading.Deep), Dimension.Length,
            "the side load, acting as far off centre as the work may stand");
        bool guide = said.GuideDepth is not null && said.GuideSpan is not null;
        RigWeld? weld = said.Weld is null ? null : ResolveJoint.Weld(said.Weld, path, Math.Min(height, depth), assume);
        if (weld is { Kind: WeldKind.Fillet } && weld.Throat > Math.Min(height, depth))
            assume.Fault(path + ".weld", "the weld is thicker than the arm", "a fillet no thicker than the arm it holds");
        return new RigAntiTwist
        {
            Length = length,
            Depth = depth,
            Height = height,
            Steel = found,
            Twist = twist,
            Weld = weld,
            GuideDepth = guide ? said.GuideDepth!.Value : 0,
            GuideWidth = guide ? assume.Or(said.GuideWidth, path + ".guide-width", said.GuideDepth!.Value, Dimension.Length, "a square bar") : 0,
            GuideSpan = guide ? said.GuideSpan!.Value : 0,
        };
    }

    private static RigSaddle? Cap(Saddle? said, RigCylinder cylinder, Shelf shelf, Assumptions assume)
    {
        const string path = "ram.saddle";
        if (said is null)
            return null;
        string steel = assume.Or(said.Steel, path + ".steel", "unknown", "steel without papers is taken at the lowest structural grade");
        double diameter = Resolver.Needed(said.Diameter, path + ".diameter"), hole = assume.Or(said.Hole, path + ".hole", 0, Dimension.Length, "a full face");
        if (Math.Max(hole, cylinder.Hole) >= Math.Min(diameter, cylinder.Rod))
            assume.Fault(path + ".diameter", "between the holes of saddle and ram no face is left to bear on", "a saddle wider than the holes");
        return new RigSaddle(diameter, hole, Resolver.SteelNamed(steel, shelf, path + ".steel", assume));
    }
}
