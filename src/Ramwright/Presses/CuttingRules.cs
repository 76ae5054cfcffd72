using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Punchings and shearings that cannot be.</summary>
internal static class CuttingRules
{
    public static void Check(Punch said, string path, PressFrame? frame, List<Fault> faults)
    {
        if (said.Hole is null && said.Outline is null)
            faults.Add(new Fault($"{path}.hole", "nothing says what is punched", new Remark("hole: {0}, or outline: {1} for the whole edge of any other shape", Remark.About(0.014, Dimension.Length), Remark.About(0.12, Dimension.Length))));
        else if (said.Hole is not null && said.Outline is not null)
            faults.Add(new Fault($"{path}.outline", "both a round hole and an outline", "one of the two", Against: $"{path}.hole"));
        if (said.Heat is not null)
            SmithRules.Heat(said.Heat, SmithRules.Steel(null, said.Carbon, path, faults), path, faults);
        else if (said.Hole is { } d && said.Thickness is { } t && d < 0.5 * t)
        {
            faults.Add(new Fault($"{path}.hole", new Remark("a punch of {0} breaks in plate of {1}: it would have to stand more than hardened tool steel can", Remark.Of(d, Dimension.Length), Remark.Of(t, Dimension.Length)),
                "a hole no smaller than the plate is thick; drill smaller ones", Against: $"{path}.thickness"));
        }

        JobRules.OnTheBed(said.Hole, "the hole", $"{path}.hole", frame, faults);
    }

    public static void Check(Shear said, string path, PressFrame? frame, List<Fault> faults) =>
        JobRules.OnTheBed(said.Length, "the cut", $"{path}.length", frame, faults);
}
