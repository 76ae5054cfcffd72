using System.Globalization;
using System.Reflection;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

/// <summary>Every row of the printed tables against what the dimensions give.</summary>
public class RollingTablesTest
{
    private const string Found = "EN 10365 / EN 10210-2 by open-source section data";

    // All rows are checked; to keep the list of checks readable, one in eight is written to it, with these columns.
    private const int EachNth = 8;
    private static readonly string[] Listed = ["A_cm2", "Iy_cm4", "I_cm4", "Wply_cm3", "Iz_cm4", "It_cm4"];

    // Printed values that their own dimensions do not give; area and strong axis of both rows agree.
    private static readonly string[] Doubtful = ["UPN 65 Iz", "UPN 400 Iz"];

    /// <summary>What a column of the data prints, in SI units per printed one.</summary>
    private static readonly Dictionary<string, (double PerSi, Func<SectionProperties, double> Of, double Tolerance)> Columns = new()
    {
        ["A_cm2"] = (1e4, p => p.A, 0.005),
        ["Iy_cm4"] = (1e8, p => p.Iy, 0.005),
        ["I_cm4"] = (1e8, p => p.Iy, 0.005),
        ["Wely_cm3"] = (1e6, p => p.Wely, 0.005),
        ["Wply_cm3"] = (1e6, p => p.Wply, 0.005),
        ["Iz_cm4"] = (1e8, p => p.Iz, 0.005),
        ["Welz_cm3"] = (1e6, p => p.Welz, 0.005),
        ["Wplz_cm3"] = (1e6, p => p.Wplz, 0.005),
        ["It_cm4"] = (1e8, p => p.It, 0.05),
    };

    [Theory]
    [InlineData("i-sections", 90)]
    [InlineData("shs", 123)]
    [InlineData("rhs", 125)]
    [InlineData("chs", 162)]
    public void Every_row_has_its_printed_properties(string table, int rows)
    {
        var wrong = new List<string>();
        int read = 0;
        foreach (Dictionary<string, string> row in Rows(table))
        {
            read++;
            SectionProperties p = Sections.Of(row["name"]);
            foreach ((string column, var (perSi, of, tolerance)) in Columns)
            {
                if (!row.TryGetValue(column, out string? text))
                    continue;
                double printed = Number(text), computed = of(p) * perSi, off = Math.Abs(computed - printed);
                if (read % EachNth == 1 && Listed.Contains(column))
                    new Reference($"table, {row["name"]}", Found, Trust.Found).Within(
                        column.Replace('_', ' '), printed, computed, tolerance * printed + HalfLastDigit(text));
                if (off > tolerance * printed + HalfLastDigit(text))
                    wrong.Add($"{row["name"]} {column}: printed {text}, computed {computed:G5}, off {off / printed:P2}");
            }
        }

        Assert.Equal(rows, read);
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static Dictionary<string, string>[] Rows(string table)
    {
        using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream($"Data/{table}.csv")!);
        string[] lines = [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(l => l[0] != '#')];
        string[] columns = lines[0].Trim().Split(',');
        return [.. lines.Skip(1).Select(l => columns.Zip(l.Trim().Split(',')).ToDictionary(c => c.First, c => c.Second))];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static double HalfLastDigit(string text)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - text.Length);
    }

    [Theory]
    [InlineData("i-sections-from-memory", "A,Iy", 164)]
    [InlineData("channels-from-memory", "A,Iy,Iz", 48)]
    [InlineData("c-sections-from-memory", "A,Iy", 27)]
    [InlineData("angles-from-memory", "A", 91)]
    public void Dimensions_from_memory_agree_with_properties_from_memory(string table, string columns, int rows)
    {
        var wrong = new List<string>();
        int read = 0;
        foreach (Dictionary<string, string> row in Rows(table))
        {
            read++;
            SectionProperties p = Sections.Of(row["name"]);
            double unit = row["name"].StartsWith('W') || IsAmericanChannel(row["name"]) ? 0.0254 : 0.01;
            foreach (string column in columns.Split(','))
            {
                string text = row[column];
                double printed = Number(text);
                double computed = column switch
                {
                    "A" => p.A / Math.Pow(unit, 2),
                    "Iy" => p.Iy / Math.Pow(unit, 4),
                    _ => p.Iz / Math.Pow(unit, 4),
                };
                bool agrees = Math.Abs(computed - printed) <= 0.005 * printed + HalfLastDigit(text);
                if (agrees == Doubtful.Contains($"{row["name"]} {column}"))
                    wrong.Add($"{row["name"]} {column}: remembered {text}, computed {computed:G5}, off {Math.Abs(computed / printed - 1):P2}");
            }
        }

        Assert.Equal(rows, read);
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static bool IsAmericanChannel(string name) => name is ['C', >= '0' and <= '9', ..];

    /// <summary>The mass that a table prints is a check on the dimensions that none of them was made from.</summary>
    [Fact]
    public void Every_row_weighs_what_its_table_says()
    {
        const double tolerance = 0.015;
        var wrong = new List<string>();
        int read = 0;
        foreach (Shape section in Sections.Shelf.Sections)
        {
            if (section.PrintedMass is not { } printed)
                continue;
            // W sections carry their mass in lb/ft, rounded to whole pounds, in their names
            double rounding = section.Name.StartsWith('W') ? 0.5 * 0.45359237 / 0.3048 : printed < 10 ? 0.005 : printed < 100 ? 0.05 : 0.5;
            if (read++ % EachNth == 0)
                new Reference($"mass, {section.Name}", $"{section.Source.Work}: mass as tables print it", Trust.FromMemory).Within("G, kg/m", printed, section.Mass, tolerance * printed + rounding);
            if (Math.Abs(section.Mass - printed) > tolerance * printed + rounding)
                wrong.Add($"{section.Name}: printed {printed:G5}, computed {section.Mass:G5}, off {section.Mass / printed - 1:P2}");
        }

        Assert.True(read > 550, $"only {read} rows have a mass");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}
