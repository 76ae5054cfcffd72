using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Crushings and splittings that cannot be.</summary>
internal static class CrushingRules
{
    public static void Check(Crush said, string path, PressFrame? frame, Shelf? shelf, List<Fault> faults)
    {
        if (said.Bar is not { } text || shelf is null || !SectionText.TryRead(text, shelf, out Shape? shape, out _))
            return;
        if (shape is not (CircularHollow or RectangularHollow))
        {
            faults.Add(new Fault($"{path}.bar", $"{shape.Name} is no tube or box", "CHS, SHS or RHS"));
            return;
        }

        double depth = shape is CircularHollow tube ? tube.D : ((RectangularHollow)shape).H;
        double height = said.OnEnd == true ? said.Length ?? 0 : depth;
        JobRules.Fits(height, shape.Name, said.OnEnd == true ? $"{path}.length" : $"{path}.bar", said, frame, faults);
        if (said.OnEnd == true && said.Length > 4 * depth)
            faults.Add(new Fault($"{path}.length", "so long a tube buckles over sideways instead of folding up", "no longer than four times its width", Against: $"{path}.bar"));
        if (said.Travel >= height && height > 0)
            faults.Add(new Fault($"{path}.travel", "it is to be crushed by more than it is high", new Remark("less than {0}", Remark.Of(height, Dimension.Length))));
    }

    public static void Check(CrushTimber said, string path, PressFrame? frame, List<Fault> faults)
    {
        if (said.Height is { } height)
            JobRules.Fits(height, "the block", $"{path}.height", said, frame, faults);
        JobRules.OnTheBed(said.Width, "the block", $"{path}.width", frame, faults);
        if (said.AcrossGrain != true && said.Height > 10 * said.Width)
            faults.Add(new Fault($"{path}.height", "so slender a post buckles before it crushes", "no more than ten times its width", Against: $"{path}.width"));
    }

    public static void Check(SplitTimber said, string path, PressFrame? frame, List<Fault> faults)
    {
        if (said.Length is { } length)
            JobRules.Fits(length, "the log", $"{path}.length", said, frame, faults);
        JobRules.OnTheBed(said.Diameter, "the log", $"{path}.diameter", frame, faults);
        if (said.Diameter > 0.9)
            faults.Add(new Fault($"{path}.diameter", "no rule is known for a log so thick", new Remark("up to {0}", Remark.Of(0.9, Dimension.Length))));
    }

    public static void Check(CrushConcrete said, string path, PressFrame? frame, List<Fault> faults)
    {
        if (said.Cube is null == said.Cylinder is null)
            faults.Add(new Fault($"{path}.cube", said.Cube is null ? "neither a cube nor a cylinder" : "both a cube and a cylinder", new Remark("cube: {0}, or cylinder: {0} with its length", Remark.About(0.15, Dimension.Length))));
        if (said.Cylinder is not null && said.Length is null)
            faults.Add(new Fault($"{path}.length", "the cylinder's length is not said", new Remark("length: {0}", Remark.About(0.3, Dimension.Length))));
        if (said.Split == true && said.Cube is not null)
            faults.Add(new Fault($"{path}.split", "a cube is crushed, not split", "a cylinder, or split: no", Against: $"{path}.cube"));
        if (said.Class is null && said.Strength is null)
            faults.Add(new Fault($"{path}.class", "its strength is not said", new Remark("class: C30/37, or strength: {0}", Remark.About(37e6, Dimension.Stress))));
        if (said.Class is { } name && ConcreteClass.Find(name) is null)
            faults.Add(new Fault($"{path}.class", $"no concrete is called \"{name}\" here", new Remark(string.Join(", ", ConcreteClass.Names) + ", or strength: {0}", Remark.About(37e6, Dimension.Stress)), NearestWord.Among(name, ConcreteClass.Names)));
        double? height = said.Split == true ? said.Cylinder : said.Cube ?? said.Length;
        if (height is { } high)
            JobRules.Fits(high, "the piece", said.Cube is null ? $"{path}.length" : $"{path}.cube", said, frame, faults);
        JobRules.OnTheBed(said.Split == true ? said.Length : said.Cube ?? said.Cylinder, "the piece", said.Cube is null ? $"{path}.cylinder" : $"{path}.cube", frame, faults);
    }
}
