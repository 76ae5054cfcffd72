using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>What hangs on the ram, every number settled. SI.</summary>
/// <param name="StripOff">Force that strips a stuck die off the work, as a share of the ram force.</param>
/// <param name="DieHolder">Holder of the upper die.</param>
/// <param name="AntiTwist">Arm that keeps the ram from turning.</param>
/// <param name="Saddle">Loose cap.</param>
public sealed record RigRamEnd(double StripOff, RigDieHolder? DieHolder, RigAntiTwist? AntiTwist, RigSaddle? Saddle);

/// <summary>Holder of the upper die.</summary>
/// <param name="Screws">What holds it to the ram; null where only set screws do.</param>
/// <param name="Face">Width of the face that bears on the ram, m.</param>
/// <param name="SetScrew">Diameter of the set screws, m; 0 where there are none.</param>
/// <param name="SetScrews">How many of them.</param>
public sealed record RigDieHolder(RigScrews? Screws, double Face, double SetScrew, int SetScrews);

/// <summary>Arm that keeps the ram from turning.</summary>
public sealed record RigAntiTwist
{
    /// <summary>From the ram's centre to the pad, m.</summary>
    public required double Length { get; init; }
    /// <summary>Depth in the direction of the push, m.</summary>
    public required double Depth { get; init; }
    /// <summary>Height along the ram, m.</summary>
    public required double Height { get; init; }
    /// <summary>Steel of arm and guide bar.</summary>
    public required Steel Steel { get; init; }
    /// <summary>Torque over ram force, m.</summary>
    public required double Twist { get; init; }
    /// <summary>Its weld, where it has one.</summary>
    public RigWeld? Weld { get; init; }
    /// <summary>Depth of the guide bar, m; 0 where there is none.</summary>
    public double GuideDepth { get; init; }
    /// <summary>Width of the guide bar, m.</summary>
    public double GuideWidth { get; init; }
    /// <summary>Free length of the guide bar, m.</summary>
    public double GuideSpan { get; init; }
}

/// <summary>Loose cap between ram and work.</summary>
/// <param name="Diameter">Face that bears on the ram, m.</param>
/// <param name="Hole">Hole in it, m.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigSaddle(double Diameter, double Hole, Steel Steel);
