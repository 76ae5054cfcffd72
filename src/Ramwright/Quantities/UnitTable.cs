namespace Ramwright.Quantities;

/// <summary>One unit as the table states it, its other names parted by commas.</summary>
internal readonly struct UnitRow(string symbol, double factor, string aliases = "")
{
    public string Symbol { get; } = symbol;
    public double Factor { get; } = factor;
    public double Offset { get; init; }
    public string[] Aliases { get; } = aliases.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}

/// <summary>One way of writing a unit.</summary>
internal sealed record Spelling(string Key, Unit Unit);

/// <summary>How looking a unit up came out.</summary>
internal enum UnitMatch
{
    /// <summary>No unit of this dimension is written so.</summary>
    None,
    /// <summary>Exactly one is.</summary>
    Found,
    /// <summary>Two units differ only in case, and what is written is neither: <c>mn</c>.</summary>
    Either,
    /// <summary>The only one differs in a small or capital m, which makes it another unit: <c>mPa</c> for <c>MPa</c>.</summary>
    OtherPrefix,
}

/// <summary>The units of one dimension and every way they are written.</summary>
internal sealed class UnitTable
{
    private readonly Spelling[] _spellings;

    public UnitTable(Dimension dimension, UnitRow[] rows)
    {
        int count = 0;
        foreach (UnitRow row in rows)
            count += 1 + row.Aliases.Length;

        var units = new Unit[rows.Length];
        _spellings = new Spelling[count];
        for (int i = 0, n = 0; i < rows.Length; i++)
        {
            UnitRow row = rows[i];
            Unit unit = units[i] = new Unit(row.Symbol, dimension, row.Factor, row.Offset) { Aliases = row.Aliases };
            _spellings[n++] = new Spelling(UnitSpelling.Key(row.Symbol), unit);
            foreach (string alias in row.Aliases)
                _spellings[n++] = new Spelling(UnitSpelling.Key(alias), unit);
        }
        Units = units;
    }

    public IReadOnlyList<Unit> Units { get; }

    /// <summary>The units and their keys, for finding the nearest.</summary>
    public IReadOnlyList<Spelling> Spellings => _spellings;

    /// <summary>Looks a key up: as it stands first, then without regard to case.</summary>
    /// <param name="key">Made by <see cref="UnitSpelling.Key"/>.</param>
    /// <param name="unit">The unit found, or the first of those that only case tells apart.</param>
    /// <param name="other">The second of those.</param>
    public UnitMatch Find(string key, out Unit? unit, out Unit? other)
    {
        unit = other = null;
        Unit? prefixed = null;
        foreach (Spelling known in _spellings)
        {
            switch (UnitSpelling.Compare(known.Key, key))
            {
                case Likeness.Same:
                    unit = known.Unit;
                    other = null;
                    return UnitMatch.Found;
                case Likeness.CaseAside when unit is null:
                    unit = known.Unit;
                    break;
                case Likeness.CaseAside when !ReferenceEquals(unit, known.Unit):
                    other = known.Unit;
                    break;
                case Likeness.OtherPrefix:
                    prefixed = known.Unit;
                    break;
            }
        }

        if (unit is not null)
            return other is null ? UnitMatch.Found : UnitMatch.Either;
        unit = prefixed;
        return unit is null ? UnitMatch.None : UnitMatch.OtherPrefix;
    }
}
