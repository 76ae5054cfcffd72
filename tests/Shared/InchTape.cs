using System.Text.RegularExpressions;
using Ramwright.Quantities;

namespace Ramwright.Tests;

/// <summary>Writes a metric press file anew as one would who holds an inch tape: the same sizes to many digits, in inches, psi and US tons.</summary>
internal static partial class InchTape
{
    private static readonly (string Symbol, Dimension Dimension, string Inch)[] Known =
    [
        ("mm", Dimension.Length, "in"), ("cm", Dimension.Length, "in"), ("m", Dimension.Length, "in"), ("cm2", Dimension.Area, "in2"), ("cm4", Dimension.SecondMoment, "in4"),
        ("bar", Dimension.Pressure, "psi"), ("MPa", Dimension.Stress, "ksi"), ("kN", Dimension.Force, "US ton"), ("t", Dimension.Force, "US ton"), ("N", Dimension.Force, "lbf"),
        ("kg", Dimension.Mass, "lb"), ("mL", Dimension.Volume, "in3"), ("L", Dimension.Volume, "US gal"), ("cm3/rev", Dimension.Displacement, "in3/rev"), ("mm/s", Dimension.Speed, "in/s"),
        ("N·m", Dimension.Moment, "lbf·ft"), ("kW", Dimension.Power, "hp"), ("°C", Dimension.Temperature, "°F"), ("mm/m", Dimension.Slope, "in/ft"),
    ];

    /// <summary>The file in inches; names of stock, which are the dealer's, stay.</summary>
    public static string Rewritten(string yaml) => string.Join('\n', yaml.ReplaceLineEndings("\n").Split('\n').Select(Line));

    private static string Line(string line)
    {
        if (line.TrimStart().StartsWith('#') || line.StartsWith("name:", StringComparison.Ordinal))
            return line.StartsWith("name:", StringComparison.Ordinal) ? "name: Inch press" : "#";
        int comment = line.IndexOf(" #", StringComparison.Ordinal);
        string said = comment < 0 ? line : line[..comment];
        bool air = said.Contains("free-air", StringComparison.Ordinal);
        return Size().Replace(said, m =>
        {
            string symbol = m.Groups["unit"].Value;
            (Dimension dimension, string inch) = symbol == "L/min" ? air ? (Dimension.FreeAir, "cfm") : (Dimension.Flow, "US gpm")
                : Known.Where(k => k.Symbol == symbol).Select(k => (k.Dimension, k.Inch)).First();
            if (!QuantityText.TryRead(m.Value, dimension, out Quantity read, out _))
                return m.Value;
            Unit to = Units.Of(dimension).First(u => u.Symbol == inch);
            return $"{Readout.Number(to.FromSi(read.Si), 12)} {inch}";
        });
    }

    [GeneratedRegex(@"(?<![\w./-])-?\d[\d.]* (?<unit>cm3/rev|L/min|mm/s|mm/m|N·m|mm|cm2|cm4|cm|kN|kg|kW|bar|MPa|mL|°C|m|N|t|L)(?![\w/·²])")]
    private static partial Regex Size();
}
