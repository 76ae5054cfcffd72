using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Hot squeezes that cannot be.</summary>
internal static class HotSqueezeRules
{
    public static void Check(HotSqueeze said, string path, PressFrame? frame, Shelf? shelf, List<Fault> faults)
    {
        SmithRules.Heat(said.Heat, SmithRules.Steel(said.Steel, said.Carbon, path, faults), path, faults);
        if (said.OnEnd == true && said.OnEdge == true)
            faults.Add(new Fault($"{path}.on-edge", "a piece stands on its edge or on its end", "one of the two", Against: $"{path}.on-end"));
        if (said.OnEnd == true && said.Length is null)
            faults.Add(new Fault($"{path}.on-end", "a piece on its end needs its length", "its length as length"));
        if (said.OnEnd == true && said.To is not null)
            faults.Add(new Fault($"{path}.to", "a piece on its end is upset, not drawn out", "its height after the squeeze as height", Against: $"{path}.on-end"));
        if (said.Height is not null && said.To is not null)
            faults.Add(new Fault($"{path}.height", "both a height for one squeeze and a section to draw out to", "one of the two", Against: $"{path}.to"));
        JobRules.OnTheBed(said.DieLength, "the die", $"{path}.die-length", frame, faults);
        if (said.Bite > said.DieWidth)
            faults.Add(new Fault($"{path}.bite", "the bar moves on by more than the dies are wide, and ridges are left between", "no more than 0.8 to 0.9 of the dies' width", Against: $"{path}.die-width"));
        if (said.Over > said.Length)
            faults.Add(new Fault($"{path}.over", "more is drawn out than the bar is long", "no more than its length", Against: $"{path}.length"));

        if (JobRules.Bar(said.Bar, $"{path}.bar", shelf, faults) is not { } bar)
            return;
        (double height, double width) = ResolveHotSqueeze.Standing(bar, said.OnEdge == true);
        if (said.OnEnd == true)
        {
            if (said.Length is not { } length)
                return;
            (height, width) = (length, Math.Min(height, width));
            if (height > 3 * width)
                faults.Add(new Fault($"{path}.length", "so slender a piece bends over instead of upsetting", "no more than 3 times its thickness, better 2.3", Against: $"{path}.bar"));
        }

        JobRules.Fits(height, bar.Name, said.OnEnd == true ? $"{path}.length" : $"{path}.bar", said, frame, faults);
        if (said.Height >= height)
            faults.Add(new Fault($"{path}.height", new Remark("the squeeze is to end at {0}, and the bar is {1} high before", Remark.Of(said.Height.Value, Dimension.Length), Remark.Of(height, Dimension.Length)), "less than it is high", Against: $"{path}.bar"));
        if (JobRules.Bar(said.To, $"{path}.to", shelf, faults) is { } to)
            DrawnOut(to, bar, height, width, path, faults);
    }

    private static void DrawnOut(Shape to, Shape bar, double height, double width, string path, List<Fault> faults)
    {
        if (to is Round)
        {
            faults.Add(new Fault($"{path}.to", "flat dies draw square or flat; round is swaged from a square", "a square of about 0.9 of the diameter, then swages"));
            return;
        }

        (double h, double w) = ResolveHotSqueeze.Standing(to, false);
        if (h * w >= bar.Properties.A)
            faults.Add(new Fault($"{path}.to", $"{to.Name} has no less section than {bar.Name}: drawing out makes bar thinner", "a smaller section", Against: $"{path}.bar"));
        else if (h >= height || w > 1.6 * width)
            faults.Add(new Fault($"{path}.to", $"{bar.Name} cannot be squeezed to {to.Name}: it must get lower, and does not spread that far", "a section lower than the bar, and not much wider", Against: $"{path}.bar"));
    }
}
