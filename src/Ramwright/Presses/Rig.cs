namespace Ramwright.Presses;

/// <summary>A press with every number settled: what was said, and what was assumed openly in place of what was not.</summary>
public sealed record Rig
{
    /// <summary>The press's name.</summary>
    public required string Name { get; init; }
    /// <summary>The force it is wanted for, N.</summary>
    public required double Wanted { get; init; }
    /// <summary>The cylinder.</summary>
    public required RigCylinder Cylinder { get; init; }
    /// <summary>What drives it.</summary>
    public required RigPump Pump { get; init; }
    /// <summary>The lines, in the order the oil meets them.</summary>
    public required IReadOnlyList<RigLine> Lines { get; init; }
    /// <summary>The oil.</summary>
    public required RigOil Oil { get; init; }
    /// <summary>The valves; what is null in it was not said and is not assumed.</summary>
    public Valves Valves { get; init; } = new();
    /// <summary>The gauge; null where none is stated.</summary>
    public RigGauge? Gauge { get; init; }
    /// <summary>What keeps hands out; null where nothing is said of it.</summary>
    public RigGuard? Guard { get; init; }
    /// <summary>The frame.</summary>
    public required RigFrame Frame { get; init; }
    /// <summary>Springs at the frame's joints that were found from solids; null for the rules.</summary>
    public RigSprings? Springs { get; init; }
    /// <summary>How squarely the work is pressed.</summary>
    public required RigLoading Loading { get; init; }
    /// <summary>What hangs on the ram; null where nothing is said of it.</summary>
    public RigRamEnd? Ram { get; init; }
    /// <summary>What carries a pull; null where nothing is said of it.</summary>
    public RigPullGear? Pull { get; init; }
    /// <summary>The jobs it is to do.</summary>
    public IReadOnlyList<RigJob> Jobs { get; init; } = [];
    /// <summary>How it is welded; what was assumed of that is listed there.</summary>
    public required RigWelder Welding { get; init; }
    /// <summary>What things cost, as it was said; nothing is assumed.</summary>
    public Prices Costs { get; init; } = new();
    /// <summary>What stands on drawings and rating plate, as it was said; nothing is assumed.</summary>
    public PaperWork Papers { get; init; } = new();
    /// <summary>Parts of the builder's own.</summary>
    public IReadOnlyList<RigOwnPart> OwnParts { get; init; } = [];
    /// <summary>Plates to cut from.</summary>
    public IReadOnlyList<RigSheet> Sheets { get; init; } = [];
    /// <summary>Bars and sections to saw from.</summary>
    public IReadOnlyList<RigBarInStock> Bars { get; init; } = [];
    /// <summary>How plates are cut and bars are sawn.</summary>
    public RigCutting Cutting { get; init; } = RigCutting.Usual;
    /// <summary>Factors between giving and safe.</summary>
    public required RigFactors Factors { get; init; }
    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<Assumed> Assumed { get; init; }
    /// <summary>What a person must be told because of what the press is made of.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}

/// <summary>A pressure gauge.</summary>
/// <param name="Range">Greatest pressure on its dial, Pa.</param>
/// <param name="Class">Accuracy class: greatest error in per cent of the range.</param>
public sealed record RigGauge(double Range, double Class);

/// <summary>How squarely the work is pressed. SI.</summary>
/// <param name="Across">Off centre to left or right, m.</param>
/// <param name="Deep">Off centre to front or back, m.</param>
/// <param name="SideLoad">Side load as a share of the ram force.</param>
/// <param name="AllowedOpening">How far the dies may open out of parallel, metre per metre.</param>
/// <param name="Squeezes">How many squeezes at the wanted force it is to stand.</param>
/// <param name="SqueezesADay">Squeezes on a working day, where said.</param>
public sealed record RigLoading(
    double Across, double Deep, double SideLoad, double AllowedOpening, double Squeezes, double? SqueezesADay = null)
{
    /// <summary>Last part of the stroke, under load, m.</summary>
    public required double PressingPart { get; init; }
    /// <summary>Force over that part, N.</summary>
    public required double PressingForce { get; init; }
}

/// <summary>Factors between giving and safe.</summary>
/// <param name="Load">On the load, for the frame.</param>
/// <param name="RodBuckling">On the buckling load of the rod.</param>
/// <param name="Barrel">On the yield of the barrel.</param>
/// <param name="Fatigue">On the fatigue strength.</param>
/// <param name="FatigueLoad">On the stress range of a squeeze.</param>
public sealed record RigFactors(double Load, double RodBuckling, double Barrel, double Fatigue, double FatigueLoad);
