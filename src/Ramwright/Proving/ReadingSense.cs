using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>What cannot be so in a reading, beside the press it was taken on.</summary>
/// <param name="Found">What is wrong.</param>
/// <param name="Wanted">What to write instead.</param>
/// <param name="Word">The word or figure that is wrong, as the log's keys name it; empty for the value itself.</param>
/// <param name="Words">Words that could have been meant.</param>
/// <param name="IsPressure">Whether it is a pressure: if it was really there, the press was overloaded.</param>
public sealed record Nonsense(string Found, string Wanted, string Word, IReadOnlyList<string> Words, bool IsPressure = false);

/// <summary>Holds a reading against the press and its instruments: a slipped digit or an unknown place is said, and never worked into a result.</summary>
/// <remarks>The factors are common practice: wide enough for a worn pump and a cheap gauge, and narrower than one digit too many.</remarks>
public static class ReadingSense
{
    /// <summary>Beyond the most that the pump could ever give by this much, no gauge stood there.</summary>
    public const double FarBeyond = 1.5;

    /// <summary>A measured diameter this many times the file's, or as much smaller, is another cylinder or a slip.</summary>
    private const double OtherCylinder = 1.5;

    /// <summary>Beyond proof and pump by this much the press was overloaded.</summary>
    private const double Overloaded = 1.1;

    /// <summary>What cannot be so in a reading; null where it may be.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings, for their instruments.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="units">Units of the words.</param>
    public static Nonsense? Of(PressCheck check, ReadingBook book, Reading reading, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(reading);
        if (reading.Kind == ReadingKind.Dial && !book.Places.Contains(reading.At, StringComparer.OrdinalIgnoreCase))
            return new Nonsense($"this frame has no place called \"{reading.At}\"", "at= one of " + string.Join(", ", book.Places), "at", book.Places);
        Dimension? measures = ReadingForm.Of(reading.Kind).Measures;
        bool ofAir = reading.Kind is ReadingKind.Air or ReadingKind.ReceiverFall;
        if (measures is { } of && !ofAir && Beyond(check, book, reading, of, reading.Value, "", units) is { } value)
            return value;
        foreach ((double? pressure, string key) in new[] { (reading.Pressure, "pressure"), (reading.Low, "low") })
        {
            if (pressure is { } p && Beyond(check, book, reading, Dimension.Pressure, p, key, units) is { } beyond)
                return beyond;
        }

        return Diameter(check, reading, units) ?? Load(check, reading, units);
    }

    /// <summary>Whether a reading says that there was far more pressure than the proof asks for or the pump should give.</summary>
    /// <param name="check">The press.</param>
    /// <param name="proof">Its proof.</param>
    /// <param name="reading">The reading.</param>
    /// <returns>The pressure, Pa; null where there was not.</returns>
    public static double? Overload(PressCheck check, ProofForce proof, Reading reading)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(reading);
        double p = reading.Kind is ReadingKind.TopPressure or ReadingKind.Pressure or ReadingKind.Relief ? reading.Value : reading.Pressure ?? 0;
        return p > Overloaded * Math.Max(check.Power.MostPossiblePressure, proof.Pressure) ? p : null;
    }

    private static Nonsense? Beyond(PressCheck check, ReadingBook book, Reading reading, Dimension measures, double value, string key, UnitSystem units)
    {
        string Shown(double v) => Readout.Text(v, measures, units, 4);
        bool isPressure = measures == Dimension.Pressure;
        if (book.Shows(reading, measures) is { } shows && Math.Abs(value) > shows.Range * (1 + 1e-9))
            return new Nonsense($"{Shown(value)} is more than {shows.Name} can show, which ends at {Shown(shows.Range)}", "the figure really read; a digit too many?", key, [], isPressure);
        if (!isPressure)
            return null;
        double most = Math.Max(ProofForce.Reach(check).Pressure, check.Power.MostPossiblePressure);
        return value > FarBeyond * most
            ? new Nonsense($"{Shown(value)} is far more than this pump could ever make, {Shown(most)}", "the figure really read; a digit too many?", key, [], true)
            : null;
    }

    private static Nonsense? Diameter(PressCheck check, Reading reading, UnitSystem units)
    {
        double said = reading.Kind switch
        {
            ReadingKind.Bore => check.Rig.Cylinder.Bore,
            ReadingKind.Rod => check.Rig.Cylinder.Rod,
            ReadingKind.CentreTube => check.Rig.Cylinder.CentreTube,
            _ => 0,
        };
        return said > 0 && (reading.Value > OtherCylinder * said || reading.Value < said / OtherCylinder)
            ? new Nonsense($"{Readout.Text(reading.Value, Dimension.Length, units, 4)} is nowhere near the {Readout.Text(said, Dimension.Length, units, 4)} of the press file",
                "what was measured; or first the press file, if it is another cylinder", "", [])
            : null;
    }

    private static Nonsense? Load(PressCheck check, Reading reading, UnitSystem units)
    {
        double oil = (reading.Pressure ?? 0) * check.Power.Areas.Force;
        return reading.Kind == ReadingKind.Load && oil > 0 && reading.Value > FarBeyond * oil
            ? new Nonsense($"{Readout.Text(reading.Value, Dimension.Force, units, 4)} is far more than the oil can push with at that pressure, {Readout.Text(oil, Dimension.Force, units)}",
                "the figure the cell showed; a digit too many?", "", [])
            : null;
    }
}
