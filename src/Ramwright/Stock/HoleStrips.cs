namespace Ramwright.Stock;

/// <summary>A web, m: from <paramref name="Left"/> to <paramref name="Right"/>, and half its clear height. A hole that reaches a root fillet takes the web only.</summary>
internal readonly record struct WebStrip(double Left, double Right, double HalfDepth);

/// <summary>A straight stretch of the bottom flange, m, where its inner face runs straight from one height to another.</summary>
internal readonly record struct FlangeStrip(double Left, double Right, double Outer, double InnerLeft, double InnerRight)
{
    /// <summary>Height of the inner face at <paramref name="y"/>.</summary>
    public double Inner(double y) => InnerLeft + (InnerRight - InnerLeft) * (y - Left) / (Right - Left);
}
