using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>Which way work stands off centre.</summary>
public enum OffCentreWay
{
    /// <summary>To one side.</summary>
    Across,
    /// <summary>To the front.</summary>
    Deep,
}

/// <summary>What the press is safe to where work may stand anywhere up to an offset, one way.</summary>
/// <param name="Way">Which way.</param>
/// <param name="Offset">How far, m.</param>
/// <param name="SafeTo">Ram force, N.</param>
/// <param name="Governing">The rung that sets it.</param>
public sealed record OffCentrePoint(OffCentreWay Way, double Offset, double SafeTo, Rung Governing);

/// <summary>
/// The allowed ram force against how far off centre the work stands: the whole ladder worked out anew at each offset, one way at
/// a time, everything else as the press says.
/// </summary>
public sealed class OffCentre
{
    private const int Steps = 8;
    // a place short of the uprights themselves
    private const double ShortOfUpright = 0.9;
    private const double LeastShown = 0.025;
    private static readonly double[] RoundSteps = [0.001, 0.002, 0.005, 0.01, 0.02, 0.025, 0.05, 0.1, 0.2, 0.25, 0.5, 1];

    private static readonly double[] RoundInches = [.. new[] { 1 / 16.0, 1 / 8.0, 1 / 4.0, 1 / 2.0, 1, 2, 4, 6, 12, 24 }.Select(inch => inch * 0.0254)];

    private readonly PressCheck _press;

    private OffCentre(PressCheck press, IReadOnlyList<OffCentrePoint> points) => (_press, Points) = (press, points);

    /// <summary>Across first, then deep, each from the centre outward; the force never rises with the offset.</summary>
    public IReadOnlyList<OffCentrePoint> Points { get; }

    /// <summary>Works the curve out, in round steps as far as work can stand.</summary>
    /// <param name="press">The press.</param>
    /// <param name="units">What the steps are round in.</param>
    public static OffCentre Of(PressCheck press, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(press);
        var points = new List<OffCentrePoint>();
        foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
            Along(press, way, units == UnitSystem.Imperial ? RoundInches : RoundSteps, points);
        return new OffCentre(press, points);
    }

    private static void Along(PressCheck press, OffCentreWay way, double[] round, List<OffCentrePoint> points)
    {
        double furthest = Furthest(press.Rig, way), step = RoundStep(furthest, round);
        int count = (int)Math.Floor(furthest / step + 1e-9);
        PressCheck at = press;
        Rung? lowest = null;
        for (int i = 0; i <= count; i++)
        {
            if (At(at, way, i * step) is not { } next)
                break;
            at = next;
            // work may stand anywhere up to the offset, so what is lower nearer the centre stays
            if (lowest is null || at.Ladder.SafeRating < lowest.SafeTo)
                lowest = at.Ladder.Governing;
            points.Add(new OffCentrePoint(way, i * step, lowest.SafeTo, lowest));
        }
    }

    /// <summary>How far off centre, one way, work may stand under a force, m; null where the press is not safe to it even centred.</summary>
    /// <param name="way">Which way.</param>
    /// <param name="force">Ram force, N.</param>
    /// <returns>To a tenth of a millimetre, rounded down; at most the last offset of <see cref="Points"/>.</returns>
    public double? Reach(OffCentreWay way, double force)
    {
        double asked = force * (1 - 1e-9), good = double.NaN, bad = double.NaN;
        foreach (OffCentrePoint point in Points)
        {
            if (point.Way != way || !double.IsNaN(bad))
                continue;
            if (point.SafeTo >= asked)
                good = point.Offset;
            else
                bad = point.Offset;
        }

        if (double.IsNaN(good))
            return null;
        if (double.IsNaN(bad))
            return good;
        PressCheck at = _press;
        while (bad - good > 0.5e-4)
        {
            double half = (good + bad) / 2;
            PressCheck? there = At(at, way, half);
            at = there ?? at;
            (good, bad) = there?.Ladder.SafeRating >= asked ? (half, bad) : (good, half);
        }

        return Math.Floor(good * 1e4) / 1e4;
    }

    /// <summary>The press with its work there; null where the frame, on the verge of folding as it is, would fold, or a joint could not hold.</summary>
    private static PressCheck? At(PressCheck press, OffCentreWay way, double offset)
    {
        try
        {
            return press.Loaded(press.Rig.Loading with
            {
                Across = way == OffCentreWay.Across ? offset : 0,
                Deep = way == OffCentreWay.Deep ? offset : 0,
            });
        }
        catch (Exception cannot) when (cannot is FrameMovesException or PressFaultsException)
        {
            return null;
        }
    }

    /// <summary>As far as work can stand off centre, one way, m.</summary>
    public static double Furthest(Rig rig, OffCentreWay way)
    {
        ArgumentNullException.ThrowIfNull(rig);
        (double across, double deep) = rig.Frame switch
        {
            RigClosedFrame c => (Math.Min(ShortOfUpright * c.Width, c.Width - c.DieWidth) / 2, c.Bed.Shape.Properties.Width / 2),
            RigOpenFrontFrame o => (o.LowerArm.Shape.Properties.Width / 2, o.ArmReach - o.Throat),
            _ => (0.0, 0.0),
        };
        (double there, double said) = way == OffCentreWay.Across ? (across, rig.Loading.Across) : (deep, rig.Loading.Deep);
        // dies reach further than a narrow arm does
        double most = Math.Max(Math.Max(there, said), Math.Max(rig.Frame.DieWidth / 2, LeastShown));
        return way == OffCentreWay.Across && rig.Frame is RigClosedFrame closed ? Math.Min(most, ShortOfUpright * closed.Width / 2) : most;
    }

    private static double RoundStep(double furthest, double[] round)
    {
        foreach (double step in round)
        {
            if (furthest / step <= Steps + 2)
                return step;
        }

        return furthest / Steps;
    }
}
