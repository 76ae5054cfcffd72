namespace Ramwright.Squeeze;

/// <summary>What went into a squeeze and where it is: energy, oil, heat and air, added up from the sums along the way.</summary>
/// <param name="system">Which sum is which.</param>
/// <param name="work">What the press was put to.</param>
/// <param name="y">The state as it stands; read at each call.</param>
internal sealed class SqueezeBooks(SqueezeSystem system, SqueezeWork work, double[] y)
{
    /// <summary>Energy and oil when the oil is let off.</summary>
    /// <param name="held0">Energy held at the start, J.</param>
    /// <param name="oil0">Oil held at the start, m³.</param>
    /// <param name="stopped">Energy of the ram that was brought to a stop, J.</param>
    /// <param name="oilMoved">Oil that is no longer reckoned as held, m³.</param>
    public SqueezeBalance[] EnergyAndOil(double held0, double oil0, double stopped, double oilMoved)
    {
        double held = system.Held(y) - held0, pump = Sum(SqueezeSystem.PumpWork);
        (string, double)[] energy =
        [
            ("work on the piece", Sum(SqueezeSystem.WorkDone)), ("relief valve", Sum(SqueezeSystem.ReliefLoss)), ("pressure lines", Sum(SqueezeSystem.LineLoss)),
            ("return lines", Sum(SqueezeSystem.BackLoss)), ("seals and guides", Sum(SqueezeSystem.SealLoss) + Sum(SqueezeSystem.Damped)), ("let off", Sum(SqueezeSystem.LetOffLoss)),
            ("stopping the ram", stopped), ("still held by oil, frame and spring", held),
        ];
        double inside = system.OilHeld(y) + oilMoved - oil0, came = Sum(SqueezeSystem.OilIn);
        (string, double)[] oil = [("let off", Sum(SqueezeSystem.OilOut)), ("in the cylinder", inside)];
        return
        [
            new("energy", pump, energy.Sum(e => e.Item2), pump, energy),
            new("oil", came, oil.Sum(e => e.Item2), came, oil),
        ];
    }

    /// <summary>Heat of the bar and air of the receiver when the ram is up again.</summary>
    /// <param name="heat0">Heat of the bar at the start, J.</param>
    /// <param name="air0">Air in the receiver at the start.</param>
    /// <param name="air">Whether the press takes air.</param>
    public IEnumerable<SqueezeBalance> HeatAndAir(double heat0, double air0, bool air)
    {
        if (system.Column is { } column)
        {
            double comes = Sum(SqueezeSystem.WorkDone) * work.Hot!.WorkIntoHeat, less = heat0 - column.Heat(y);
            (string, double)[] heat =
                [("radiated", Sum(SqueezeSystem.Radiated)), ("into the air", Sum(SqueezeSystem.Convected)), ("into the dies", Sum(SqueezeSystem.IntoDies))];
            double lost = heat.Sum(h => h.Item2);
            yield return new("heat of the bar", less + comes, lost, Math.Max(lost, comes), heat);
        }

        if (air)
        {
            double taken = Sum(SqueezeSystem.AirTaken), made = Sum(SqueezeSystem.AirMade);
            yield return new("air", air0 - y[system.Air] + made, taken, Math.Max(taken, made), [("taken by the pump", taken)]);
        }
    }

    private double Sum(int which) => y[system.Sum(which)];
}
