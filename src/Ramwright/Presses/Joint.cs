using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>How two members are joined.</summary>
[Says("how two members are joined")]
[Kinds(typeof(WeldedJoint), typeof(SlottedJoint), typeof(OnePieceJoint), typeof(BoltedJoint), typeof(PinnedJoint))]
public abstract record Joint
{
    /// <summary>How the beam's end meets the upright.</summary>
    [Says("how the beam's end meets the upright, in a closed frame")]
    public BeamFit? Fit { get; init; }
}

/// <summary>How a beam's end meets an upright.</summary>
public enum BeamFit
{
    /// <summary>The beam's end stands against the inner face of the upright.</summary>
    [Says("the beam stands between the uprights, its ends against their inner faces")]
    Between,
    /// <summary>The beam lies across the end of the upright.</summary>
    [Says("the beam lies across the ends of the uprights")]
    Over,
    /// <summary>The beam's two halves clasp the upright, or the beam lies flat on it.</summary>
    [Says("the beam's two halves clasp the upright")]
    Lapped,
}

/// <summary>Welded face to face.</summary>
[Kind("weld"), Says("welded all round where they touch")]
public sealed record WeldedJoint : Joint
{
    /// <summary>The weld.</summary>
    [Says("the weld")]
    public Weld? Weld { get; init; }

    /// <summary>Gussets in the inner corner.</summary>
    [Says("triangular plates welded into the inner corner")]
    public Gusset? Gusset { get; init; }
}

/// <summary>Passed through a slot and welded all round on both faces.</summary>
[Kind("slot"), Says("passed through a slot in the column and welded all round")]
public sealed record SlottedJoint : Joint
{
    /// <summary>The weld.</summary>
    [Says("the weld")]
    public Weld? Weld { get; init; }

    /// <summary>Gap around the bar in the slot, m.</summary>
    [Says("play of the bar in its slot before welding"), Measure(Dimension.Length, "1 mm", From = 0, UpTo = 0.02)]
    public double? Play { get; init; }
}

/// <summary>Cut from one plate, or bent from one bar: no joint at all.</summary>
[Kind("one-piece"), Says("cut from one plate, or bent from one bar")]
public sealed record OnePieceJoint : Joint
{
    /// <summary>Radius of the inner corner, m.</summary>
    [Says("radius of the inner corner"), Measure(Dimension.Length, "40 mm", From = 0, UpTo = 2)]
    public double? CornerRadius { get; init; }
}

/// <summary>Bolted.</summary>
[Kind("bolt"), Says("bolted")]
public sealed record BoltedJoint : Joint
{
    /// <summary>Thread.</summary>
    [Needed, Says("thread of the bolts"), StockName(StockKind.Thread, "M24")]
    public string? Thread { get; init; }

    /// <summary>Class.</summary>
    [Says("strength class of the bolts"), StockName(StockKind.PropertyClass, "8.8")]
    public string? Class { get; init; }

    /// <summary>Bolts in each of the joint's two ends.</summary>
    [Needed, Says("how many bolts hold each end of a beam"), Measure(Dimension.Count, "4", From = 1, UpTo = 64)]
    public double? Count { get; init; }

    /// <summary>Distance between bolts along the beam, or from side to side of an end plate, m.</summary>
    [Says("distance between bolts along the beam, or side to side of an end plate"), Measure(Dimension.Length, "80 mm", UpTo = 2)]
    public double? Pitch { get; init; }

    /// <summary>Distance between bolts along the upright, m.</summary>
    [Says("distance between bolts along the upright"), Measure(Dimension.Length, "120 mm", UpTo = 2)]
    public double? Gauge { get; init; }

    /// <summary>From the last hole to the edge, in the direction of the force, m.</summary>
    [Says("from the centre of the last hole to the edge, along the force"), Measure(Dimension.Length, "50 mm", UpTo = 1)]
    public double? Edge { get; init; }

    /// <summary>Least thickness that the bolts bear on in one direction, m.</summary>
    [Says("least thickness the bolts bear on in one direction, all plates added"), Measure(Dimension.Length, "12 mm", UpTo = 0.5)]
    public double? Plate { get; init; }

    /// <summary>Length of thread in mesh where the bolts go into tapped holes or thin nuts, m.</summary>
    [Says("length of thread in mesh, where the bolts go into tapped holes or thin nuts"), Measure(Dimension.Length, "24 mm", UpTo = 0.5)]
    public double? Engagement { get; init; }

    /// <summary>How many planes of each bolt are sheared.</summary>
    [Says("how many planes of each bolt are sheared"), Measure(Dimension.Count, "1", From = 1, UpTo = 2)]
    public double? ShearPlanes { get; init; }

    /// <summary>The plate on the beam's end.</summary>
    [Says("the plate welded on the beam's end, where it is bolted face to face")]
    public BoltedEnd? EndPlate { get; init; }

    /// <summary>Slip factor μ of the faces, where the bolts are tightened to the code's preload.</summary>
    [Says("slip factor of the faces, where the bolts are tightened to 0.7 of their strength"), Measure(Dimension.Number, "0.3", From = 0.05, UpTo = 0.6)]
    public double? Friction { get; init; }
}

/// <summary>The plate on a beam's end that bolts go through.</summary>
[Says("the plate welded on a beam's end that the bolts go through")]
public sealed record BoltedEnd
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "25 mm", UpTo = 0.2)]
    public double? Thickness { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Its weld to the beam, all round.</summary>
    [Says("its weld to the beam, all round")]
    public Weld? Weld { get; init; }
}

/// <summary>Held by one pin at each end.</summary>
[Kind("pin"), Says("held by one pin at each end")]
public sealed record PinnedJoint : Joint
{
    /// <summary>Diameter of the pin, m.</summary>
    [Needed, Says("diameter of the pin"), Measure(Dimension.Length, "40 mm", UpTo = 0.5)]
    public double? Diameter { get; init; }

    /// <summary>Steel of the pin.</summary>
    [Says("steel of the pin"), StockName(StockKind.Steel, "C45+QT")]
    public string? Steel { get; init; }

    /// <summary>Thickness of the middle plate, m.</summary>
    [Says("thickness of the middle part"), Measure(Dimension.Length, "30 mm", UpTo = 1)]
    public double? Middle { get; init; }

    /// <summary>Thickness of each outer plate, m.</summary>
    [Says("thickness of each outer plate"), Measure(Dimension.Length, "15 mm", UpTo = 1)]
    public double? Outer { get; init; }

    /// <summary>Gap between middle and outer, m.</summary>
    [Says("gap between middle and outer"), Measure(Dimension.Length, "2 mm", From = 0, UpTo = 0.2)]
    public double? Gap { get; init; }
}

/// <summary>A weld by its leg or its throat.</summary>
[Says("a weld")]
public sealed record Weld
{
    /// <summary>What it is.</summary>
    [Says("fillet or full-penetration butt")]
    public WeldKind? Kind { get; init; }

    /// <summary>Leg length z of a fillet, m.</summary>
    [Says("leg of the fillet"), Measure(Dimension.Length, "8 mm", UpTo = 0.1)]
    public double? Leg { get; init; }

    /// <summary>Throat a of a fillet, m.</summary>
    [Says("throat of the fillet, 0.7 of the leg"), Measure(Dimension.Length, "6 mm", UpTo = 0.1)]
    public double? Throat { get; init; }
}

/// <summary>Kinds of weld.</summary>
public enum WeldKind
{
    /// <summary>A fillet.</summary>
    [Says("a fillet")]
    Fillet,
    /// <summary>A full-penetration butt weld.</summary>
    [Says("a full-penetration butt weld")]
    Butt,
}
