using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>What a groove's seal does.</summary>
public enum SealDuty
{
    /// <summary>Nothing moves.</summary>
    Still,
    /// <summary>Piston or rod slides to and fro.</summary>
    Sliding,
}

/// <summary>An O-ring for a groove. SI.</summary>
/// <param name="Size">The ring.</param>
/// <param name="Squeeze">How far it is squeezed across, as a share of its thickness.</param>
/// <param name="Fill">How much of the groove's section it fills; null where the groove's width is not known.</param>
/// <param name="Stretch">How far it is stretched over the groove, as a share; below zero where it is pressed in.</param>
/// <param name="Remarks">What does not suit.</param>
public sealed record SealChoice(ORingSize Size, double Squeeze, double? Fill, double Stretch, IReadOnlyList<string> Remarks)
{
    /// <summary>Bands of squeeze and fill.</summary>
    public static readonly Citation Source = new("ISO 3601-2", "squeeze 15 to 25 % still, 10 to 15 % sliding; fill at most 85 %", Standing.FromMemory);

    /// <summary>Squeeze of a ring in a groove.</summary>
    /// <param name="d2">Thickness of the ring, m.</param>
    /// <param name="t">Depth from the groove's bottom to the other face, m.</param>
    /// <param name="w">Where to show the working.</param>
    public static double SqueezeOf(double d2, double t, Working? w = null)
    {
        double squeeze = (Check.Positive(d2) - Check.Positive(t)) / d2;
        w?.Step("s", "squeeze", "(d_2 − t) / d_2", squeeze, Dimension.Ratio, Source, ("d_2", d2, Dimension.Length), ("t", t, Dimension.Length));
        return squeeze;
    }

    /// <summary>Fill of a groove.</summary>
    /// <param name="d2">Thickness of the ring, m.</param>
    /// <param name="t">Depth from the groove's bottom to the other face, m.</param>
    /// <param name="b">Width of the groove, m.</param>
    /// <param name="w">Where to show the working.</param>
    public static double FillOf(double d2, double t, double b, Working? w = null)
    {
        double fill = Math.PI * Check.Positive(d2) * d2 / 4 / (Check.Positive(t) * Check.Positive(b));
        w?.Step("f", "fill", "π d_2² / (4 t b)", fill, Dimension.Ratio, Source, ("d_2", d2, Dimension.Length), ("t", t, Dimension.Length), ("b", b, Dimension.Length));
        return fill;
    }

    /// <summary>The ring that suits a groove best; null where none comes near.</summary>
    /// <param name="bottom">Diameter at the groove's bottom, m.</param>
    /// <param name="other">Diameter of the face it seals against, m: larger than the bottom for a groove on a piston, smaller for one in a gland.</param>
    /// <param name="width">Width of the groove, m; null where not measured.</param>
    /// <param name="duty">What it does.</param>
    public static SealChoice? For(double bottom, double other, double? width, SealDuty duty)
    {
        Check.Positive(bottom);
        Check.Positive(other);
        double t = Math.Abs(other - bottom) / 2;
        if (!(t > 0))
            return null;
        (double low, double high) = duty == SealDuty.Still ? (0.15, 0.25) : (0.10, 0.15);
        bool onPiston = other > bottom;
        // a ring on a piston rides on the groove's bottom; one in a gland on the rod
        double rides = onPiston ? bottom : other;
        SealChoice? best = null;
        double least = double.PositiveInfinity;
        foreach (ORingSize size in ORingSize.All)
        {
            double squeeze = SqueezeOf(size.Section, t), stretch = rides / size.Inside - 1;
            if (squeeze is < 0.05 or > 0.35 || stretch < (onPiston ? -0.01 : -0.03) || stretch > 0.06)
                continue;
            double off = Outside(squeeze, low, high) / 0.05 + Outside(stretch, onPiston ? 0.01 : -0.01, onPiston ? 0.05 : 0.03) / 0.02 + Math.Abs(stretch) / 1;
            if (off < least)
                (best, least) = (Of(size, squeeze, stretch, t, width, low, high), off);
        }

        return best;
    }

    private static SealChoice Of(ORingSize size, double squeeze, double stretch, double t, double? width, double low, double high)
    {
        double? fill = width is { } b ? FillOf(size.Section, t, b) : null;
        var remarks = new List<string>();
        if (squeeze < low)
            remarks.Add($"squeezed only {Readout.Text(squeeze, Dimension.Ratio)}: wanted {Readout.Text(low, Dimension.Ratio)} to {Readout.Text(high, Dimension.Ratio)}");
        if (squeeze > high)
            remarks.Add($"squeezed {Readout.Text(squeeze, Dimension.Ratio)}: more than {Readout.Text(high, Dimension.Ratio)} drags and wears");
        if (fill > 0.85)
            remarks.Add($"fills {Readout.Text(fill.Value, Dimension.Ratio)} of the groove: at most 85 %");
        return new SealChoice(size, squeeze, fill, stretch, remarks);
    }

    private static double Outside(double x, double low, double high) => Math.Max(0, Math.Max(low - x, x - high));
}
