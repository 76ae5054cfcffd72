using Ramwright.Presses;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>How the parts are joined in the solid model.</summary>
public enum Joining
{
    /// <summary>One piece where they touch: butt welds.</summary>
    Whole,
    /// <summary>Only a strip as wide as the throat along the edges of the contact, or on the outer faces of a slotted column: fillets.</summary>
    Strip,
    /// <summary>Lapped faces joined on squares round the bolts only.</summary>
    Bolts,
}

/// <summary>A frame that is solved both ways.</summary>
/// <param name="Id">Letter and number.</param>
/// <param name="Words">What it is.</param>
/// <param name="Frame">The frame.</param>
public sealed record Study(string Id, string Words, RigFrame Frame)
{
    /// <summary>How the parts are joined in the solid.</summary>
    public Joining Joining { get; init; }
    /// <summary>Width of the strip, or of the square round a bolt, m.</summary>
    public double Strip { get; init; } = 6e-3;
    /// <summary>Distance from bolt to bolt each way, m.</summary>
    public double Pitch { get; init; }
    /// <summary>Thickness of a plate under the nuts of tie rods, as wide as the crown and welded to it, m; 0 for none.</summary>
    public double Washer { get; init; }
    /// <summary>The frame that the bricks are drawn from, where the frame itself knows lines only.</summary>
    public RigFrame? Drawn { get; init; }
    /// <summary>Longest brick beside a face, m.</summary>
    public double Fine { get; init; } = 0.016;
    /// <summary>Longest brick anywhere, m.</summary>
    public double Coarse { get; init; } = 0.05;
    /// <summary>Whether the middles of the bricks' edges are nodes too.</summary>
    public bool Middles { get; init; } = true;
    /// <summary>Which class of frame it stands for.</summary>
    public required string Class { get; init; }
    /// <summary>How near the opening by beams must come to the solid's; null where no rule is known for the joint.</summary>
    public double? Within { get; init; } = 0.05;

    /// <summary>How many times shorter the bricks are where it is solved again with finer ones; more than twice where narrow gaps set the bricks already.</summary>
    public int Refining { get; init; } = 2;

    /// <summary>The same with shorter bricks.</summary>
    public Study Finer => this with { Fine = Fine / Refining, Coarse = Coarse / Refining };

    /// <summary>What the theories print.</summary>
    public override string ToString() => Id;
}
