using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>How much the answer hangs on one thing that the file leaves unsaid.</summary>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Less">What the press is safe to with the value a fifth smaller, N; null where such a press cannot be.</param>
/// <param name="More">The same with it a fifth greater.</param>
/// <param name="Moves">The greater of the two changes, of what the press is safe to or of its true force, as a share.</param>
public sealed record Guess(AssumedMeasure Assumed, double? Less, double? More, double Moves);

/// <summary>Which of the assumptions the answer hangs on: each is tried a fifth smaller and a fifth greater.</summary>
public static class Guesses
{
    /// <summary>By how much each is changed, up and down, as a share.</summary>
    public const double Swing = 0.2;

    /// <summary>Below this a guess hardly matters, as a share.</summary>
    public const double Little = 0.01;

    // Factors are a choice of how safe to be, not something to be measured.
    private const string Choices = "factors.";

    /// <summary>Tries them, the one that matters most first.</summary>
    /// <param name="press">The press as it was said.</param>
    /// <param name="shelf">Its stock.</param>
    /// <param name="check">The answer to it.</param>
    /// <param name="joints">Joints that were found from solids and kept.</param>
    public static IReadOnlyList<Guess> Of(Press press, Shelf shelf, PressCheck check, JointBook? joints = null)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(check);
        var guesses = new List<Guess>();
        foreach (AssumedMeasure assumed in check.Assumed.OfType<AssumedMeasure>().Where(a => !a.What.StartsWith(Choices, StringComparison.Ordinal)))
        {
            PressCheck? less = With(press, shelf, joints, assumed.What, assumed.Si * (1 - Swing)), more = With(press, shelf, joints, assumed.What, assumed.Si * (1 + Swing));
            guesses.Add(new Guess(assumed, less?.Ladder.SafeRating, more?.Ladder.SafeRating, Math.Max(Moved(check, less), Moved(check, more))));
        }

        return [.. guesses.OrderByDescending(g => g.Moves)];
    }

    private static double Moved(PressCheck from, PressCheck? to) => to is null ? 0
        : Math.Max(Share(from.Ladder.SafeRating, to.Ladder.SafeRating), Share(from.Power.TrueForce, to.Power.TrueForce));

    private static double Share(double from, double to) => from > 0 ? Math.Abs(to - from) / from : 0;

    private static PressCheck? With(Press press, Shelf shelf, JointBook? joints, string path, double value)
    {
        try
        {
            return PressCheck.Of(JointBook.Springing(Resolver.Resolve(PressKeys.With(press, path, value), shelf), joints));
        }
        catch (Exception cannot) when (cannot is ArgumentException or PressFaultsException or FrameMovesException)
        {
            return null;        // a value that such a press cannot have
        }
    }
}
