using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>How seal friction was found.</summary>
public enum FrictionFrom
{
    /// <summary>From a load cell or known weights against the gauge.</summary>
    LoadCell,
    /// <summary>From creeping out and back under three or more loads.</summary>
    SeveralLoads,
    /// <summary>From creeping out and back under one load, the rest as the press file has it.</summary>
    OneLoad,
    /// <summary>As the press file has it, anywhere from nothing to twice that.</summary>
    File,
}

/// <summary>
/// From gauge pressure to force at the ram, by what was measured: F = A (p − f(p)) − S while the pressure rises, with the friction's pressure
/// f(p) = f_0 + m p on the other side while it falls.
/// </summary>
public sealed record OilToRam
{
    /// <summary>Friction by creeping out and back: half the difference of the two pressures.</summary>
    public static readonly Citation FrictionSource = Citation.Mechanics("force balance of the piston: friction turns round with the way, the load does not");

    /// <summary>Area that pushes, m².</summary>
    public required double Area { get; init; }
    /// <summary>Friction's pressure at no pressure, Pa.</summary>
    public required double F0 { get; init; }
    /// <summary>Friction's pressure for each pascal.</summary>
    public required double Share { get; init; }
    /// <summary>Return spring, N.</summary>
    public required double Spring { get; init; }
    /// <summary>Where the friction comes from.</summary>
    public required FrictionFrom From { get; init; }
    /// <summary>Standard uncertainty of the friction that grows with pressure, as a share of the force.</summary>
    public double UShare { get; init; }
    /// <summary>Standard uncertainty of the area, as a share of it.</summary>
    public double UArea { get; init; }

    /// <summary>Pressure taken by friction, Pa.</summary>
    /// <param name="p">Gauge pressure, Pa.</param>
    public double Friction(double p) => Math.Max(0, F0 + Share * p);

    /// <summary>Force at the ram, N.</summary>
    /// <param name="p">Gauge pressure, Pa.</param>
    /// <param name="way">Whether the pressure rises or falls.</param>
    public double Force(double p, Way way = Way.Up) => p <= 0 ? 0 : Math.Max(0, Area * (way == Way.Up ? p - Friction(p) : p + Friction(p)) - Spring);

    /// <summary>The area that makes the force, from diameters.</summary>
    /// <param name="cylinder">The cylinder: how many, and what kind.</param>
    /// <param name="D">Bore, m.</param>
    /// <param name="d">Rod, m.</param>
    /// <param name="tube">Centre tube, m; 0 for none.</param>
    /// <returns>m².</returns>
    public static double AreaOf(RigCylinder cylinder, double D, double d, double tube)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        double A = cylinder.PullsByOil && cylinder.Regeneration == Regeneration.Always ? d * d : D * D - tube * tube;
        return cylinder.Count * Math.PI / 4 * A;
    }

    /// <summary>How far a bought cylinder's diameter may be off its nominal size: a tenth of a millimetre or two in a thousand, whichever is more, m.</summary>
    /// <param name="stated">The nominal size, m.</param>
    public static double UnmeasuredDiameter(double stated) => Math.Max(1e-4, 0.002 * stated);

    /// <summary>The return spring with the ram part of the way out, N: its middle and half its reach.</summary>
    /// <param name="cylinder">The cylinder.</param>
    public static Estimate SpringOf(RigCylinder cylinder)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        double half = cylinder.SpringRate * cylinder.Stroke / 2;
        return Estimate.Within(cylinder.SpringPreload + half, half);
    }

    /// <summary>From what was measured, with the file's values where nothing was.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    public static OilToRam Of(PressCheck check, ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        RigCylinder c = check.Rig.Cylinder;
        double area = AreaOf(c, Mean(ReadingKind.Bore, c.Bore), Mean(ReadingKind.Rod, c.Rod), Mean(ReadingKind.CentreTube, c.CentreTube));
        IReadOnlyList<FrictionPair> pairs = FrictionPair.Of(book);
        (double f0, double m, FrictionFrom from) = (0, c.SealFriction, FrictionFrom.File);
        // as the file has it: anywhere from nothing to twice that
        double uShare = Estimate.Within(m, m).U;
        if (pairs.Count >= 3 && FrictionPair.Line(pairs) is { } line)
            (f0, m, uShare, from) = (line.Intercept, line.Slope, line.SlopeU, FrictionFrom.SeveralLoads);
        else if (pairs.Count > 0)
            (f0, from) = (pairs[^1].Friction - m * pairs[^1].Level, FrictionFrom.OneLoad);
        double uBore = book.Values(ReadingKind.Bore).Count > 0 ? book.For(ReadingKind.Bore).Error.U : Estimate.Within(0, UnmeasuredDiameter(c.Bore)).U;
        return new OilToRam { Area = area, F0 = f0, Share = m, Spring = SpringOf(c).Value, From = from, UShare = uShare, UArea = 2 * uBore / c.Bore };

        double Mean(ReadingKind kind, double otherwise) => book.Values(kind) is { Count: > 0 } read ? read.Average() : otherwise;
    }
}

/// <summary>The ram creeping out and back under one load. Pressures in Pa.</summary>
/// <param name="Out">Pressures read on the way out.</param>
/// <param name="Back">Pressures read on the way back.</param>
public sealed record FrictionPair(IReadOnlyList<double> Out, IReadOnlyList<double> Back)
{
    /// <summary>Friction's pressure: half the difference.</summary>
    public double Friction => (Out.Average() - Back.Average()) / 2;
    /// <summary>The pressure it belongs to: between the two.</summary>
    public double Level => (Out.Average() + Back.Average()) / 2;

    /// <summary>Force of the seals, N.</summary>
    /// <param name="A">Area, m².</param>
    /// <param name="w">Where to show the working.</param>
    public double Force(double A, Working? w = null)
    {
        double p1 = Out.Average(), p2 = Back.Average(), F = (p1 - p2) * A / 2;
        w?.Step("F_f", "seal friction", "(p_1 − p_2) A / 2", F, Dimension.Force, OilToRam.FrictionSource,
            ("p_1", p1, Dimension.Pressure), ("p_2", p2, Dimension.Pressure), ("A", A, Dimension.Area));
        return F;
    }

    /// <summary>The load itself, N: friction falls out of the mean.</summary>
    /// <param name="A">Area, m².</param>
    public double Load(double A) => (Out.Average() + Back.Average()) * A / 2;

    /// <summary>Pairs of the log, the lowest load first: readings that name the same load or step belong together.</summary>
    /// <param name="book">The readings.</param>
    public static IReadOnlyList<FrictionPair> Of(ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var back = book.Of(ReadingKind.SlowBack).ToLookup(Load);
        return
        [
            .. book.Of(ReadingKind.SlowOut).GroupBy(Load)
                .Where(g => back.Contains(g.Key))
                .Select(g => new FrictionPair([.. g.Select(r => r.Value)], [.. back[g.Key].Select(r => r.Value)]))
                .OrderBy(p => p.Level),
        ];

        static (double?, int?) Load(Reading r) => (r.OnRam, r.OnRam is null ? r.Step : null);
    }

    /// <summary>Friction's pressure against the pressure, three pairs or more; null where they all stand at one load.</summary>
    /// <param name="pairs">The pairs.</param>
    public static LineFit? Line(IReadOnlyList<FrictionPair> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        return pairs.Count < 3 || pairs.Max(p => p.Level) - pairs.Min(p => p.Level) < 0.1 * pairs.Max(p => p.Level)
            ? null
            : LineFit.Of([.. pairs.Select(p => p.Level)], [.. pairs.Select(p => p.Friction)]);
    }
}
