using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>How a joint is called on a drawing.</summary>
internal static class JointWords
{
    public static Callout? Of(PlanJoint joint, double x, double y, UnitSystem units)
    {
        string Length(double m) => Readout.Text(m, Dimension.Length, units);
        string name = joint.Beam.Part + " joint";
        return joint.Joint switch
        {
            RigSlottedJoint slot => Welded(slot.Weld, $"{joint.Beam.Part}, both faces of the slot"),
            RigWeldedJoint weld => Welded(weld.Weld, $"{joint.Beam.Part}, both sides"),
            RigBoltedJoint bolts => new Callout(name, x, y,
                [name, $"{bolts.Count} x {bolts.Thread.Name} {bolts.Class.Name} each end", $"pitch {Length(bolts.Pitch)}, gauge {Length(bolts.Gauge)}"]),
            RigPinnedJoint pin => new Callout(name, x, y, [name, $"pin {Length(pin.Diameter)}, {pin.Steel.Name}"]),
            _ => null,
        };

        Callout Welded(RigWeld weld, string where) => new(name, x, y, [where])
        {
            WeldSize = weld.Kind == WeldKind.Butt ? "s" + Number(weld.Throat) : "a" + Number(weld.Throat),
            Butt = weld.Kind == WeldKind.Butt,
        };

        string Number(double m) => units == UnitSystem.Metric ? Readout.Number(m * 1000, 2) : Readout.Number(m / 0.0254, 2) + "\"";
    }
}
