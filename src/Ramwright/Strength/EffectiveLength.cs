using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>How the two ends of a column or rod are held.</summary>
public enum ColumnEnds
{
    /// <summary>Both ends fixed, neither can move aside.</summary>
    FixedFixed,
    /// <summary>One fixed, one turning, neither can move aside.</summary>
    FixedPinned,
    /// <summary>Both turning, neither can move aside.</summary>
    PinnedPinned,
    /// <summary>Both held against turning, one free to move aside.</summary>
    FixedFixedSway,
    /// <summary>One fixed, one free: a ram without a guide.</summary>
    FixedFree,
    /// <summary>One turning, the other held against turning but free to move aside.</summary>
    PinnedRotationFixedSway,
}

/// <summary>Effective length factors.</summary>
public static class EffectiveLength
{
    /// <summary>Values of K.</summary>
    public static readonly Citation Source = new("AISC 360-16 commentary", "table C-A-7.1");

    /// <summary>K by theory.</summary>
    public static double Theory(ColumnEnds ends) => ends switch
    {
        ColumnEnds.FixedFixed => 0.5,
        ColumnEnds.FixedPinned => 0.7,
        ColumnEnds.PinnedPinned => 1.0,
        ColumnEnds.FixedFixedSway => 1.0,
        ColumnEnds.FixedFree => 2.0,
        ColumnEnds.PinnedRotationFixedSway => 2.0,
        _ => throw new ArgumentOutOfRangeException(nameof(ends), ends, "unknown"),
    };

    /// <summary>K recommended for design, where ends are never held perfectly.</summary>
    public static double Design(ColumnEnds ends) => ends switch
    {
        ColumnEnds.FixedFixed => 0.65,
        ColumnEnds.FixedPinned => 0.80,
        ColumnEnds.PinnedPinned => 1.0,
        ColumnEnds.FixedFixedSway => 1.2,
        ColumnEnds.FixedFree => 2.1,
        ColumnEnds.PinnedRotationFixedSway => 2.0,
        _ => throw new ArgumentOutOfRangeException(nameof(ends), ends, "unknown"),
    };
}
