using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>What a person must be told about the valves besides what happens when power fails.</summary>
internal static class ValveCautions
{
    public static string Of(PressCheck check, UnitSystem units) =>
        check.Rig is { Pump: RigElectricPack, Valves.Centre: SpoolCentre.Closed or SpoolCentre.Float } && check.Power.Heat is [{ } held, ..]
            ? $"The spool's middle blocks the pump: between strokes all of its oil goes over the relief valve and {Readout.Text(held.Power, Dimension.Power, units)} "
                + "into the oil, unless the pump is stopped or unloaded."
            : "";
}
