using Ramwright.Presses;

namespace Ramwright.Ladders;

/// <summary>What a change asks of the builder, the mildest first.</summary>
public enum LiftCost
{
    /// <summary>Made or set otherwise: a section, a weld, a bolt, a valve.</summary>
    Work,
    /// <summary>Another bought part: cylinder, motor, hose.</summary>
    Part,
    /// <summary>Something that the press could do is given up: opening, reach, stroke, work off centre.</summary>
    GivesUp,
}

/// <summary>One change to a press: a key, or the same key of parts that are alike, set to another value.</summary>
/// <param name="Edits">The keys to set, in this order.</param>
/// <param name="Cost">What it asks of the builder.</param>
public sealed record LiftChange(IReadOnlyList<PressEdit> Edits, LiftCost Cost)
{
    /// <summary>The press with the change made.</summary>
    public Press On(Press press)
    {
        foreach (PressEdit edit in Edits)
            press = edit.On(press);
        return press;
    }

    /// <summary>The keys it sets, as one text: what two sizes of one change share.</summary>
    internal string Keys { get; } = string.Join(' ', Edits.Select(e => e.Path));
}

/// <summary>A press changed so that it carries more.</summary>
/// <param name="Changes">What is changed, in the order it was found.</param>
/// <param name="Press">The press as changed.</param>
/// <param name="Check">Its check.</param>
/// <param name="AddedMass">Steel of the members that comes on, centre line to centre line, kg; less than zero where some falls away.</param>
/// <param name="AddedPrice">What that steel costs, in the money of <see cref="Press.PricePerKg"/>; null where no price is said.</param>
public sealed record LiftWay(IReadOnlyList<LiftChange> Changes, Press Press, PressCheck Check, double AddedMass, double? AddedPrice)
{
    /// <summary>Hot spots of joints that were changed, and the force that each is taken to be safe to, N: as much above or below plain stress as before. A solid of the joint says it truly.</summary>
    public IReadOnlyList<(string Rung, double SafeTo)> HotSpots { get; init; } = [];

    /// <summary>All keys set, a later edit of a key standing for an earlier one.</summary>
    public IReadOnlyList<PressEdit> Edits
    {
        get
        {
            var last = new List<PressEdit>();
            foreach (PressEdit edit in Changes.SelectMany(c => c.Edits))
            {
                int at = last.FindIndex(e => e.Path == edit.Path);
                if (at < 0)
                    last.Add(edit);
                else
                    last[at] = edit with { Old = last[at].Old };
            }

            return last;
        }
    }

    /// <summary>The dearest that any of its changes asks.</summary>
    public LiftCost Cost => Changes.Count == 0 ? LiftCost.Work : Changes.Max(c => c.Cost);
}
