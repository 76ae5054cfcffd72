using System.Globalization;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Files;

/// <summary>A row that cannot be used, and what it should be. Caught where rows are read; never leaves this floor.</summary>
internal sealed class BadRowException(string found, string wanted) : Exception(found)
{
    public string Wanted { get; } = wanted;
}

/// <summary>One row of a table, its numbers in SI.</summary>
internal sealed class TableRow(string file, int line, string[] fields, Dictionary<string, FoundColumn> columns, bool decimalComma, bool own)
{
    public int Line => line;

    /// <summary>Whether the table is a person's own; those that ship are checked once, by tests.</summary>
    public bool Own => own;

    /// <summary>Words, empty where the row or the table has none.</summary>
    public string Text(string column) =>
        columns.TryGetValue(column, out FoundColumn? c) && c.At < fields.Length ? fields[c.At] : "";

    /// <summary>Words that must be there.</summary>
    public string Needed(string column)
    {
        string text = Text(column);
        return text.Length > 0 ? text : throw new BadRowException($"the row has no {column}", $"a {column} in every row");
    }

    /// <summary>The row's name, and the others it goes by.</summary>
    public IEnumerable<string> Names() =>
        [Needed("name"), .. Text("also").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    /// <summary>Whether a number stands there.</summary>
    public bool Has(string column) => Text(column).Length > 0;

    /// <summary>A number in SI between two bounds in SI.</summary>
    public double Number(string column, double from, double upTo)
    {
        string text = Needed(column);
        FoundColumn c = columns[column];
        string plain = decimalComma ? text.Replace(',', '.') : text;
        if (!double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out double written))
            throw new BadRowException($"{c.Written} is \"{text}\"", "a number there");

        double si = written * c.Si;
        if (!(si >= from && si <= upTo))
        {
            string Bound(double v) => (v / c.Si).ToString("0.####", CultureInfo.InvariantCulture);
            throw new BadRowException($"{c.Written} is {text}", $"a number from {Bound(from)} to {Bound(upTo)}");
        }

        return si;
    }

    /// <summary>A length, m, from a tenth of a millimetre to three metres.</summary>
    public double Length(string column) => Clean(Number(column, 1e-4, 3));

    /// <summary>A length, m, that may be zero, and is where nothing stands.</summary>
    public double LengthOrZero(string column) => Has(column) ? Clean(Number(column, 0, 3)) : 0;

    /// <summary>One of two words; the first where nothing stands.</summary>
    public bool IsSecond(string column, string first, string second)
    {
        string text = Text(column);
        if (text.Length == 0 || text.Equals(first, StringComparison.OrdinalIgnoreCase))
            return false;
        if (text.Equals(second, StringComparison.OrdinalIgnoreCase))
            return true;
        throw new BadRowException($"{column} is \"{text}\"", $"{first} or {second}");
    }

    /// <summary>The row's own source, or the file where it names none.</summary>
    public Citation Source()
    {
        string work = Text("source"), standing = Text("standing");
        if (work.Length == 0)
            return Citation.Practice($"own table {file}");

        Standing how = standing.ToLowerInvariant() switch
        {
            "" or "published" => Standing.Published,
            "from memory" => Standing.FromMemory,
            "practice" => Standing.Practice,
            "mechanics" => Standing.Mechanics,
            _ => throw new BadRowException($"standing is \"{standing}\"", "published, from memory or practice, or nothing"),
        };
        return new Citation(work, "", how);
    }

    // 0.0075 rather than 0.0075000000000000006: names and comparisons stay clean.
    private static double Clean(double m) => Math.Round(m, 9);
}
