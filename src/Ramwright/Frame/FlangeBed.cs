using Ramwright.Quantities;

namespace Ramwright.Frame;

/// <summary>The flanged member that runs on through a joint, bent in the plane of its web: a flange that lies on the web as on an elastic bed.</summary>
/// <param name="Depth">h_c, m.</param>
/// <param name="Web">t_w, all webs together, m.</param>
/// <param name="Flange">t_f, m.</param>
/// <param name="Width">Width of the flange, m.</param>
public sealed record FlangeBed(double Depth, double Web, double Flange, double Width)
{
    /// <summary>h_c, m.</summary>
    public double Depth { get; init; } = Check.Positive(Depth);
    /// <summary>t_w, m.</summary>
    public double Web { get; init; } = Check.Positive(Web);
    /// <summary>t_f, m.</summary>
    public double Flange { get; init; } = Check.Positive(Flange);
    /// <summary>b, m.</summary>
    public double Width { get; init; } = Check.Positive(Width);

    /// <summary>Clear depth of the web d, m.</summary>
    public double ClearWeb => Check.Positive(Depth - 2 * Flange, "clear depth of the web");
    /// <summary>Between the middles of the flanges, m.</summary>
    public double BetweenFlanges => Check.Positive(Depth - Flange, "depth between flange middles");
    /// <summary>λ = (k/4EI)^¼ of the flange on the web, k = 2 E t_w/d, 1/m.</summary>
    public double Decay => Math.Pow(2 * Web / ClearWeb / (4 * Width * Flange * Flange * Flange / 12), 0.25);
}
