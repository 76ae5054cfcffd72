namespace Ramwright.Quantities;

/// <summary>One unit as the table states it.</summary>
internal readonly struct UnitRow(string symbol, double factor, params string[] aliases)
{
    public string Symbol { get; } = symbol;
    public double Factor { get; } = factor;
    public double Offset { get; init; }
    public string[] Aliases { get; } = aliases;
}

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
    private readonly List<(string Key, Unit Unit)> _spellings;

    public UnitTable(Dimension dimension, UnitRow[] rows)
    {
        var units = new Unit[rows.Length];
        _spellings = new(rows.Length * 4);
        for (int i = 0; i < rows.Length; i++)
        {
            UnitRow row = rows[i];
            units[i] = new Unit(row.Symbol, dimension, row.Factor, row.Offset) { Aliases = row.Aliases };
            _spellings.Add((UnitSpelling.Key(row.Symbol), units[i]));
            foreach (string alias in row.Aliases)
                _spellings.Add((UnitSpelling.Key(alias), units[i]));
        }
        Units = units;
    }

    public IReadOnlyList<Unit> Units { get; }

    /// <summary>The units and their keys, for finding the nearest.</summary>
    public IReadOnlyList<(string Key, Unit Unit)> Spellings => _spellings;

    /// <summary>Looks a key up: as it stands first, then without regard to case.</summary>
    /// <param name="key">Made by <see cref="UnitSpelling.Key"/>.</param>
    /// <param name="unit">The unit found, or the first of those that only case tells apart.</param>
    /// <param name="other">The second of those.</param>
    public UnitMatch Find(string key, out Unit? unit, out Unit? other)
    {
        unit = other = null;
        foreach ((string spelling, Unit candidate) in _spellings)
        {
            if (spelling == key)
            {
                unit = candidate;
                return UnitMatch.Found;
            }
        }

        Unit? prefixed = null;
        foreach ((string spelling, Unit candidate) in _spellings)
        {
            if (!string.Equals(spelling, key, StringComparison.OrdinalIgnoreCase))
                continue;
            if (UnitSpelling.OnlyPrefixDiffers(spelling, key))
                prefixed = candidate;
            else if (unit is null)
                unit = candidate;
            else if (!ReferenceEquals(unit, candidate))
                other = candidate;
        }

        if (unit is not null)
            return other is null ? UnitMatch.Found : UnitMatch.Either;
        unit = prefixed;
        return unit is null ? UnitMatch.None : UnitMatch.OtherPrefix;
    }
}
