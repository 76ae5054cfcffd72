using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>
/// A press as a person described it. Null means unsaid: the resolver assumes something and says so. All values SI.
/// </summary>
[Says("a workshop hydraulic press")]
public sealed record Press
{
    /// <summary>The press's name.</summary>
    [Says("what the press is called")]
    public string? Name { get; init; }

    /// <summary>The force it is wanted for, N.</summary>
    [Needed, Says("the ram force the press is wanted for"), Measure(Dimension.Force, "25 t", UpTo = 20e6)]
    public double? Wanted { get; init; }

    /// <summary>The cylinder.</summary>
    [Needed, Says("the cylinder")]
    public Cylinder? Cylinder { get; init; }

    /// <summary>What drives it.</summary>
    [Needed, Says("what drives the cylinder")]
    public Pump? Pump { get; init; }

    /// <summary>Hoses from the pump.</summary>
    [Says("the hoses, in the order the oil meets them")]
    public IReadOnlyList<Line>? Lines { get; init; }

    /// <summary>The oil.</summary>
    [Says("the oil")]
    public Oil? Oil { get; init; }

    /// <summary>The valves.</summary>
    [Says("the valves")]
    public Valves? Valves { get; init; }

    /// <summary>The gauge.</summary>
    [Says("the pressure gauge")]
    public Gauge? Gauge { get; init; }

    /// <summary>What keeps hands out.</summary>
    [Says("what keeps hands out of the closing dies")]
    public Guard? Guard { get; init; }

    /// <summary>The frame.</summary>
    [Needed, Says("the frame that holds the force")]
    public PressFrame? Frame { get; init; }

    /// <summary>What hangs on the ram.</summary>
    [Says("what hangs on the ram: die holder, anti-twist arm, saddle")]
    public RamEnd? Ram { get; init; }

    /// <summary>What carries a pull from the ram to the work.</summary>
    [Says("what carries a pull from the ram to the work: rod, nut, washer, chair")]
    public PullGear? Pull { get; init; }

    /// <summary>How the press is loaded.</summary>
    [Says("how far off centre and how squarely the work is pressed")]
    public Loading? Loading { get; init; }

    /// <summary>The jobs it is to do.</summary>
    [Says("the jobs it is to do")]
    public IReadOnlyList<Job>? Jobs { get; init; }

    /// <summary>The factors between giving and safe.</summary>
    [Says("the factors between the force at which a part gives and the force it is safe to")]
    public Factors? Factors { get; init; }

    /// <summary>How the press is welded.</summary>
    [Says("how the press is welded: process, hydrogen, current, and what is known of the steel")]
    public Welder? Welding { get; init; }

    /// <summary>What things cost.</summary>
    [Says("what things cost, in your own money")]
    public Prices? Costs { get; init; }

    /// <summary>What stands on drawings and rating plate.</summary>
    [Says("what stands on the drawings and on the rating plate")]
    public PaperWork? Papers { get; init; }

    /// <summary>What a kilogram of steel costs, in the person's own money.</summary>
    [Says("what a kilogram of steel costs, in your own money"), Measure(Dimension.Number, "1.6", UpTo = 1e6)]
    public double? PricePerKg { get; init; }

    /// <summary>Parts of the builder's own.</summary>
    [Says("parts of your own, and parts of the press made otherwise than proposed")]
    public IReadOnlyList<OwnPart>? Parts { get; init; }

    /// <summary>Plates to cut from.</summary>
    [Says("the plates you have: remnants first, then sheets you can buy")]
    public IReadOnlyList<SheetInStock>? Sheets { get; init; }

    /// <summary>Bars and sections to saw from.</summary>
    [Says("the bars and sections you have: offcuts first, then lengths you can buy")]
    public IReadOnlyList<BarInStock>? Bars { get; init; }

    /// <summary>How plates are cut and bars are sawn.</summary>
    [Says("how plates are cut and bars are sawn")]
    public Cutting? Cutting { get; init; }

    /// <summary>Further stock tables, as paths beside the press file.</summary>
    [Says("your own stock tables (CSV), as paths beside this file")]
    public IReadOnlyList<string>? Stock { get; init; }
}
