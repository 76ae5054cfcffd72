using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>Whether two threads go together.</summary>
public enum PortMatch
{
    /// <summary>They are made for each other.</summary>
    Fits,
    /// <summary>They go together with what is said.</summary>
    FitsIf,
    /// <summary>They can be screwed together and must not be.</summary>
    MustNot,
    /// <summary>They cannot be screwed together.</summary>
    Cannot,
}

/// <summary>A thread screwed into a port.</summary>
/// <param name="Match">Whether they go together.</param>
/// <param name="Why">Why, or under what condition.</param>
public sealed record PortMating(PortMatch Match, string Why)
{
    // Threads whose pitches differ by less start on each other and are then forced; the diameters of pipe threads of one size lie
    // within three quarters of a millimetre.
    private const double StartsWithin = 0.15, Clearance = 1.0e-3;

    /// <summary>Which threads may meet.</summary>
    public static readonly Citation Source = Citation.Practice("mating of pipe, flare, cone and boss threads as fitting makers' guides have it");

    /// <summary>Pressure above which plain NPT is not trusted, Pa.</summary>
    public const double NptUpTo = 200e5;

    /// <summary>Weighs a pair.</summary>
    /// <param name="screwed">The thread that is screwed in.</param>
    /// <param name="port">What it is screwed into.</param>
    public static PortMating Of(PortThread screwed, PortThread port)
    {
        ArgumentNullException.ThrowIfNull(screwed);
        ArgumentNullException.ThrowIfNull(port);
        if (!Starts(screwed, port))
        {
            return new PortMating(PortMatch.Cannot, screwed.Family == port.Family
                ? "they are not of one size"
                : "diameter or pitch do not agree, so that neither starts on the other");
        }

        return (screwed.Family, port.Family) switch
        {
            (PortFamily.Npt, PortFamily.Npt) => new(PortMatch.FitsIf, "only with sealant on the thread"),
            (PortFamily.Npt, PortFamily.Nptf) or (PortFamily.Nptf, PortFamily.Npt) =>
                new(PortMatch.FitsIf, "only with sealant on the thread: one half alone has crests that bite"),
            (PortFamily.BritishTaper, PortFamily.BritishTaper) => new(PortMatch.FitsIf, "only with sealant on the thread"),
            (PortFamily.BritishParallel, PortFamily.BritishParallel) =>
                new(PortMatch.FitsIf, "only with a bonded washer, an O-ring under the face or a cone of 60°: the thread itself does not seal"),
            (PortFamily.MetricCone, PortFamily.MetricCone) when !Shelf.SameName(screwed.Name, port.Name) =>
                new(PortMatch.MustNot, "the thread is the same, the cone is not: it is bored for another tube"),
            var (a, b) when a == b => new(PortMatch.Fits, PortFamilyFacts.Of(a).How),
            (PortFamily.BritishTaper, PortFamily.BritishParallel) =>
                new(PortMatch.MustNot, "a taper in a parallel port touches on a turn or two: it splits the port and is no hydraulic seal"),
            (PortFamily.BritishParallel, PortFamily.BritishTaper) =>
                new(PortMatch.MustNot, "a parallel thread jams in a taper before its face seats: nothing seals"),
            (PortFamily.Flare37, PortFamily.UnifiedBoss) or (PortFamily.UnifiedBoss, PortFamily.Flare37) =>
                new(PortMatch.MustNot, "the thread is the same, the seal is not: a flare has no seat in an O-ring boss, and an O-ring none on a flare"),
            (PortFamily.MetricCone, PortFamily.MetricBoss) or (PortFamily.MetricBoss, PortFamily.MetricCone) =>
                new(PortMatch.MustNot, "the thread is the same, the seal is not: a cone has no seat in an O-ring port, and an O-ring none on a cone"),
            var (a, b) when PortFamilyFacts.Of(a).Flank != PortFamilyFacts.Of(b).Flank =>
                new(PortMatch.MustNot, SamePitch(screwed, port)
                    ? "flanks of 55° and 60° at one pitch: they start, then bind and gall, hold at low pressure and let go later"
                    : "flanks of 55° and 60° and a pitch a little off: they can be forced, hold at low pressure and let go later"),
            _ => new(PortMatch.MustNot, "they can be forced on each other and nothing seals"),
        };
    }

    private static bool Starts(PortThread a, PortThread b) =>
        Math.Abs(a.D - b.D) <= (a.Family == b.Family ? 1e-5 : Clearance)
        && Math.Abs(a.P - b.P) <= (a.Family == b.Family ? 1e-6 : StartsWithin * Math.Min(a.P, b.P));

    private static bool SamePitch(PortThread a, PortThread b) => Math.Abs(a.P - b.P) < 1e-6;
}
