using Ramwright.Quantities;

namespace Ramwright.Frame;

/// <summary>An I or H column where an arm meets it; bending in the plane of its web.</summary>
/// <param name="Depth">h_c, m.</param>
/// <param name="Web">t_wc, all webs together, m.</param>
/// <param name="Flange">t_fc, m.</param>
/// <param name="Root">Root radius, or √2 times the throat of a welded section, m.</param>
/// <param name="ShearArea">A_vc, m².</param>
public sealed record JointColumn(double Depth, double Web, double Flange, double Root, double ShearArea)
{
    /// <summary>h_c, m.</summary>
    public double Depth { get; init; } = Check.Positive(Depth);
    /// <summary>t_wc, m.</summary>
    public double Web { get; init; } = Check.Positive(Web);
    /// <summary>t_fc, m.</summary>
    public double Flange { get; init; } = Check.Positive(Flange);
    /// <summary>r, m.</summary>
    public double Root { get; init; } = Check.NotNegative(Root);
    /// <summary>A_vc, m².</summary>
    public double ShearArea { get; init; } = Check.Positive(ShearArea);

    /// <summary>Straight depth of the web d_c, m.</summary>
    public double StraightWeb => Check.Positive(Depth - 2 * (Flange + Root), "straight depth of the web");
    /// <summary>Between the middles of the flanges, m.</summary>
    public double BetweenFlanges => Check.Positive(Depth - Flange, "depth between flange middles");
}
