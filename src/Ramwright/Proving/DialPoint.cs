using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Proving;

/// <summary>A place where a dial indicator is set, and what it will show.</summary>
/// <param name="Name">Its word in the log.</param>
/// <param name="Says">How to set the dial.</param>
/// <param name="PerNewton">What it will show for one newton at the ram, centred, m/N.</param>
public sealed record DialPoint(string Name, string Says, double PerNewton)
{
    /// <summary>The points of a frame.</summary>
    /// <param name="response">How it answers one newton.</param>
    public static IReadOnlyList<DialPoint> Of(FrameResponse response)
    {
        ArgumentNullException.ThrowIfNull(response);
        FramePlan plan = response.Plan;
        var points = new List<DialPoint>
        {
            // beside the dies: what the dies sink into crown and bed is not seen there
            new("opening", "between crown and bed (or arms), beside the cylinder and clear of the block, on a rod that stands on the bed", Rise(response, plan.Upper) - Rise(response, plan.Lower)),
        };
        if (Bow(response, plan.Upper) is { } crown)
            points.Add(crown);
        if (Bow(response, plan.Lower) is { } bed)
            points.Add(bed);
        if (Throat(response) is { } throat)
            points.Add(throat);
        return [.. points.Where(p => Math.Abs(p.PerNewton) > 1e-13)];
    }

    /// <summary>The bow of a beam between its own ends: dial in the middle of a straight bar that rests on both ends.</summary>
    private static DialPoint? Bow(FrameResponse response, int middle)
    {
        string name = response.Plan.Model.Nodes[middle].Name.Split(',')[0];
        int left = Find(response, name + ", left end"), right = Find(response, name + ", right end");
        if (left < 0 || right < 0)
            return null;
        double bow = Rise(response, middle) - (Rise(response, left) + Rise(response, right)) / 2;
        return new DialPoint(name, $"in the middle of a straight bar that rests on both ends of the {name}, over the uprights", Math.Abs(bow));
    }

    /// <summary>How far the arms part at the column: the turn of the joints and the stretch of the column, without the arms' own bending.</summary>
    private static DialPoint? Throat(FrameResponse response)
    {
        int low = Find(response, "column, at the lower arm"), high = Find(response, "column, at the upper arm");
        return low < 0 || high < 0 ? null
            : new DialPoint("throat", "between the arms, hard against the column's face", AtFace(response, high) - AtFace(response, low));
    }

    // the column's face stands before its centre line: what it turns lifts the face
    private static double AtFace(FrameResponse response, int node)
    {
        FrameSolution centred = response.Solutions[0];
        Vector arm = new(0, -response.Plan.Model.Nodes[node].At.Y, 0);
        return (centred.Displacement(node) + centred.Rotation(node).Cross(arm)).Z;
    }

    private static double Rise(FrameResponse response, int node) => response.Solutions[0].Displacement(node).Z;

    private static int Find(FrameResponse response, string name)
    {
        for (int i = 0; i < response.Plan.Model.Nodes.Count; i++)
        {
            if (response.Plan.Model.Nodes[i].Name == name)
                return i;
        }

        return -1;
    }
}
