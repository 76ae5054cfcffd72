using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>What a person must be told about the gauge.</summary>
internal static class GaugeCautions
{
    public static (CautionKind Kind, string Text) Of(PressCheck check, UnitSystem units)
    {
        string Show(double p) => Readout.Text(p, Dimension.Pressure, units);
        double p = check.Power.TruePressure;
        string better = $"take one to {Show(GaugeCheck.RangeFor(p, units))}";
        if (check.Gauge is not { } gauge)
            return (CautionKind.Unchecked, $"No gauge is stated. Without one nobody knows the force: {better}, where it can be seen from where you stand.");
        double most = check.Power.MostPossiblePressure;
        return gauge.Verdict switch
        {
            GaugeVerdict.Beyond => (CautionKind.Danger, $"The gauge ends at {Show(gauge.Range)} and the pump gives {Show(p)}: it bursts or bends; {better}."),
            _ when most > gauge.Range => (CautionKind.Danger, $"The gauge ends at {Show(gauge.Range)} and the pump can give {Show(most)}: {better}, or a snubber and a stop cock before it."),
            GaugeVerdict.High => (CautionKind.Handling, $"The pump's {Show(p)} stands at {gauge.Share * 100:0} % of the gauge's range, where a gauge wears out: {better}."),
            GaugeVerdict.Low => (CautionKind.Handling, $"The pump's {Show(p)} stands at {gauge.Share * 100:0} % of the gauge's range, and its error is {gauge.ErrorOfReading * 100:0.#} % of the reading: {better}."),
            _ => (CautionKind.Handling, ""),
        };
    }
}
