namespace Ramwright.Geometry;

/// <summary>The upright rectangle that just holds an outline, m.</summary>
/// <param name="Left">Least y.</param>
/// <param name="Right">Greatest y.</param>
/// <param name="Bottom">Least z.</param>
/// <param name="Top">Greatest z.</param>
public readonly record struct Extents(double Left, double Right, double Bottom, double Top)
{
    /// <summary>Right less left, m.</summary>
    public double Width => Right - Left;

    /// <summary>Top less bottom, m.</summary>
    public double Height => Top - Bottom;
}
