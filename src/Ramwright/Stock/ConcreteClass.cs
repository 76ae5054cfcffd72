using System.Globalization;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A strength class of concrete. Pa.</summary>
/// <param name="Cylinder">f_ck: what 19 in 20 cylinders of 150 × 300 mm reach.</param>
/// <param name="Cube">What 19 in 20 cubes of 150 mm reach.</param>
public readonly record struct ConcreteClass(double Cylinder, double Cube)
{
    /// <summary>The classes.</summary>
    public static readonly Citation Source = new("EN 1992-1-1:2004", "table 3.1", Standing.FromMemory);

    /// <summary>The classes known, by name.</summary>
    public static IReadOnlyList<string> Names { get; } = ["C20/25", "C25/30", "C30/37", "C40/50", "C50/60"];

    /// <summary>Mean tensile strength f_ctm = 0.30 f_ck^(2/3), in MPa; here in Pa.</summary>
    public double Tension => 0.30e6 * Math.Pow(Cylinder / 1e6, 2.0 / 3);

    /// <summary>The class of a name; null where none is called so.</summary>
    public static ConcreteClass? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (string known in Names)
        {
            if (!Shelf.SameName(known, name))
                continue;
            string[] two = known[1..].Split('/');
            return new(1e6 * int.Parse(two[0], CultureInfo.InvariantCulture), 1e6 * int.Parse(two[1], CultureInfo.InvariantCulture));
        }

        return null;
    }
}
