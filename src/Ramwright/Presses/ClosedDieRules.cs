using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Closed impressions that cannot be.</summary>
internal static class ClosedDieRules
{
    public static void Check(ClosedDie said, string path, PressFrame? frame, List<Fault> faults)
    {
        SmithRules.Heat(said.Heat, SmithRules.Steel(said.Steel, said.Carbon, path, faults), path, faults);
        if (said.Blank <= said.Height)
            faults.Add(new Fault($"{path}.blank", "the blank is no higher than the part: nothing would be squeezed", "a blank higher than the part", Against: $"{path}.height"));
        if (said.Outline is { } round && said.Area is { } area && round < 2 * Math.Sqrt(Math.PI * area) * (1 - 1e-9))
        {
            faults.Add(new Fault($"{path}.outline", "no shape of that area has so short an edge", new Remark("at least that of a circle, {0}", Remark.Of(2 * Math.Sqrt(Math.PI * area), Dimension.Length)),
                Against: $"{path}.area"));
        }

        if (said.Blank is { } blank)
            JobRules.Fits(blank, "the blank", $"{path}.blank", said, frame, faults);
        JobRules.OnTheBed(said.Area is { } a ? Math.Sqrt(a) : null, "the die", $"{path}.area", frame, faults);
    }
}
