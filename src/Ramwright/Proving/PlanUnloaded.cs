using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>What is done with nothing under the ram: bleeding, leaks, strokes, the first setting of the relief.</summary>
internal static class PlanUnloaded
{
    public static IReadOnlyList<PlanTask> Of(PressCheck check, UnitSystem units)
    {
        Rig rig = check.Rig;
        string Pressure(double p) => Readout.Text(p, Dimension.Pressure, units);
        double low = Math.Min(0.1 * check.Power.TruePressure, 20e5);
        var tasks = new List<PlanTask>
        {
            new("fill", "fill the tank with the ram in; clean oil through a filter", "oil that is milky or has grit"),
            new("bleed", rig.Cylinder.PullsByOil
                ? "to bleed it run the ram out and in slowly, five full strokes with no load, tank topped up; the ram must not jump"
                : "to bleed it set the cylinder with its port uppermost where that can be; ram out and in five times, tank topped up; the ram must not jump", "a ram that still jumps after ten strokes: air is being drawn in"),
            new("leaks-low", $"at {Pressure(low)} look at every joint with a card or a mirror, never with a hand", "any drip at pressure"),
            new("strokes", $"three strokes out and back with no load: write time-out and time-back for a measured length; {Readout.Text(check.Power.Times.FullStroke, Dimension.Time, units, 2)} for the full stroke out by reckoning", "a ram that goes by itself"),
        };
        if (rig.Pump is RigElectricPack)
            tasks.Add(new PlanTask("stop", "the stop button stops the pump, and the ram stops where it is"));
        tasks.Add(new PlanTask("power-off", "ram up, nothing under it, power or air off: it does what the check says it does", "a ram that falls where it was said to hold"));
        tasks.Add(rig.Pump switch
        {
            RigElectricPack => new PlanTask("relief-low", $"dead against the block: relief wound fully out, then in to {Pressure(low)}; it must open there and shut again three times", "a relief valve that sticks"),
            RigAirPump air => new PlanTask("relief-low", $"dead against the block: regulator at {Pressure(1e5)}; the pump must stall, at about {Pressure(1e5 * air.EffectiveRatio)}", "a pump that goes on creeping up"),
            _ => new PlanTask("relief-low", $"dead against the block: pump to {Pressure(low)} and wait a minute", "a pressure that rises or falls by itself"),
        });
        return tasks;
    }
}
