using System.Globalization;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>One thread of a line or port, by family and size.</summary>
/// <param name="Name">As it is asked for: <c>G 3/8</c>, <c>JIC 6</c>, <c>cone 12L</c>.</param>
/// <param name="Family">Its family.</param>
/// <param name="D">Major diameter, m; of a taper thread in the gauge plane (NPT: outside diameter of the pipe).</param>
/// <param name="P">Pitch, m.</param>
/// <param name="Source">Where the sizes come from.</param>
public sealed record PortThread(string Name, PortFamily Family, double D, double P, Citation Source)
{
    /// <summary>What it shares with its family.</summary>
    public PortFamilyFacts Facts => PortFamilyFacts.Of(Family);

    /// <summary>In a few words, for messages: <c>G 3/8 (55°, 19 threads an inch, parallel, sealed by ...)</c>.</summary>
    public string InWords
    {
        get
        {
            string pitch = Family is PortFamily.MetricCone or PortFamily.MetricBoss
                ? string.Create(CultureInfo.InvariantCulture, $"M{D * 1e3:0.#} x {P * 1e3:0.##}")
                : string.Create(CultureInfo.InvariantCulture, $"{0.0254 / P:0.#} threads an inch");
            return string.Create(CultureInfo.InvariantCulture, $"{Name} ({Facts.Flank:0}°, {pitch}, {(Facts.Tapers ? "taper 1 in 16" : "parallel")}, sealed by {Facts.How})");
        }
    }
}
