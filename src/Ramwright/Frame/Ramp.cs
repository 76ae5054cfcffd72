namespace Ramwright.Frame;

/// <summary>Macaulay brackets ⟨x − a⟩ⁿ: nothing before a, (x − a)ⁿ after it.</summary>
internal static class Ramp
{
    public static double Power1(double x, double a) => x > a ? x - a : 0;
    public static double Power2(double x, double a) => x > a ? (x - a) * (x - a) : 0;
    public static double Power3(double x, double a) => x > a ? (x - a) * (x - a) * (x - a) : 0;
    public static double Power4(double x, double a) => x > a ? (x - a) * (x - a) * (x - a) * (x - a) : 0;
}
