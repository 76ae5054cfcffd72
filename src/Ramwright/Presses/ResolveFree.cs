using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles a free frame.</summary>
internal static class ResolveFree
{
    public static RigFreeFrame Of(FreeFrame said, Shelf shelf, Assumptions assume)
    {
        IReadOnlyList<FramePoint> points = Resolver.Needed(said.Points, "frame.points");
        IReadOnlyList<FrameBar> bars = Resolver.Needed(said.Bars, "frame.bars");
        int Place(string? name, string path)
        {
            for (int i = 0; i < points.Count; i++)
            {
                if (points[i].Name == name)
                    return i;
            }

            throw new ArgumentException($"'{path}' names no point: {name}");
        }

        var made = new List<(FrameBar Said, RigMember Member, int From, int To, string Path)>();
        for (int i = 0; i < bars.Count; i++)
        {
            string path = $"frame.bars.{i}";
            RigMember member = ResolveFrame.Member(bars[i].Member, Resolver.Needed(bars[i].Name, path + ".name").Trim(), path + ".member", said, shelf, assume);
            made.Add((bars[i], member, Place(bars[i].From, path + ".from"), Place(bars[i].To, path + ".to"), path));
        }

        double dieWidth = ResolveFrame.DieWidth(said, assume);
        return new RigFreeFrame
        {
            Daylight = Resolver.Needed(said.Daylight, "frame.daylight"),
            DieWidth = dieWidth,
            DieDepth = said.DieDepth ?? dieWidth,
            Bolster = ResolveBearing.Bolster(said.Bolster, dieWidth, shelf, assume),
            RamDrop = ResolveFrame.RamDrop(said, assume),
            Horizontal = said.Horizontal == true,
            Points = [.. points.Select(p => new RigPoint(p.Name ?? "", FreeFrameRules.At(p), p.Held == true))],
            Bars = [.. made.Select(m => new RigBar(m.Member, m.From, m.To, Depth(m.Said, points[m.From], points[m.To]),
                Joint(m.Said.FromJoint, m.From, "from-joint", m), Joint(m.Said.ToJoint, m.To, "to-joint", m)))],
            CylinderAt = Place(said.CylinderAt, "frame.cylinder-at"),
            WorkAt = Place(said.WorkAt, "frame.work-at"),
        };

        RigJoint? Joint(Joint? how, int at, string key, (FrameBar, RigMember Member, int, int, string Path) bar)
        {
            if (how is null)
                return null;
            RigMember? onto = made.Where(o => o.Path != bar.Path && (o.From == at || o.To == at)).Select(o => o.Member).FirstOrDefault();
            string path = $"{bar.Path}.{key}";
            if (onto is null)
            {
                assume.Fault(path, "no other bar meets this one there", "no joint at a free end");
                return null;
            }

            return ResolveJoint.Of(how with { Fit = how.Fit ?? BeamFit.Between }, path, bar.Member, onto, shelf, assume);
        }
    }

    /// <summary>Unless said: up and down for a bar that lies, left and right for one that stands.</summary>
    private static Vector Depth(FrameBar bar, FramePoint from, FramePoint to)
    {
        Vector along = (FreeFrameRules.At(to) - FreeFrameRules.At(from)).Unit;
        bool stands = Math.Abs(along.Z) > 0.99;
        Vector said = bar.Depth switch
        {
            BarDepth.Right => Vector.Across,
            BarDepth.Back => Vector.Deep,
            BarDepth.Up => Vector.Up,
            _ => stands ? Vector.Across : Vector.Up,
        };
        // a depth along the bar itself says nothing
        return Math.Abs(along.Dot(said)) < 0.999 ? said : stands ? Vector.Across : Vector.Up;
    }
}
