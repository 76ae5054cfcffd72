using System.ComponentModel;
using Ramwright.Quantities;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>lift</c> takes.</summary>
internal sealed class LiftSettings : PressSettings
{
    [CommandOption("--to <FORCE>")]
    [Description("Another force to reach than the file's wanted: \"30 t\", \"300 kN\".")]
    public string? To { get; init; }

    /// <summary>The force to reach, N; null for the file's own.</summary>
    public double? Newtons => To is not null && QuantityText.TryRead(To, Dimension.Force, out Quantity force, out _) ? force.Si : null;

    public override Spectre.Console.ValidationResult Validate()
    {
        if (To is not null)
        {
            if (!QuantityText.TryRead(To, Dimension.Force, out Quantity force, out ReadingFault? fault))
                return Spectre.Console.ValidationResult.Error($"--to \"{To}\": {fault.Found}; {fault.Wanted}");
            if (!(force.Si > 0 && force.Si <= 20e6))
                return Spectre.Console.ValidationResult.Error($"--to \"{To}\": a force above zero and up to 20 MN");
        }

        return base.Validate();
    }
}
