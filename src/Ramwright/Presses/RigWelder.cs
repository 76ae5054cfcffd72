using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>How the press is welded, every number settled. SI but for amperes, volts and hydrogen.</summary>
public sealed record RigWelder
{
    /// <summary>The process.</summary>
    public required WeldingProcess Process { get; init; }
    /// <summary>Diffusible hydrogen HD, ml per 100 g.</summary>
    public required double Hydrogen { get; init; }
    /// <summary>Current I, A.</summary>
    public required double Amperes { get; init; }
    /// <summary>Voltage U, V.</summary>
    public required double Volts { get; init; }
    /// <summary>Mass laid down while the arc burns, kg/s.</summary>
    public required double Rate { get; init; }
    /// <summary>Travel in a full run, m/s.</summary>
    public required double Travel { get; init; }
    /// <summary>Temperature of the steel before any heating, °C.</summary>
    public required double SteelTemperature { get; init; }
    /// <summary>Heat of the torch, W.</summary>
    public required double Torch { get; init; }
    /// <summary>What steels are made of, by their names in stock.</summary>
    public required IReadOnlyDictionary<string, Composition> Analyses { get; init; }
    /// <summary>What was assumed about the welding.</summary>
    public required IReadOnlyList<Assumed> Assumed { get; init; }
}
