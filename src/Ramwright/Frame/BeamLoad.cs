using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>A uniform load over part of a beam in the beam's own axes, N/m, and the number of the next on the same beam (−1: none).</summary>
internal readonly record struct BeamLoad(double X, double Y, double Z, double From, double To, int Next)
{
    public static BeamLoad Of(in Beam beam, MemberLoad load, int next)
    {
        MemberAxes axes = beam.Axes;
        double from = FrameCheck.Along(load.From, axes.Length, nameof(MemberLoad.From));
        double to = FrameCheck.Along(load.To, axes.Length, nameof(MemberLoad.To));
        if (!(to > from))
            throw new ArgumentException($"A load on member {load.Member} runs from {load.From:G6} m to {load.To:G6} m: it must have a length.");
        Vector q = load.PerMetre;
        return new BeamLoad(q.Dot(axes.X), q.Dot(axes.Y), q.Dot(axes.Z), from, to, next);
    }
}
