using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>How a joint is called on a drawing.</summary>
internal static class JointWords
{
    public static Callout? Of(PlanJoint joint, double x, double y, UnitSystem units, RigWelder welder)
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
        Callout Welded(RigWeld weld, string where) => JointWords.Welded(name, x, y, weld, where, units, welder);
    }

    /// <summary>A weld's sign with what it is for.</summary>
    public static Callout Welded(string part, double x, double y, RigWeld weld, string where, UnitSystem units, RigWelder welder)
    {
        string size = units == UnitSystem.Metric ? Readout.Number(weld.Throat * 1000, 2) : Readout.Number(weld.Throat / 0.0254, 2) + "\"";
        return new Callout(part, x, y, [where])
        {
            WeldSize = (weld.Kind == WeldKind.Butt ? "s" : "a") + size,
            Butt = weld.Kind == WeldKind.Butt,
            WeldTail = Process(welder),
        };
    }

    /// <summary>Number of the process after ISO 4063; nothing where it was assumed, or where one number would say more than the file.</summary>
    private static string Process(RigWelder welder) => welder.Assumed.Any(a => a.What == "welding.process") ? "" : welder.Process switch
    {
        WeldingProcess.Stick or WeldingProcess.LowHydrogenStick => "111",
        WeldingProcess.Wire => "135",
        WeldingProcess.Tig => "141",
        _ => "",
    };
}
