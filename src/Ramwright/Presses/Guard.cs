using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What keeps hands out of the closing dies.</summary>
[Says("what keeps hands out of the closing dies; how far off it must stand is worked out")]
[Kinds(typeof(TwoHandControl), typeof(LightCurtain), typeof(LightBeams), typeof(HoldToRun))]
public abstract record Guard
{
    /// <summary>From letting go, or breaking the beam, to the ram standing still, s.</summary>
    [Needed, Says("from letting go, or breaking the beam, to the ram standing still: measured"), Measure(Dimension.Time, "0.25 s", UpTo = 60)]
    public double? StopTime { get; init; }
}

/// <summary>Two buttons that both hands hold.</summary>
[Kind("two-hand"), Says("two buttons that both hands must hold")]
public sealed record TwoHandControl : Guard
{
    /// <summary>Whether covers keep a hand from reaching on.</summary>
    [Says("covers keep a hand from reaching on while its button is held")]
    public bool? Shrouded { get; init; }
}

/// <summary>A curtain of light that sees a hand.</summary>
[Kind("light-curtain"), Says("a curtain of light that sees a hand or a finger")]
public sealed record LightCurtain : Guard
{
    /// <summary>Thickness of what it surely sees, m.</summary>
    [Needed, Says("thickness of what it surely sees, on its plate"), Measure(Dimension.Length, "30 mm", UpTo = 0.04)]
    public double? Resolution { get; init; }
}

/// <summary>Beams that see a body.</summary>
[Kind("light-beams"), Says("one or more beams of light that see a body")]
public sealed record LightBeams : Guard
{
    /// <summary>How many.</summary>
    [Says("how many beams"), Measure(Dimension.Count, "2", From = 1, UpTo = 10)]
    public double? Beams { get; init; }
}

/// <summary>A lever, pedal or button that must be held.</summary>
[Kind("hold-to-run"), Says("a lever, pedal or button that must be held all the while")]
public sealed record HoldToRun : Guard;
