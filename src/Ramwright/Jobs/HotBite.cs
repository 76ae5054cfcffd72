using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What a squeezed piece measures at one moment.</summary>
/// <param name="Height">Between the dies, m.</param>
/// <param name="Width">Over all, across the bar, m.</param>
/// <param name="ContactWidth">Where it touches, across the bar, m.</param>
/// <param name="ContactLength">Where it touches, along the bar, m.</param>
/// <param name="Strain">True strain since the touch, ln(h₀/h).</param>
/// <param name="Lengthening">How many times as long the squeezed part has become.</param>
public readonly record struct BiteShape(double Height, double Width, double ContactWidth, double ContactLength, double Strain, double Lengthening)
{
    /// <summary>Contact, m².</summary>
    public double Area => ContactWidth * ContactLength;
}

/// <summary>
/// One squeeze of hot steel between flat dies: a bite on a bar, or a whole piece that is free to spread all round.
/// </summary>
/// <remarks>
/// <para>A bite keeps its length, the dies' width; the metal goes into width by Tomlinson and Stringer's coefficient, the rest into length. A round
/// bar is taken as two flats with round sides between them, so its contact grows from nothing.</para>
/// <para>Pressure: Y at the edge of contact that is about square and free all round, rising to 2k = 2Y/√3 with contact that is much longer than wide
/// (in proportion to 1 − short/long, a judgement); times the greater of the friction hill and, under a bite of a longer bar, the pressure of a narrow tool.</para>
/// </remarks>
public sealed record HotBite : IResistance
{
    /// <summary>Between free edges and plane strain.</summary>
    public static readonly Citation EdgeSource = Citation.Practice("from Y where contact is square to 2Y/√3 where it is long, in proportion");
    /// <summary>Force is pressure times contact.</summary>
    public static readonly Citation ForceSource = Citation.Mechanics("pressure over the contact");
    /// <summary>Volume is kept.</summary>
    public static readonly Citation VolumeSource = Citation.Mechanics("volume is kept; strain is ln of the heights");

    /// <summary>Flow stress.</summary>
    public required FlowStress Law { get; init; }
    /// <summary>Height before, m.</summary>
    public required double Height { get; init; }
    /// <summary>Width across before, m; the diameter of a round bar.</summary>
    public required double Width { get; init; }
    /// <summary>Length of the bite along the bar, or of a whole piece, m.</summary>
    public required double Bite { get; init; }
    /// <summary>Height after, m.</summary>
    public required double Target { get; init; }
    /// <summary>Round section, lying.</summary>
    public bool IsRound { get; init; }
    /// <summary>Nothing of the bar sticks out of the dies: it spreads all round and keeps its volume between them.</summary>
    public bool Whole { get; init; }
    /// <summary>Cylinder on its end; with <see cref="Whole"/> only.</summary>
    public bool IsDisc { get; init; }
    /// <summary>Coulomb's coefficient at the dies; from 1/√3 on it sticks.</summary>
    public double Friction { get; init; } = 0.4;
    /// <summary>How far the edge pressure lies from Y (0) to 2k (1); null goes by the shape of the contact.</summary>
    public double? Edge { get; init; }
    /// <summary>Longest contact the dies allow across the bar, m.</summary>
    public double DieLength { get; init; } = double.PositiveInfinity;

    /// <inheritdoc/>
    public double Travel => Height - Target;

    /// <summary>Metal under the dies at the touch, m³.</summary>
    public double Volume =>
        IsDisc ? Math.PI / 4 * Width * (Width * Height)
        : IsRound ? Math.PI / 4 * Width * (Height * Bite)
        : Width * Height * Bite;

    /// <summary>Contact with each die, m².</summary>
    /// <param name="at">The shape.</param>
    public double ContactArea(BiteShape at) => IsDisc ? CylinderAreas.Circle(at.Width) : at.Area;

    /// <summary>The squeeze of a job, its first where it is drawn out.</summary>
    /// <param name="job">The job.</param>
    public static HotBite Of(RigHotSqueeze job)
    {
        ArgumentNullException.ThrowIfNull(job);
        bool whole = job.OnEnd || job.DieWidth >= job.Length;
        return new HotBite
        {
            Law = LawFor(job),
            Height = job.Height,
            Width = job.Width,
            Bite = whole ? job.Length : job.DrawingOut?.Bite ?? job.DieWidth,
            Target = job.TargetHeight,
            IsRound = job.IsRound && !job.OnEnd,
            IsDisc = job.IsRound && job.OnEnd,
            Whole = whole,
            Friction = job.Friction,
            DieLength = job.OnEnd ? double.PositiveInfinity : job.DieLength,
        };
    }

    /// <summary>The law of flow stress for a job's steel.</summary>
    public static FlowStress LawFor(RigHotSqueeze job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new ShidaFlow(job.Steel.Carbon, job.Steel.Alloy);
    }

    /// <summary>Shape after some travel.</summary>
    /// <param name="travel">m, 0 to <see cref="Travel"/>.</param>
    public BiteShape At(double travel)
    {
        double h = Height - Math.Clamp(travel, 0, Travel);
        double ε = Math.Log(Height / h);
        if (Whole && !IsRound)
        {
            double grown = Math.Sqrt(Height / h);
            return new BiteShape(h, Width * grown, Math.Min(Width * grown, DieLength), Bite * grown, ε, grown);
        }

        double s = Spread.Coefficient(Bite / Width);
        double longer = Math.Pow(Height / h, 1 - s);
        if (!IsRound)
        {
            double w = Spread.WidthAfter(Width, Height, h, s);
            return new BiteShape(h, w, Math.Min(w, DieLength), Bite, ε, longer);
        }

        double A = Math.PI / 4 * Width * Width / longer;
        double flat = Math.Max(0, A / h - Math.PI / 4 * h);
        return new BiteShape(h, flat + h, Math.Min(flat, DieLength), Bite, ε, longer);
    }

    /// <inheritdoc/>
    public double Force(double travel, double speed, double temperature) => Force(travel, speed, temperature, null);

    /// <summary>Force against the ram, N, with its working.</summary>
    public double Force(double travel, double speed, double temperature, Working? w)
    {
        BiteShape at = At(travel);
        double v_ε = Check.NotNegative(speed) / at.Height;
        w?.Step("ε", "true strain", "ln(h_0 / h)", at.Strain, Dimension.Number, VolumeSource, ("h_0", Height, Dimension.Length), ("h", at.Height, Dimension.Length));
        w?.Step("v_ε", "strain rate, per second", "v / h", v_ε, Dimension.Number, VolumeSource, ("v", speed, Dimension.Speed), ("h", at.Height, Dimension.Length));
        double Y = Law.Held(at.Strain, v_ε, temperature, w);
        if (at.Area <= 0 || Y <= 0)
            return 0;
        double p = Pressure(Y, at, w);
        double F = IsDisc ? p * Math.PI / 4 * at.Width * at.Width : p * at.Area;
        if (IsDisc)
            w?.Step("F", "force on the ram", "p π d² / 4", F, Dimension.Force, ForceSource, ("p", p, Dimension.Stress), ("d", at.Width, Dimension.Length));
        else
            w?.Step("F", "force on the ram", "p w b", F, Dimension.Force, ForceSource, ("p", p, Dimension.Stress), ("w", at.ContactWidth, Dimension.Length), ("b", at.ContactLength, Dimension.Length));
        return F;
    }

    /// <summary>Mean pressure on the contact at a flow stress, Pa.</summary>
    /// <param name="Y">Flow stress, Pa, above zero.</param>
    /// <param name="at">The shape.</param>
    /// <param name="w">Where to write it down.</param>
    public double Pressure(double Y, BiteShape at, Working? w = null)
    {
        Check.Positive(Y);
        double narrow = Math.Min(at.ContactWidth, at.ContactLength), wide = Math.Max(at.ContactWidth, at.ContactLength);
        double e = Edge ?? 1 - narrow / wide;
        double σ_0 = Y * (1 + (FlatDies.PlaneStrain - 1) * e);
        w?.Step("σ_0", "pressure at the edge of the contact", "Y (1 + (2 / √3 − 1) e)", σ_0, Dimension.Stress, EdgeSource, ("Y", Y, Dimension.Stress), ("e", e, Dimension.Number));
        double k = Y / Math.Sqrt(3), τ = Math.Min(Friction * σ_0, k);
        if (Friction * σ_0 >= k)
            w?.Step("τ", "shear at the face, where the work sticks", "Y / √3", τ, Dimension.Stress, FlatDies.Slab, ("Y", Y, Dimension.Stress));
        else
            w?.Step("τ", "shear at the face, where the work slides", "μ σ_0", τ, Dimension.Stress, FlatDies.Slab, ("μ", Friction, Dimension.Number), ("σ_0", σ_0, Dimension.Stress));
        double hill = FlatDies.Hill(σ_0, τ, narrow, wide, at.Height, w);
        double deep = at.Height / at.ContactLength;
        if (Whole || deep <= 1)
            return hill;
        double c = NarrowBite.Multiplier(deep, w);
        double p = Math.Max(hill, c * σ_0);
        w?.Step("p", "mean pressure, the greater of the two", "max(p_f, c_h σ_0)", p, Dimension.Stress, NarrowBite.Source, ("p_f", hill, Dimension.Stress), ("c_h", c, Dimension.Number), ("σ_0", σ_0, Dimension.Stress));
        return p;
    }
}
