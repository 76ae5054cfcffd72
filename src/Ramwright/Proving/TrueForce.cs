using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>The force a press really gives, from readings, with its uncertainty.</summary>
public sealed record TrueForce
{
    /// <summary>Comparison of a measured with a predicted value.</summary>
    public static readonly Citation Compared = new("ISO/IEC 17043", "E_n number", Standing.FromMemory);

    /// <summary>The force with its uncertainty and budget.</summary>
    public required Uncertainty Force { get; init; }
    /// <summary>The same by drawing.</summary>
    /// <remarks>
    /// Inputs from few readings are drawn from a normal distribution and the interval is widened as their effective degrees of freedom ask. JCGM 101 draws each of them from
    /// Student's: with five readings beside a gauge's bounds such intervals held the truth in 98 cases of 100 where 95 were stated; these hold it as often as they say. The
    /// bench counts it.
    /// </remarks>
    public required MonteCarlo Drawn { get; init; }
    /// <summary>Gauge pressure it belongs to, Pa.</summary>
    public required double Pressure { get; init; }
    /// <summary>Where the friction comes from.</summary>
    public required FrictionFrom FrictionFrom { get; init; }
    /// <summary>What the model says at the same pressure, N.</summary>
    public required double Model { get; init; }
    /// <summary>What it is sold as, N; null where nothing is said.</summary>
    public double? SoldAs { get; init; }
    /// <summary>What was taken for granted.</summary>
    public required IReadOnlyList<string> Taken { get; init; }
    /// <summary>Readings at the top that lie so far from the others that their mean means nothing.</summary>
    public IReadOnlyList<Reading> Apart { get; init; } = [];
    /// <summary>Writes the full working.</summary>
    public required Action<Working> Work { get; init; }

    /// <summary>Half the interval that is stated, N: that of the law of propagation where drawing agrees with it, else half of the drawn one.</summary>
    /// <remarks>JCGM 101:2008, clause 8: where the two do not agree, the drawn one stands.</remarks>
    public double Stated => Agrees ? Force.Expanded : (Drawn.High - Drawn.Low) / 2;

    /// <summary>The middle of the interval that is stated, N.</summary>
    public double Value => Agrees ? Force.Value : (Drawn.High + Drawn.Low) / 2;

    /// <summary>Measured less predicted, over the expanded uncertainty: beyond one the model does not explain the press.</summary>
    public double En => Stated > 0 ? (Value - Model) / Stated : 0;

    /// <summary>Whether the law of propagation may be used, by drawing.</summary>
    public bool Agrees => Drawn.Against(Force, Figures).Agree;

    /// <summary>Figures of the uncertainty that are stated, and so have to agree.</summary>
    public const int Figures = 2;

    /// <summary>Coverage factor of the interval that is stated: half of it over the combined standard uncertainty.</summary>
    public double StatedCoverage => Force.Combined > 0 ? Stated / Force.Combined : 0;

    /// <summary>The instrument or assumption that brings most of the uncertainty.</summary>
    public (string From, double Share) ImproveFirst => Force.BySource[0];

    /// <summary>In a sentence: <c>23.6 t ± 0.8 t (k = 2); sold as 30 t</c>.</summary>
    /// <param name="units">Which units.</param>
    public string Saying(UnitSystem units)
    {
        string force = UncertainText.Force(this, units);
        return SoldAs is { } sold ? $"{force}; sold as {UncertainText.Tons(sold, units)}" : force;
    }

    /// <summary>Why this is no force that anybody may rely on; null where it is one.</summary>
    /// <param name="units">Which units.</param>
    public string? Untold(UnitSystem units)
    {
        string Of(double n) => Readout.Text(n, Dimension.Force, units);
        if (Apart.Count > 0)
        {
            string lines = string.Join(", ", Apart.Select(r => $"line {r.Line} with {Readout.Text(r.Value, Dimension.Pressure, units, 4)}"));
            return $"the readings of top-pressure do not belong together: {lines}; all of them ought to be the same. {Strike(Apart[0].Line)}";
        }

        return Value - Stated > 0 ? null
            : $"what was read leaves everything from {Of(Value - Stated)} to {Of(Value + Stated)} open, no force at all among it: better instruments, or readings that belong together";
    }

    /// <summary>How a wrong line is taken out of the reckoning.</summary>
    /// <param name="line">Its number.</param>
    public static string Strike(int line) => $"A wrong line is struck out by adding: strike {line}";

    /// <summary>From the readings; null where no pressure was read with the ram dead against a block.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    /// <param name="most">Most trials of the drawing.</param>
    public static TrueForce? Of(PressCheck check, ReadingBook book, int most = 200_000)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        IReadOnlyList<double> top = book.Values(ReadingKind.TopPressure);
        if (top.Count == 0 || !(top.Average() > 0))
            return null;
        var inputs = new ForceInputs(check, book);
        Uncertainty force = Uncertainty.Of(inputs.Model, inputs.All, inputs.Correlations);
        double p = top.Average();
        RigCylinder c = check.Rig.Cylinder;
        return new TrueForce
        {
            Force = force,
            Drawn = MonteCarlo.Of(inputs.Model, inputs.All, inputs.Correlations, force.Level, most: most, student: false)
                .Widened(force.Coverage / StudentT.Coverage(force.Level, double.PositiveInfinity)),
            Pressure = p,
            FrictionFrom = inputs.From,
            Model = Math.Max(0, p * check.Power.Areas.Force * (1 - c.SealFriction) - OilToRam.SpringOf(c).Value),
            SoldAs = c.RatedForce * c.Count,
            Taken = inputs.Taken,
            Apart = Scattered(book.Of(ReadingKind.TopPressure)),
            Work = inputs.Work,
        };
    }

    /// <summary>Readings a fifth and more off the middle one, the readings of one setting: common practice; a working relief valve repeats to a few per cent.</summary>
    private static IReadOnlyList<Reading> Scattered(IReadOnlyList<Reading> top)
    {
        double[] sorted = [.. top.Select(r => r.Value).Order()];
        double middle = (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
        return [.. top.Where(r => Math.Abs(r.Value - middle) > 0.2 * middle)];
    }
}
