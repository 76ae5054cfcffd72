using System.Diagnostics.CodeAnalysis;
using Ramwright.Geometry;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>
/// A cross-section by its dimensions: the one truth from which properties, weights, drawings and cut parts follow.
/// Immutable; properties are computed once.
/// </summary>
/// <remarks>The first use of <see cref="Properties"/> , <see cref="Outline"/> or <see cref="Strands"/> may come from any thread.</remarks>
public abstract record Shape
{
    private SectionProperties? _properties;
    private Outline? _outline;
    private IReadOnlyList<Strand>? _strands;

    /// <summary>A shape; its name and source are set beside this.</summary>
    protected Shape()
    {
    }

    /// <summary>A copy works its properties out afresh: what it was copied for may change them.</summary>
    [SetsRequiredMembers]
    protected Shape(Shape original)
    {
        ArgumentNullException.ThrowIfNull(original);
        Name = original.Name;
        Source = original.Source;
        PrintedMass = original.PrintedMass;
    }

    /// <summary>As it is called at the stockholder's: <c>HEB 160</c>, <c>2 x UPN 200</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Where the dimensions come from.</summary>
    public required Citation Source { get; init; }

    /// <summary>Mass per length as a table prints it or as it was weighed, kg/m; null where it is not known.</summary>
    /// <remarks>A check on the dimensions, which decide: nothing is computed from it.</remarks>
    public double? PrintedMass { get; init; }

    /// <summary>Mass per length that the dimensions give at 7850 kg/m³, kg/m.</summary>
    public double Mass => Steel.Density * Outline.Area();

    /// <summary>
    /// Whether the single shape bends askew: a load along its web moves it sideways as well, because its principal axes are
    /// slanted. An angle does, unless a second one held to it back to back keeps it straight.
    /// </summary>
    public bool BendsAskew => Math.Abs(Properties.Iyz) > 1e-3 * Math.Max(Properties.Iy, Properties.Iz);

    /// <summary>The properties, computed from the dimensions at first use.</summary>
    public SectionProperties Properties => _properties ??= Compute();

    /// <summary>The edge of the section: outer loops anticlockwise, holes clockwise, y to the right and z up, m.</summary>
    /// <remarks>
    /// z = 0 at mid-depth. y = 0 at mid-width, but at the back of the web for a channel. Drilled holes are loops of their
    /// own that touch the edges they break through: areas and moments are right, the sum of edge lengths is not.
    /// </remarks>
    public Outline Outline => _outline ??= Draw();

    /// <summary>Buckling curve for bending about y-y; EN 1993-1-1, table 6.2.</summary>
    public abstract BucklingCurve CurveY { get; }

    /// <summary>Buckling curve for bending about z-z; EN 1993-1-1, table 6.2.</summary>
    public abstract BucklingCurve CurveZ { get; }

    /// <summary>Draws the outline from the dimensions.</summary>
    protected abstract Outline Draw();

    /// <summary>Computes the properties from the dimensions.</summary>
    protected abstract SectionProperties Compute();

    /// <summary>Its thinnest wall, m: what a weld or a bolt finds.</summary>
    public virtual double Thinnest => Properties.Thickness;

    /// <summary>The outline moved so that the centroid lies at the origin.</summary>
    public Outline CentredOutline
    {
        get
        {
            AreaMoments m = Outline.Moments();
            return Outline.Moved(-m.Y, -m.Z);
        }
    }

    /// <summary>The single shapes it is made of: itself, or the halves of a pair.</summary>
    public IReadOnlyList<Strand> Strands => _strands ??= Split();

    /// <summary>Takes it apart into the single shapes it is made of.</summary>
    protected virtual IReadOnlyList<Strand> Split() => [new Strand(this, 0, 0, false)];

    /// <summary>The webs that a hole at mid-depth may go through.</summary>
    internal virtual IReadOnlyList<WebStrip> Webs => [];

    /// <summary>The parts of the bottom flange that a hole may go through; the top flange, if any, is its mirror image.</summary>
    internal virtual IReadOnlyList<FlangeStrip> BottomFlange => [];

    /// <summary>Whether there is a top flange like the bottom one.</summary>
    internal virtual bool HasTopFlange => true;

    /// <summary>Whether the two are the same kind with the same dimensions, name and source.</summary>
    public virtual bool Equals(Shape? other) =>
        other is not null && EqualityContract == other.EqualityContract && Name == other.Name && Source == other.Source;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(EqualityContract, Name, Source);

    /// <summary>The name.</summary>
    public sealed override string ToString() => Name;
}
