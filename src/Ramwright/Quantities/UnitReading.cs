namespace Ramwright.Quantities;

/// <summary>Finds the unit behind a number, or says why what stands there is none that is wanted.</summary>
internal static class UnitReading
{
    public static ReadingFault? Read(
        string text, int start, int numberEnd, int unitStart, int unitEnd, Dimension wanted, UnitTable units, out Unit? unit)
    {
        string written = text[unitStart..unitEnd];
        string key = UnitSpelling.Key(written);
        string number = text[start..numberEnd];
        int length = unitEnd - unitStart;
        bool tons = wanted is Dimension.Force or Dimension.Mass;
        unit = null;
        if (key.Length == 0)
            return ReadingFaults.Stray(text, unitStart, wanted);
        if (tons && key == "T") // a tonne to some, a US ton to others
            return ReadingFaults.WhichTon(number, wanted, unitStart, length, written);

        UnitMatch match = units.Find(key, out unit, out Unit? other);
        if (match == UnitMatch.Found)
            return null;

        string small = key.ToLowerInvariant();
        if (tons && small is "ton" or "tons" or "tonf" or "ton·force" or "tn")
            return ReadingFaults.WhichTon(number, wanted, unitStart, length, written);
        if (AnotherPerCountry(small, wanted) is var (us, uk, worth))
            return ReadingFaults.WhoseUnit(number, unitStart, length, written, us, uk, worth);
        if (wanted is Dimension.FreeAir or Dimension.Flow
            && small is "scfm" or "slpm" or "sl/min" or "nl/min" or "nlpm" or "nl/s" or "nm3/h" or "nm3/hr" or "nm3/min" or "sm3/h")
        {
            return ReadingFaults.ReferenceAir(number, unitStart, length, written);
        }
        if (wanted == Dimension.Force && small is "kg" or "kgs" or "kilo" or "kilos")
            return ReadingFaults.MassForForce(number, unitStart, length, written);
        if (match == UnitMatch.Either)
            return ReadingFaults.EitherCase(number, unitStart, length, written, unit!, other!);
        if (wanted != Dimension.Temperature && written[0] is 'k' or 'K' && (written.Length == 1 || unitStart == numberEnd && units.Find(UnitSpelling.Key(written[1..].TrimStart()), out _, out _) == UnitMatch.Found))
            return ReadingFaults.Thousands(text, start, numberEnd, unitStart, unitEnd, wanted);
        if (OtherDimensions(key, small, wanted) is var (one, two))
            return ReadingFaults.OtherDimension(wanted, unitStart, length, written, one, two);
        if (match == UnitMatch.OtherPrefix)
            return ReadingFaults.OtherPrefix(number, unitStart, length, written, unit!);
        if (StrayAfterUnit(text, unitStart, unitEnd, units) is int stray)
            return ReadingFaults.Stray(text, stray, wanted);
        return ReadingFaults.UnknownUnit(number, wanted, unitStart, length, written, Nearest(key, units));
    }

    /// <summary>Units of one name that are worth one thing in the US and another in the UK.</summary>
    private static (string Us, string Uk, string Worth)? AnotherPerCountry(string small, Dimension wanted) => (wanted, small) switch
    {
        (Dimension.Volume, "gal" or "gals" or "gallon" or "gallons") => ("US gal", "UK gal", "3.785 and 4.546 L each"),
        (Dimension.Volume, "qt" or "qts" or "quart" or "quarts") => ("US qt", "UK qt", "0.946 and 1.137 L each"),
        (Dimension.Flow, "gpm" or "gal/min" or "gals/min" or "gallons/min" or "gallons/minute" or "gal/minute")
            => ("US gpm", "UK gpm", "3.785 and 4.546 L/min each"),
        (Dimension.Stress, "tsi" or "ton/in2" or "tons/in2" or "tonf/in2") => ("US ton/in2", "UK ton/in2", "13.79 and 15.44 MPa each"),
        _ => null,
    };

    /// <summary>What else a unit measures: the first two dimensions that know it, as it stands or else without regard to case.</summary>
    private static (Dimension, Dimension?)? OtherDimensions(string key, string small, Dimension wanted)
    {
        switch (small)
        {
            case "ton" or "tons":
                return (Dimension.Mass, Dimension.Force);
            case "gal" or "gallon" or "gallons":
                return (Dimension.Volume, null);
            case "gpm":
                return (Dimension.Flow, null);
        }

        foreach (bool exact in (ReadOnlySpan<bool>)[true, false])
        {
            Dimension? first = null;
            for (Dimension d = Dimension.Number; d <= Dimension.DynamicViscosity; d++)
            {
                if (d == wanted || !Knows(d, key, exact))
                    continue;
                if (first is { } f)
                    return (f, d);
                first = d;
            }
            if (first is { } only)
                return (only, null);
        }
        return null;
    }

    private static bool Knows(Dimension dimension, string key, bool exact)
    {
        UnitTable units = Units.Table(dimension);
        return exact
            ? units.Spellings.Any(s => UnitSpelling.Compare(s.Key, key) == Likeness.Same)
            : units.Find(key, out _, out _) is UnitMatch.Found or UnitMatch.Either;
    }

    /// <summary>Where the words begin that stand behind a good unit: <c>25 t of load</c>.</summary>
    private static int? StrayAfterUnit(string text, int unitStart, int unitEnd, UnitTable units)
    {
        for (int i = unitEnd - 1; i > unitStart; i--)
        {
            if (char.IsWhiteSpace(text[i - 1]) && !char.IsWhiteSpace(text[i])
                && units.Find(UnitSpelling.Key(text.AsSpan(unitStart, i - unitStart)), out _, out _) == UnitMatch.Found)
            {
                return i;
            }
        }
        return null;
    }

    private static string? Nearest(string key, UnitTable units)
    {
        string? nearest = NearestWord.Among(key, units.Spellings.Select(s => s.Key));
        return nearest is null ? null : units.Spellings.First(s => s.Key == nearest).Unit.Symbol;
    }
}
