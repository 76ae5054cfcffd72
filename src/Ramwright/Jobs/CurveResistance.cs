using Ramwright.Quantities;

namespace Ramwright.Jobs;

/// <summary>Cold work: force by travel alone, straight between points. Beyond its end it stays at its last value.</summary>
public sealed record CurveResistance : IResistance
{
    /// <summary>From points.</summary>
    /// <param name="points">At least two, travel rising from 0, no force negative.</param>
    /// <exception cref="ArgumentException">Points that make no curve.</exception>
    public CurveResistance(params IReadOnlyList<ForceAt> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2 || points[0].Travel != 0)
            throw new ArgumentException("a curve begins at no travel and has at least two points", nameof(points));
        for (int i = 0; i < points.Count; i++)
        {
            Check.NotNegative(points[i].Force);
            if (i > 0)
                Check.Above(points[i].Travel, points[i - 1].Travel);
        }

        Points = points;
    }

    /// <summary>The points.</summary>
    public IReadOnlyList<ForceAt> Points { get; }

    /// <inheritdoc/>
    public double Travel => Points[^1].Travel;

    /// <inheritdoc/>
    public double Force(double travel, double speed, double temperature)
    {
        if (travel >= Travel)
            return Points[^1].Force;
        int i = 1;
        while (Points[i].Travel < travel)
            i++;
        (ForceAt a, ForceAt b) = (Points[i - 1], Points[i]);
        return a.Force + (b.Force - a.Force) * Math.Max(0, travel - a.Travel) / (b.Travel - a.Travel);
    }
}
