namespace Ramwright.Files;

/// <summary>The units that may end a column's name, <c>h_mm</c>, and their worth in SI.</summary>
internal static class ColumnUnits
{
    private static readonly Dictionary<Measured, (string Unit, double Si)[]> Units = new()
    {
        [Measured.Length] = [("mm", 1e-3), ("in", 0.0254), ("cm", 1e-2), ("m", 1)],
        [Measured.Stress] = [("MPa", 1e6), ("ksi", 6894757.293), ("psi", 6894.757293)],
        [Measured.Pressure] = [("bar", 1e5), ("MPa", 1e6), ("psi", 6894.757293)],
        [Measured.Viscosity] = [("cSt", 1e-6), ("mm2s", 1e-6)],
        [Measured.Density] = [("kgm3", 1)],
        [Measured.Slope] = [("percent", 0.01)],
    };

    /// <summary>Whether numbers of this kind carry a unit.</summary>
    public static bool Needed(Measured measured) => Units.ContainsKey(measured);

    /// <summary>A unit's worth in SI.</summary>
    public static bool TryFind(Measured measured, string unit, out double si)
    {
        foreach ((string name, double worth) in Units.GetValueOrDefault(measured, []))
        {
            if (name.Equals(unit, StringComparison.OrdinalIgnoreCase))
            {
                si = worth;
                return true;
            }
        }

        si = 1;
        return false;
    }

    /// <summary>A column's name as it should be written: <c>h_mm</c>.</summary>
    public static string Example(string column, Measured measured) =>
        Needed(measured) ? $"{column}_{Units[measured][0].Unit}" : column;

    /// <summary>The units it may have: <c>h_mm or h_in or h_cm or h_m</c>.</summary>
    public static string Choices(string column, Measured measured) =>
        string.Join(" or ", Units[measured].Select(u => $"{column}_{u.Unit}"));
}
