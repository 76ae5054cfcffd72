using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a cylinder.</summary>
internal static class CylinderRules
{
    // A seller's tons are seldom honest, but half as much again is another cylinder or a slipped unit.
    private const double WildestLabel = 1.5;

    /// <summary>A thinner ring between rod and bore holds neither a piston's shoulder nor a gland, m; common practice.</summary>
    private const double LeastRing = 1e-3;

    public static void Check(Cylinder said, List<Fault> faults)
    {
        double? bore = said.Bore;
        if (said.Rod is { } rod && bore is { } b)
        {
            if (said is DoubleActing && rod >= b)
            {
                faults.Add(new Fault("cylinder.rod", "the rod leaves no room for oil to pull it back",
                    "a rod thinner than the bore; a plunger as thick as its bore is kind: single-acting", Against: "cylinder.bore"));
            }
            else if (said is DoubleActing && (b - rod) / 2 < LeastRing * (1 - 1e-9))
            {
                faults.Add(new Fault("cylinder.rod",
                    new Remark("the ring of oil that is to pull the rod back would be {0} thick, and under {1} there is no room for a shoulder on the piston", Remark.Of((b - rod) / 2, Dimension.Length), Remark.Of(LeastRing, Dimension.Length)),
                    "a rod thinner than the bore by more than that; a plunger as thick as its bore is kind: single-acting", Against: "cylinder.bore"));
            }
            else if (rod > b)
                faults.Add(new Fault("cylinder.rod", "the rod does not fit into the bore", "a rod thinner than the bore", Against: "cylinder.bore"));
        }

        if (said.BarrelOutside is { } outside && outside <= bore)
        {
            faults.Add(new Fault("cylinder.barrel-outside", "the barrel has no wall", "an outside diameter greater than the bore",
                Against: "cylinder.bore"));
        }

        if (said.RodThread is { } name && ThreadText.TryRead(name, out ThreadCall thread) && thread.D > said.Rod)
            faults.Add(new Fault("cylinder.rod-thread", "the thread is thicker than the rod it is cut on", "a thread no thicker than the rod", Against: "cylinder.rod"));

        if (said.Foot is { Diameter: not null } foot && (foot.Length ?? foot.Width) is not null)
        {
            faults.Add(new Fault("cylinder.foot.diameter", "a foot is round or rectangular, not both", "a diameter, or a length and a width",
                Against: foot.Length is not null ? "cylinder.foot.length" : "cylinder.foot.width"));
        }

        if (said is HollowPlunger hollow)
            Hollow(hollow, faults);
        Label(said, faults);
        Spring(said, faults);
    }

    private static void Hollow(HollowPlunger said, List<Fault> faults)
    {
        const string path = "cylinder.centre-tube";
        if (said.CentreTube is { } tube)
        {
            if (tube >= said.Bore)
                faults.Add(new Fault(path, "the centre tube fills the bore", "a centre tube thinner than the bore", Against: "cylinder.bore"));
            else if (tube >= said.Rod)
                faults.Add(new Fault(path, "the centre tube fills the plunger around it", "a centre tube thinner than the plunger (rod)", Against: "cylinder.rod"));
            if (said.Hole >= tube)
            {
                faults.Add(new Fault("cylinder.hole", "the hole leaves no wall of the centre tube around it",
                    "a hole smaller than the outside of the centre tube", Against: path));
            }
        }
        else if (said.Hole >= (said.Rod ?? said.Bore))
            faults.Add(new Fault("cylinder.hole", "the hole is as wide as the plunger", "a hole smaller than the plunger", Against: "cylinder.rod"));
    }

    private static void Label(Cylinder said, List<Fault> faults)
    {
        if (said is not { RatedForce: { } force, RatedPressure: { } pressure, Bore: { } bore })
            return;
        double tube = (said as HollowPlunger)?.CentreTube ?? 0;
        double area = Math.PI / 4 * (bore * bore - tube * tube);
        if (area > 0 && force > WildestLabel * pressure * area)
        {
            faults.Add(new Fault("cylinder.rated-force",
                "the bore at the rated pressure gives far less than this force: one of the three is wrong",
                "bore, rated-pressure and rated-force that belong together; leave rated-force out if it is only a sticker",
                Against: "cylinder.rated-pressure"));
        }
    }

    private static void Spring(Cylinder said, List<Fault> faults)
    {
        (RamReturn? back, double? preload, double? rate) = said switch
        {
            SingleActing s => (s.Return, s.SpringPreload, s.SpringRate),
            HollowPlunger h => (h.Return, h.SpringPreload, h.SpringRate),
            _ => (null, null, null),
        };
        if (back != RamReturn.Gravity)
            return;
        string? spring = preload > 0 ? "cylinder.spring-preload" : rate > 0 ? "cylinder.spring-rate" : null;
        if (spring is not null)
        {
            faults.Add(new Fault(spring, "there is a spring, yet gravity is to bring the ram back", "return: spring, or no spring",
                Against: "cylinder.return"));
        }
    }
}
