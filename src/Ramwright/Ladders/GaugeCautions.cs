using Ramwright.Power;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>What a person must be told about the gauge.</summary>
internal static class GaugeCautions
{
    public static string Of(PressCheck check, UnitSystem units)
    {
        string Show(double p) => Readout.Text(p, Dimension.Pressure, units);
        double p = check.Power.TruePressure;
        string better = $"take one to {Show(GaugeCheck.RangeFor(p))}";
        if (check.Gauge is not { } gauge)
            return $"No gauge is stated. Without one nobody knows the force: {better}, where it can be seen from where you stand.";
        double most = check.Power.MostPossiblePressure;
        return gauge.Verdict switch
        {
            GaugeVerdict.Beyond => $"The gauge ends at {Show(gauge.Range)} and the pump gives {Show(p)}: it bursts or bends; {better}.",
            _ when most > gauge.Range => $"The gauge ends at {Show(gauge.Range)} and the pump can give {Show(most)}: {better}, or a snubber and a stop cock before it.",
            GaugeVerdict.High => $"The pump's {Show(p)} stands at {gauge.Share * 100:0} % of the gauge's range, where a gauge wears out: {better}.",
            GaugeVerdict.Low => $"The pump's {Show(p)} stands at {gauge.Share * 100:0} % of the gauge's range, and its error is {gauge.ErrorOfReading * 100:0.#} % of the reading: {better}.",
            _ => "",
        };
    }
}
