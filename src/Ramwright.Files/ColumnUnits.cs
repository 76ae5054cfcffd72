namespace Ramwright.Files;

/// <summary>The units that may end a column's name, <c>h_mm</c>, and their worth in SI.</summary>
internal static class ColumnUnits
{
    private sealed record ColumnUnit(string Name, double Si);

    private static readonly ColumnUnit[] Length = [new("mm", 1e-3), new("in", 0.0254), new("cm", 1e-2), new("m", 1)];
    private static readonly ColumnUnit[] Stress = [new("MPa", 1e6), new("ksi", 6894757.293), new("psi", 6894.757293)];
    private static readonly ColumnUnit[] Pressure = [new("bar", 1e5), new("MPa", 1e6), new("psi", 6894.757293)];
    private static readonly ColumnUnit[] Viscosity = [new("cSt", 1e-6), new("mm2s", 1e-6)];
    private static readonly ColumnUnit[] Density = [new("kgm3", 1)];
    private static readonly ColumnUnit[] Slope = [new("percent", 0.01)];
    private static readonly ColumnUnit[] MassPerLength = [new("kgm", 1), new("lbft", 0.45359237 / 0.3048)];

    private static ColumnUnit[] Of(Measured measured) => measured switch
    {
        Measured.Length => Length,
        Measured.Stress => Stress,
        Measured.Pressure => Pressure,
        Measured.Viscosity => Viscosity,
        Measured.Density => Density,
        Measured.Slope => Slope,
        Measured.MassPerLength => MassPerLength,
        _ => [],
    };

    /// <summary>Whether numbers of this kind carry a unit.</summary>
    public static bool Needed(Measured measured) => Of(measured).Length > 0;

    /// <summary>A unit's worth in SI.</summary>
    public static bool TryFind(Measured measured, string name, out double si)
    {
        foreach (ColumnUnit unit in Of(measured))
        {
            if (unit.Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                si = unit.Si;
                return true;
            }
        }

        si = 1;
        return false;
    }

    /// <summary>A column's name as it should be written: <c>h_mm</c>.</summary>
    public static string Example(TableColumn column) =>
        Needed(column.Measured) ? $"{column.Name}_{Of(column.Measured)[0].Name}" : column.Name;

    /// <summary>The units it may have: <c>h_mm or h_in or h_cm or h_m</c>.</summary>
    public static string Choices(TableColumn column) =>
        string.Join(" or ", Of(column.Measured).Select(u => $"{column.Name}_{u.Name}"));
}
