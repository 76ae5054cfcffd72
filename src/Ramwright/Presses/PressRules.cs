using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>
/// What cannot be true together in a press, whatever each value alone may be. Only the impossible is refused; what is
/// merely weak, hot, slow or unwise is for the ladder to say.
/// </summary>
/// <remarks>
/// Not refused on purpose: a stroke longer than the daylight (tools may need it, and pulling rigs do it); a relief valve
/// set above the rating of pump, hose or cylinder (each becomes a rung of the ladder); air above the pump's rated air.
/// </remarks>
public static class PressRules
{
    /// <summary>Everything that cannot be true together. What was not said is never at fault with anything.</summary>
    /// <param name="press">The press.</param>
    /// <param name="shelf">Stock, for the rules that need sizes; null leaves those out.</param>
    public static IEnumerable<Fault> Of(Press press, Shelf? shelf = null)
    {
        ArgumentNullException.ThrowIfNull(press);
        var faults = new List<Fault>();
        if (press.Cylinder is { } cylinder)
            CylinderRules.Check(cylinder, faults);
        FittingRules.Check(press, faults);
        if (press.Pump is { } pump)
            PumpRules.Check(pump, faults);
        if (press.Frame is { } frame)
            FrameRules.Check(frame, press.Loading, shelf, faults);
        JobRules.Check(press, shelf, faults);
        WelderRules.Check(press, faults);
        MakingRules.Check(press, faults);
        return faults;
    }
}
