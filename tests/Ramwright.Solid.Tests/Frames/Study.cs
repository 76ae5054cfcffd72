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
    /// <summary>Longest brick beside a face, m.</summary>
    public double Fine { get; init; } = 0.016;
    /// <summary>Longest brick anywhere, m.</summary>
    public double Coarse { get; init; } = 0.05;
    /// <summary>Which class of frame it stands for.</summary>
    public required string Class { get; init; }
    /// <summary>How near the opening by beams must come to the solid's; null where no rule is known for the joint.</summary>
    public double? Within { get; init; } = 0.05;

    /// <summary>The same with bricks half as long.</summary>
    public Study Finer => this with { Fine = Fine / 2, Coarse = Coarse / 2 };

    /// <summary>What the theories print.</summary>
    public override string ToString() => Id;
}
