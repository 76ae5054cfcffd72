namespace Ramwright.Files.Drawings;

/// <summary>One even scale from light to dark for how much of a part is used; a number always stands beside it.</summary>
internal static class Shade
{
    /// <summary>Steel whose use is not shown.</summary>
    public const string Steel = "#e9ebea";

    // steps of equal lightness, L* 95 to 45, one blue hue; the last, warm one is for what is asked more than it is safe to
    private static readonly string[] Steps = ["#eef3f6", "#d6e2ea", "#bdd1dd", "#a4bfd0", "#8baec3", "#729cb6", "#5a8ba8"];

    /// <summary>Colour for a share: 0 to 1, and beyond.</summary>
    public static string Of(double share) =>
        share > 1 ? "#d98a5b" : Steps[Math.Clamp((int)(share * Steps.Length), 0, Steps.Length - 1)];
}
