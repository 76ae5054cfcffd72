using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>The families of threads that hydraulic lines are screwed together with.</summary>
public enum PortFamily
{
    /// <summary>American taper pipe thread, sealed on the thread.</summary>
    Npt,
    /// <summary>American taper pipe thread with crests that bite.</summary>
    Nptf,
    /// <summary>British parallel pipe thread: G, BSPP.</summary>
    BritishParallel,
    /// <summary>British taper pipe thread: R and Rc, BSPT.</summary>
    BritishTaper,
    /// <summary>Unified thread with a flare of 37°: JIC.</summary>
    Flare37,
    /// <summary>Unified thread with an O-ring in the boss: ORB.</summary>
    UnifiedBoss,
    /// <summary>Metric thread with a cone of 24°.</summary>
    MetricCone,
    /// <summary>Metric thread with an O-ring in the port.</summary>
    MetricBoss,
}

/// <summary>What keeps the oil in where two threads meet.</summary>
public enum PortSeal
{
    /// <summary>Tape or sealant on the thread itself.</summary>
    Sealant,
    /// <summary>Crests that crush into each other.</summary>
    Crests,
    /// <summary>A washer with a bonded rubber lip, under the face.</summary>
    BondedWasher,
    /// <summary>An O-ring at the face or in the port's chamfer.</summary>
    ORing,
    /// <summary>Metal on metal: a flare or cone.</summary>
    Cone,
}

/// <summary>What every thread of a family has in common.</summary>
/// <param name="Family">The family.</param>
/// <param name="Says">As the trade calls it.</param>
/// <param name="Flank">Angle between the flanks, °.</param>
/// <param name="Taper">Growth in diameter over length; 0 for a parallel thread.</param>
/// <param name="Seals">What seals it; the first is usual.</param>
/// <param name="How">How it is sealed, in words.</param>
/// <param name="Source">Where that stands.</param>
public sealed record PortFamilyFacts(
    PortFamily Family, string Says, double Flank, double Taper, IReadOnlyList<PortSeal> Seals, string How, Citation Source)
{
    private const double PipeTaper = 1.0 / 16;

    private static readonly PortFamilyFacts[] Known =
    [
        new(PortFamily.Npt, "NPT", 60, PipeTaper, [PortSeal.Sealant], "sealant on the thread", Memory("ASME B1.20.1")),
        new(PortFamily.Nptf, "NPTF", 60, PipeTaper, [PortSeal.Crests, PortSeal.Sealant], "crests that crush, once; sealant after that", Memory("ASME B1.20.3")),
        new(PortFamily.BritishParallel, "BSPP", 55, 0, [PortSeal.BondedWasher, PortSeal.ORing, PortSeal.Cone],
            "a bonded washer or O-ring under the face, or a cone of 60°", Memory("ISO 228-1; ISO 1179-1, ISO 8434-6")),
        new(PortFamily.BritishTaper, "BSPT", 55, PipeTaper, [PortSeal.Sealant], "sealant on the thread", Memory("ISO 7-1")),
        new(PortFamily.Flare37, "JIC", 60, 0, [PortSeal.Cone], "a metal flare of 37°", Memory("SAE J514, ISO 8434-2")),
        new(PortFamily.UnifiedBoss, "ORB", 60, 0, [PortSeal.ORing], "an O-ring in the port's chamfer", Memory("SAE J1926-1, ISO 11926-1")),
        new(PortFamily.MetricCone, "metric 24° cone", 60, 0, [PortSeal.Cone, PortSeal.ORing], "a cone of 24° with cutting ring or O-ring", Memory("ISO 8434-1")),
        new(PortFamily.MetricBoss, "metric O-ring port", 60, 0, [PortSeal.ORing], "an O-ring in the port's chamfer", Memory("ISO 6149-1")),
    ];

    /// <summary>Whether the thread tapers.</summary>
    public bool Tapers => Taper > 0;

    /// <summary>The facts of a family.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A family that does not exist.</exception>
    public static PortFamilyFacts Of(PortFamily family) =>
        Array.Find(Known, k => k.Family == family)
            ?? throw new ArgumentOutOfRangeException(nameof(family), family, "There is no such family of threads.");

    private static Citation Memory(string work) => new(work, "", Standing.FromMemory);
}
