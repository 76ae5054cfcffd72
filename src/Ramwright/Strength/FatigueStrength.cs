using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>
/// One detail that is to stand so many squeezes: which ram force that allows, and how many squeezes a ram force allows.
/// Every squeeze runs from nothing to the full force and back.
/// </summary>
/// <remarks>
/// It <b>gives</b> at the ram force at which the wanted squeezes are used up on the characteristic curve: 95 of 100 such details are still whole
/// then, so this is where cracks begin to be found, not where all break. It is <b>safe to</b> that force over γ_Ff γ_Mf. The mean curve, which half survive, is not
/// used: the standard does not print it. The static load factor plays no part, for a squeeze repeated is the ordinary case and not the rare one. Stress
/// in compression counts as much as tension, as 7.2 asks of welds that are not stress-relieved. Direct and shear stress together follow 8(3), eq. 8.3.
/// Immutable.
/// </remarks>
public sealed class FatigueStrength
{
    /// <summary>Direct stress and shear together.</summary>
    public static readonly Citation BothSource = new("EN 1993-1-9:2005", "8(3), eq. 8.3", Standing.FromMemory);

    private readonly double _squeezes, _fy, _ks, _sigmaR, _tauR;
    private readonly bool _steep;

    /// <summary>Takes a detail.</summary>
    /// <param name="squeezes">How many it is to stand, above zero.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    /// <param name="direct">What the direct stress finds; null where there is none to be looked at.</param>
    /// <param name="shear">What the shear stress finds; null where there is none to be looked at.</param>
    /// <param name="ks">k_s for size, above 0, at most 1.</param>
    /// <exception cref="ArgumentException">Neither detail, or one of the wrong kind.</exception>
    public FatigueStrength(double squeezes, double fy, DetailCategory? direct, DetailCategory? shear = null, double ks = 1)
    {
        if (direct is null && shear is null)
            throw new ArgumentException("a detail is needed", nameof(direct));
        if (direct is { Shear: true })
            throw new ArgumentException("a detail of direct stress is needed", nameof(direct));
        if (shear is { Shear: false })
            throw new ArgumentException("a detail of shear stress is needed", nameof(shear));
        (_squeezes, _fy, _ks) = (Check.Positive(squeezes), Check.Positive(fy), Check.Efficiency(ks));
        (Direct, Shear) = (direct, shear);
        _sigmaR = direct is null ? 0 : Allowed(direct, null);
        _tauR = shear is null ? 0 : Allowed(shear, null);
        _steep = direct is not null && FatigueCurve.IsSteep(direct, squeezes);
    }

    /// <summary>What the direct stress finds.</summary>
    public DetailCategory? Direct { get; }

    /// <summary>What the shear stress finds.</summary>
    public DetailCategory? Shear { get; }

    /// <summary>The detail that leads, for naming.</summary>
    public DetailCategory Detail => Direct ?? Shear!;

    /// <summary>Share of the characteristic strength that a stress uses up: at 1 the squeezes are used up.</summary>
    /// <param name="sigma">Direct stress, Pa, or Pa per newton.</param>
    /// <param name="tau">Shear stress, the same.</param>
    /// <exception cref="ArgumentOutOfRangeException">A stress that is not finite.</exception>
    public double Use(double sigma, double tau)
    {
        (double a, double b) = Shares(sigma, tau);
        if (a == 0 || b == 0)
            return a + b;
        if (!_steep)
            return Math.Pow(Fifth(a) + Fifth(b), 1 / 5.0);
        // (a/u)³ + (b/u)⁵ = 1: the left side is convex in 1/u, so Newton from beyond the root falls onto it
        double F = 1 / Math.Max(a, b);
        for (int i = 0; i < 40; i++)
        {
            double x = F * a, y = F * b, over = Cube(x) + Fifth(y) - 1;
            double step = over / (3 * x * x * a + 5 * y * y * y * y * b);
            F -= step;
            if (step <= 1e-15 * F)
                break;
        }

        return 1 / F;
    }

    /// <summary>Whether a stress uses up more than a share already found; cheaper than <see cref="Use"/>.</summary>
    internal bool UsesMore(double sigma, double tau, double than)
    {
        (double a, double b) = Shares(sigma, tau);
        if (a <= than && b <= than)
            return than > 0 && (_steep ? Cube(a / than) : Fifth(a / than)) + Fifth(b / than) > 1 + 1e-14;
        return true;
    }

    /// <summary>Ram force at which the squeezes are used up.</summary>
    /// <param name="sigma">Direct stress per newton at the ram, Pa.</param>
    /// <param name="tau">Shear stress per newton at the ram, Pa.</param>
    /// <param name="factors">γ_Mf and γ_Ff.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    public Limit? Force(double sigma, double tau, FatigueFactors factors, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(factors);
        double u = Use(sigma, tau);
        if (u < 1 / Limit.Farthest)
            return null;
        if (w is not null)
            Show(sigma, tau, u, w);
        return Limit.FromUse(u, factors.Mf, factors.Ff, w);
    }

    /// <summary>How many squeezes of one ram force it stands, factors included; null where there is no end to it, 0 where the stress is beyond judging.</summary>
    /// <param name="sigma">Direct stress per newton at the ram, Pa.</param>
    /// <param name="tau">Shear stress per newton at the ram, Pa.</param>
    /// <param name="force">Ram force, N, 0 or more.</param>
    /// <param name="factors">γ_Mf and γ_Ff.</param>
    public double? Squeezes(double sigma, double tau, double force, FatigueFactors factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        double times = Check.NotNegative(force) * factors.Both, damage = 0;
        foreach ((DetailCategory? detail, double stress) in (ReadOnlySpan<(DetailCategory?, double)>)[(Direct, sigma), (Shear, tau)])
        {
            if (detail is null)
                continue;
            double range = times * Math.Abs(Check.Finite(stress));
            if (range > FatigueCurve.Cap(detail, _fy) * (1 + 1e-9))
                return 0;
            if (FatigueCurve.Life(detail, range, _ks) is { } N)
                damage += 1 / N;
        }

        return damage > 0 ? 1 / damage : null;
    }

    private (double A, double B) Shares(double sigma, double tau) => (
        Direct is null ? 0 : Math.Abs(Check.Finite(sigma)) / _sigmaR,
        Shear is null ? 0 : Math.Abs(Check.Finite(tau)) / _tauR);

    private double Allowed(DetailCategory detail, Working? w)
    {
        double range = FatigueCurve.Range(detail, _squeezes, _ks, w), cap = FatigueCurve.Cap(detail, _fy), least = Math.Min(range, cap);
        string s = FatigueCurve.Letter(detail);
        w?.Step(s + "_R", "stress range allowed, at most one and a half times yield", detail.Shear ? $"min({s}_N, 1.5 f_y / √(3))" : $"min({s}_N, 1.5 f_y)", least, Dimension.Stress,
            FatigueCurve.CapSource, (s + "_N", range, Dimension.Stress), ("f_y", _fy, Dimension.Stress));
        return least;
    }

    private void Show(double sigma, double tau, double u, Working w)
    {
        w.Note($"Every one of {_squeezes:#,0} squeezes is taken to run from nothing to the full force.");
        if (Direct is not null)
            Allowed(Direct, w);
        if (Shear is not null)
            Allowed(Shear, w);
        (double a, double b) = Shares(sigma, tau);
        if (Direct is not null && Shear is not null)
        {
            Share("u_σ", "direct", "Δσ", sigma, _sigmaR, a);
            Share("u_τ", "shear", "Δτ", tau, _tauR, b);
            w.Take("u", "share of both used by one newton; it solves the next line", u, Dimension.Number, BothSource);
            double one = (_steep ? Cube(a / u) : Fifth(a / u)) + Fifth(b / u);
            w.Step("D", "damage, 1 when used up", _steep ? "(u_σ / u)³ + (u_τ / u)^5" : "(u_σ / u)^5 + (u_τ / u)^5", one, Dimension.Number, BothSource,
                ("u_σ", a, Dimension.Number), ("u_τ", b, Dimension.Number), ("u", u, Dimension.Number));
        }
        else if (Direct is not null)
        {
            Share("u", "direct", "Δσ", sigma, _sigmaR, u);
        }
        else
        {
            Share("u", "shear", "Δτ", tau, _tauR, u);
        }

        void Share(string symbol, string what, string s, double stress, double allowed, double share) =>
            w.Step(symbol, $"share of the {what} stress range used by one newton", $"abs({s}_1) / {s}_R", share, Dimension.Number, FatigueCurve.Source,
                (s + "_1", stress, Dimension.Stress), (s + "_R", allowed, Dimension.Stress));
    }

    private static double Cube(double x) => x * x * x;

    private static double Fifth(double x) => x * x * x * x * x;
}
