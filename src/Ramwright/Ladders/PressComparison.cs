using Ramwright.Frame;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>What became of a rung.</summary>
public enum RungChange
{
    /// <summary>It is where it was.</summary>
    Stays,
    /// <summary>It stands higher.</summary>
    Up,
    /// <summary>It stands lower.</summary>
    Down,
    /// <summary>The press had none such before.</summary>
    New,
    /// <summary>The press has none such any more.</summary>
    Gone,
}

/// <summary>One rung in two versions of a press.</summary>
/// <param name="Before">In the first; null where it has none such.</param>
/// <param name="After">In the second; null where it has none such.</param>
public sealed record RungMove(Rung? Before, Rung? After)
{
    private const double Same = 1e-9;

    /// <summary>The rung in the second version, or else in the first.</summary>
    public Rung Rung => After ?? Before!;

    /// <summary>By how much the force it is safe to has changed, N; null where only one version has it.</summary>
    public double? SafeToBy => After?.SafeTo - Before?.SafeTo;

    /// <summary>By how much the force at which it gives has changed, N; null where only one version has it.</summary>
    public double? GivesAtBy => After?.GivesAt - Before?.GivesAt;

    /// <summary>The change of the force it is safe to, as a share of what it was; null where there is no such share.</summary>
    public double? Share => Before is { SafeTo: > 0 } before ? SafeToBy / before.SafeTo : null;

    /// <summary>What became of it.</summary>
    public RungChange Change => (Before, After) switch
    {
        (null, _) => RungChange.New,
        (_, null) => RungChange.Gone,
        ({ } a, { } b) when Near(a.SafeTo, b.SafeTo) && Near(a.GivesAt, b.GivesAt) => RungChange.Stays,
        ({ } a, { } b) when Near(a.SafeTo, b.SafeTo) => b.GivesAt > a.GivesAt ? RungChange.Up : RungChange.Down,
        ({ } a, { } b) => b.SafeTo > a.SafeTo ? RungChange.Up : RungChange.Down,
    };

    private static bool Near(double a, double b) => Math.Abs(a - b) <= Same * Math.Max(Math.Abs(a), Math.Abs(b));
}

/// <summary>Two versions of a press held against each other, rung by rung.</summary>
public sealed class PressComparison
{
    private PressComparison(PressCheck before, PressCheck after, IReadOnlyList<RungMove> rungs) =>
        (Before, After, Rungs) = (before, after, rungs);

    /// <summary>The first version.</summary>
    public PressCheck Before { get; }

    /// <summary>The second version.</summary>
    public PressCheck After { get; }

    /// <summary>Every rung that either has, in the order of the second's ladder; those it lacks stand where they stood.</summary>
    public IReadOnlyList<RungMove> Rungs { get; }

    /// <summary>Those that are not where they were.</summary>
    public IEnumerable<RungMove> Moved => Rungs.Where(r => r.Change != RungChange.Stays);

    /// <summary>Mass of the steel as cut, first and second, kg; null where one of the frames has no body.</summary>
    public (double Before, double After)? Steel { get; private init; }

    /// <summary>What the steel costs more in the second, in the money of the price; less than zero where it costs less; null where it cannot be told.</summary>
    public double? AddedPrice { get; private init; }

    /// <summary>Compares.</summary>
    /// <param name="before">The first version.</param>
    /// <param name="after">The second version.</param>
    /// <param name="pricePerKg">What a kilogram of steel costs; null where nobody says.</param>
    /// <exception cref="ArgumentOutOfRangeException">A price below zero, or no number.</exception>
    public static PressComparison Of(PressCheck before, PressCheck after, double? pricePerKg = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (pricePerKg is { } price)
            Check.NotNegative(price, nameof(pricePerKg));
        Dictionary<string, Rung> first = before.Ladder.Rungs.ToDictionary(r => r.Id), second = after.Ladder.Rungs.ToDictionary(r => r.Id);
        RungMove[] rungs =
        [
            .. first.Keys.Union(second.Keys).Select(id => new RungMove(first.GetValueOrDefault(id), second.GetValueOrDefault(id)))
                .OrderBy(m => m.Rung.SafeTo).ThenBy(m => m.Rung.Id, StringComparer.Ordinal),
        ];
        double? a = Mass(before), b = Mass(after);
        return new PressComparison(before, after, rungs)
        {
            Steel = a is { } m && b is { } n ? (m, n) : null,
            AddedPrice = (b - a) * pricePerKg,
        };
    }

    private static double? Mass(PressCheck check)
    {
        try
        {
            return FrameBody.Of(check.Rig).Mass;
        }
        catch (NotSupportedException)
        {
            return null;
        }
    }
}
