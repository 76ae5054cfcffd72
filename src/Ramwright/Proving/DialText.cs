using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>A dial's travel as it is read: millimetres, or thousandths of an inch however many they are.</summary>
public static class DialText
{
    /// <summary>The stiffness reckoned at a place; at the opening with that of the daylight itself, as a check of the press states it.</summary>
    /// <param name="s">The place and what was read there.</param>
    /// <param name="units">Which units.</param>
    public static string Reckoned(Stiffness s, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(s);
        string beside = Readout.Text(s.Predicted, Dimension.Stiffness, units);
        return s.Point.Unseen > 0
            ? $"{beside} where the dial stands, beside the dies; {Readout.Text(1 / (s.Point.PerNewton + s.Point.Unseen), Dimension.Stiffness, units)} between them, where they sink into what holds them" : beside;
    }

    /// <summary>What a step's pressure makes: the most the frame can feel, and what the ram is left with.</summary>
    /// <param name="step">The step.</param>
    /// <param name="units">Which units.</param>
    public static string Forces(PlanStep step, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(step);
        return $"{Ladders.ForceText.Of(step.Thrust, units)} by pressure times area, {Ladders.ForceText.Of(step.RamForce, units)} at the ram, what seals and any return spring take taken off";
    }

    /// <summary>Writes it.</summary>
    /// <param name="si">m; must be finite.</param>
    /// <param name="units">What the dial reads.</param>
    public static string Of(double si, UnitSystem units) =>
        units == UnitSystem.Imperial && Quantities.Units.TryFind("thou", Dimension.Length, out Unit? thou)
            ? Readout.Text(si, thou, 2)
            : Readout.Text(si, Dimension.Length, units, 2);
}
