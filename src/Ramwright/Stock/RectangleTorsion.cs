namespace Ramwright.Stock;

/// <summary>Saint-Venant torsion of a solid rectangle.</summary>
internal static class RectangleTorsion
{
    /// <summary>Torsion constant, m⁴, and torsion modulus, m³, of sides <paramref name="h"/> and <paramref name="t"/>, m.</summary>
    /// <remarks>Timoshenko and Goodier, Theory of Elasticity, art. 109; the series fall off as n⁻⁵ and n⁻² e⁻ⁿ.</remarks>
    public static (double It, double Wt) Of(double h, double t)
    {
        double a = Math.Max(h, t), b = Math.Min(h, t);
        double twist = 0, stress = 0;
        for (int n = 1; n <= 99; n += 2)
        {
            double x = n * Math.PI * a / (2 * b);
            twist += Math.Tanh(x) / Math.Pow(n, 5);
            stress += x < 700 ? 1 / (n * n * Math.Cosh(x)) : 0;
        }

        double It = a * b * b * b / 3 * (1 - 192 / Math.Pow(Math.PI, 5) * b / a * twist);
        return (It, It / (b * (1 - 8 / (Math.PI * Math.PI) * stress)));
    }
}
