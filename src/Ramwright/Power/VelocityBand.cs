using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Where the speed of the oil stands against the trade's band.</summary>
public enum VelocityVerdict
{
    /// <summary>The line carries no flow.</summary>
    Still,
    /// <summary>Slower than the band: the line is larger than it need be. No harm.</summary>
    Below,
    /// <summary>Within the band.</summary>
    Within,
    /// <summary>Faster than the band: losses, heat, and a starved pump if it is a suction line.</summary>
    Above,
}

/// <summary>Speeds of oil that the trade keeps to.</summary>
/// <param name="Least">m/s.</param>
/// <param name="Most">m/s.</param>
public readonly record struct VelocityBand(double Least, double Most)
{
    /// <summary>The bands.</summary>
    public static readonly Citation Source = Citation.Practice("speed of oil: suction 0.5 to 1.5, return 2 to 4, pressure 3 to 10 m/s");

    /// <summary>The band for what a line does.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A duty that does not exist.</exception>
    public static VelocityBand Of(LineDuty duty) => duty switch
    {
        LineDuty.Suction => new(0.5, 1.5),
        LineDuty.Return => new(2, 4),
        LineDuty.Pressure => new(3, 10),
        _ => throw new ArgumentOutOfRangeException(nameof(duty), duty, "There is no such duty of a line."),
    };

    /// <summary>Where a speed stands.</summary>
    /// <param name="u">m/s, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative speed, or no number.</exception>
    public VelocityVerdict Judge(double u)
    {
        Check.NotNegative(u);
        return u == 0 ? VelocityVerdict.Still
            : u < Least ? VelocityVerdict.Below
            : u <= Most ? VelocityVerdict.Within
            : VelocityVerdict.Above;
    }
}
