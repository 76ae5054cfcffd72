using Ramwright.Frame;

namespace Ramwright.Proving;

/// <summary>A place where a dial indicator is set, and what it will show.</summary>
/// <param name="Name">Its word in the log.</param>
/// <param name="Says">How to set the dial.</param>
/// <param name="PerNewton">What it will show for one newton at the ram, centred, m/N; 0 where nothing is to move.</param>
public sealed record DialPoint(string Name, string Says, double PerNewton)
{
    /// <summary>What crown and bed give at this place for one newton that the dial does not see, m/N: the dies' sinking into them, beside the opening.</summary>
    public double Unseen { get; init; }

    /// <summary>The places of a test: the opening, and the bow of crown and bed or the throat.</summary>
    /// <param name="response">How the frame answers one newton.</param>
    public static IReadOnlyList<DialPoint> Of(FrameResponse response)
    {
        ArgumentNullException.ThrowIfNull(response);
        FramePlan plan = response.Plan;
        // beside the dies: what the dies sink into crown and bed is not seen there
        var points = new List<DialPoint> { new("opening", Opening(plan), Rise(response, plan.Upper) - Rise(response, plan.Lower)) { Unseen = plan.Pressing } };
        foreach (int middle in new[] { plan.Upper, plan.Lower })
        {
            if (Ends.Of(response, middle) is { } ends)
                points.Add(new DialPoint(ends.Word, $"in the middle of a straight bar that rests on both ends of the {ends.Name} itself", Math.Abs(Rise(response, middle) - (ends.Left + ends.Right) / 2)));
        }

        if (Throat(response) is { } throat)
            points.Add(throat);
        return points;
    }

    /// <summary>Places where joints are watched, for telling a slipping joint from a light beam: next to nothing moves there while all is well.</summary>
    /// <param name="response">How the frame answers one newton.</param>
    public static IReadOnlyList<DialPoint> Joints(FrameResponse response)
    {
        ArgumentNullException.ThrowIfNull(response);
        var points = new List<DialPoint>();
        foreach (int middle in new[] { response.Plan.Upper, response.Plan.Lower })
        {
            if (response.Plan.Joints.Count > 0 && Ends.Of(response, middle) is { } ends)
                points.Add(new DialPoint(ends.Word + "-joint", $"on an upright close to the {ends.Name}, its tip on the {ends.Name}'s end: the slip of the joint", Math.Abs((ends.Left + ends.Right - ends.LeftHeld - ends.RightHeld) / 2)));
        }

        return points;
    }

    private static string Opening(FramePlan plan) => Node(plan, "column, at the lower arm") >= 0
        ? "between the arms at the ram, beside the cylinder and clear of the block, on a rod that stands on the lower arm"
        : "between crown and bed, beside the cylinder and clear of the block, on a rod that stands on the bed";

    /// <summary>How far the arms part at the column: the turn and stretch of the column and what its joints slip, without the arms' own bending.</summary>
    private static DialPoint? Throat(FrameResponse response)
    {
        int low = Node(response.Plan, "column, at the lower arm"), high = Node(response.Plan, "column, at the upper arm");
        if (low < 0 || high < 0)
            return null;
        double parted = Root(response, high, response.Plan.Upper) - Root(response, low, response.Plan.Lower);
        return new DialPoint("throat", "between the arms, hard against the column's face", Math.Abs(parted));
    }

    /// <summary>Rise of an arm's own end where it leaves the column.</summary>
    private static double Root(FrameResponse response, int from, int to)
    {
        int arm = Member(response.Plan, m => m.From == from && m.To == to);
        return response.Solutions[0].DisplacementAlong(arm, 0).Z;
    }

    private static double Rise(FrameResponse response, int node) => response.Solutions[0].Displacement(node).Z;

    private static int Node(FramePlan plan, string name)
    {
        for (int i = 0; i < plan.Model.Nodes.Count; i++)
        {
            if (plan.Model.Nodes[i].Name == name)
                return i;
        }

        return -1;
    }

    private static int Member(FramePlan plan, Func<FrameMember, bool> which)
    {
        for (int i = 0; i < plan.Model.Members.Count; i++)
        {
            if (which(plan.Model.Members[i]))
                return i;
        }

        return -1;
    }

    /// <summary>The ends of crown or bed, as the beam's own and as what holds them, m of rise for one newton.</summary>
    private sealed record Ends(string Name, double Left, double Right, double LeftHeld, double RightHeld)
    {
        public string Word => Name.Replace(' ', '-');

        public static Ends? Of(FrameResponse response, int middle)
        {
            FramePlan plan = response.Plan;
            string name = plan.Model.Nodes[middle].Name.Split(',')[0];
            int left = Node(plan, name + ", left end"), right = Node(plan, name + ", right end");
            int first = Member(plan, m => m.From == left && m.To == middle), last = first < 0 ? -1 : Member(plan, m => m.To == right && m.Part == plan.Model.Members[first].Part);
            if (left < 0 || right < 0 || first < 0 || last < 0)
                return null;
            FrameSolution centred = response.Solutions[0];
            return new Ends(name, centred.DisplacementAlong(first, 0).Z, centred.DisplacementAlong(last, centred.Length(last)).Z, Rise(response, left), Rise(response, right));
        }
    }
}
