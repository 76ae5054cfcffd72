using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>What cannot be true together in a free frame.</summary>
internal static class FreeFrameRules
{
    /// <summary>Points nearer than this are one, m.</summary>
    private const double Same = 1e-4;

    public static void Check(FreeFrame said, Shelf? shelf, List<Fault> faults)
    {
        IReadOnlyList<FramePoint> points = said.Points ?? [];
        IReadOnlyList<FrameBar> bars = said.Bars ?? [];
        // an item that could not be read is null, and has its own fault
        if (points.Any(p => p is null) || bars.Any(b => b is null))
            return;
        Twice(points.Select(p => p.Name), "frame.points", "point", faults);
        Twice(bars.Select(b => b.Name), "frame.bars", "bar", faults);
        for (int i = 0; i < points.Count; i++)
        {
            if (points[i].Name is { } name && !IsPlain(name))
                faults.Add(new Fault($"frame.points.{i}.name", $"\"{name}\" cannot be the name of a point", "letters, digits, spaces and hyphens"));
        }

        for (int i = 0; i < bars.Count; i++)
            Bar(said, bars[i], $"frame.bars.{i}", points, shelf, faults);
        FramePoint? top = Named(said.CylinderAt, "frame.cylinder-at", points, faults), bottom = Named(said.WorkAt, "frame.work-at", points, faults);
        if (top is null || bottom is null)
            return;
        Vector a = At(top), b = At(bottom);
        if (a.Z - b.Z < Same)
            faults.Add(new Fault("frame.cylinder-at", "the cylinder is not above the work", "a point above work-at; horizontal: yes for a press that lies", Against: "frame.work-at"));
        else if (Math.Abs(a.X - b.X) > 1e-3 || Math.Abs(a.Y - b.Y) > 1e-3)
            faults.Add(new Fault("frame.cylinder-at", "the cylinder is not straight above the work", "two points with the same right and back", Against: "frame.work-at"));
    }

    public static Vector At(FramePoint p) => new(p.Right ?? 0, p.Back ?? 0, p.Up ?? 0);

    private static void Bar(FreeFrame said, FrameBar bar, string path, IReadOnlyList<FramePoint> points, Shelf? shelf, List<Fault> faults)
    {
        FramePoint? from = Named(bar.From, path + ".from", points, faults), to = Named(bar.To, path + ".to", points, faults);
        if (from is not null && to is not null && (At(to) - At(from)).Length < Same)
            faults.Add(new Fault(path + ".to", "the bar has no length", "another point", Against: path + ".from"));
        if (bar.Member?.Section is null && said.Section is null)
            faults.Add(new Fault(path + ".member", $"no section is named for {bar.Name}", "member: { section: HEB 160 }, or one section under frame for every bar that names none"));
        if (bar.Name is { } name && (!IsPlain(name) || Taken(name)))
            faults.Add(new Fault(path + ".name", $"\"{name}\" cannot be the name of a bar", "letters, digits and spaces, and not rod, cylinder, hose, pump, preload or joint"));
        foreach ((Joint? joint, string key) in ((Joint?, string)[])[(bar.FromJoint, ".from-joint"), (bar.ToJoint, ".to-joint")])
        {
            if (joint is WeldedJoint { Gusset: not null })
                faults.Add(new Fault(path + key + ".gusset", "in a free frame it is not known in which corner a gusset stands", "a short bar across the corner, or kind: closed or open-front for the frame"));
        }

        JointRules.Check(bar.FromJoint, path + ".from-joint", shelf, faults);
        JointRules.Check(bar.ToJoint, path + ".to-joint", shelf, faults);
    }

    private static bool IsPlain(string name) => name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-');

    // names that other rungs have or begin with
    private static bool Taken(string name) => name.Contains("joint", StringComparison.OrdinalIgnoreCase) || name.Trim().ToLowerInvariant() is "" or "rod" or "cylinder" or "hose" or "pump" or "preload" or "die" or "dies" or "tie rod";

    private static FramePoint? Named(string? name, string path, IReadOnlyList<FramePoint> points, List<Fault> faults)
    {
        if (name is null)
            return null;
        FramePoint? found = points.FirstOrDefault(p => p.Name == name);
        if (found is null)
            faults.Add(new Fault(path, $"no point is called \"{name}\"", points.Count == 0 ? "a point under points" : $"one of {string.Join(", ", points.Select(p => p.Name))}"));
        return found;
    }

    private static void Twice(IEnumerable<string?> names, string path, string what, List<Fault> faults)
    {
        var seen = new HashSet<string>();
        int i = 0;
        foreach (string? name in names)
        {
            // rungs are named in lower case with hyphens: names that differ only there would meet
            if (name is not null && !seen.Add(name.Trim().ToLowerInvariant().Replace(' ', '-')))
                faults.Add(new Fault($"{path}.{i}.name", $"two are called \"{name}\"", $"another name for this {what}"));
            i++;
        }
    }
}
