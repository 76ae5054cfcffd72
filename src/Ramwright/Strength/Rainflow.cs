using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>One loop, or half of one, of a course that goes up and down.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it turns.</param>
/// <param name="Count">1 for a closed loop, ½ for one that is left open.</param>
public readonly record struct Loop(double From, double To, double Count)
{
    /// <summary>Range.</summary>
    public double Range => Math.Abs(To - From);
    /// <summary>Mean.</summary>
    public double Mean => (From + To) / 2;
}

/// <summary>Counts the loops of a course that goes up and down as it likes: rainflow counting by three points.</summary>
public static class Rainflow
{
    /// <summary>The rule.</summary>
    public static readonly Citation Source = new("ASTM E1049-85", "5.4.4");

    /// <summary>Counts.</summary>
    /// <param name="course">Values in time; only where they turn counts.</param>
    /// <param name="least">Ranges below this are noise: they do not turn the course. 0 counts all.</param>
    public static IReadOnlyList<Loop> Count(IReadOnlyList<double> course, double least = 0)
    {
        ArgumentNullException.ThrowIfNull(course);
        Check.NotNegative(least);
        var loops = new List<Loop>();
        var stack = new List<double>();
        foreach (double point in Turns(course, least))
        {
            stack.Add(point);
            while (stack.Count >= 3)
            {
                double x = Math.Abs(stack[^1] - stack[^2]), y = Math.Abs(stack[^2] - stack[^3]);
                if (x < y)
                    break;
                if (stack.Count == 3)
                {
                    // y holds the starting point: half a loop, and the start moves on
                    loops.Add(new Loop(stack[0], stack[1], 0.5));
                    stack.RemoveAt(0);
                }
                else
                {
                    loops.Add(new Loop(stack[^3], stack[^2], 1));
                    stack.RemoveRange(stack.Count - 3, 2);
                }
            }
        }

        for (int i = 1; i < stack.Count; i++)
            loops.Add(new Loop(stack[i - 1], stack[i], 0.5));
        return loops;
    }

    /// <summary>Where a course turns, its first and last value included.</summary>
    /// <param name="course">Values in time.</param>
    /// <param name="least">A turn by less than this is none.</param>
    public static IReadOnlyList<double> Turns(IReadOnlyList<double> course, double least = 0)
    {
        ArgumentNullException.ThrowIfNull(course);
        var turns = new List<double>();
        foreach (double value in course)
        {
            Check.Finite(value, nameof(course));
            if (turns.Count == 0)
            {
                turns.Add(value);
                continue;
            }

            double last = turns[^1];
            if (value == last)
                continue;
            bool onward = turns.Count > 1 && value > last == last > turns[^2];
            if (onward)
                turns[^1] = value;
            else if (Math.Abs(value - last) > least)
                turns.Add(value);
        }

        return turns;
    }
}
