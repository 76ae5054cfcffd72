namespace Ramwright.Stock;

/// <summary>Buckling curves of EN 1993-1-1, table 6.1.</summary>
public enum BucklingCurve
{
    /// <summary>α = 0.13.</summary>
    A0,
    /// <summary>α = 0.21.</summary>
    A,
    /// <summary>α = 0.34.</summary>
    B,
    /// <summary>α = 0.49.</summary>
    C,
    /// <summary>α = 0.76.</summary>
    D,
}
