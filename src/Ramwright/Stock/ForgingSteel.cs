using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A steel as a smith knows it: its carbon, how much harder it is to squeeze than plain steel, and the heat it is worked in.</summary>
/// <param name="Name">As it is ordered: <c>C45</c>.</param>
/// <param name="Also">Other names for much the same.</param>
/// <param name="Carbon">Carbon by mass, share of one.</param>
/// <param name="Alloy">Flow stress when hot over that of plain steel of the same carbon.</param>
/// <param name="Hottest">Begin forging at no more than this, °C.</param>
/// <param name="Coldest">Stop forging at this, °C.</param>
/// <param name="Source">Where that range comes from.</param>
public sealed record ForgingSteel(
    string Name, IReadOnlyList<string> Also, double Carbon, double Alloy, double Hottest, double Coldest, Citation Source)
{
    /// <summary>Beginning and end of forging by grade.</summary>
    public static readonly Citation ByGrade = new("trade table of forging temperatures by grade", "beginning and end of forging");

    /// <summary>High-carbon steels.</summary>
    public static readonly Citation ToolSteel = Citation.Practice("trade table for tool steel: begin at 1000 to 1150 °C, end at 850 to 900 °C");

    /// <summary>Mean of measured flow stress over Shida's formula, for a medium-carbon Cr-Mo steel, rounded up.</summary>
    public const double ChromeMoly = 1.2;

    /// <summary>The steels known by name.</summary>
    public static IReadOnlyList<ForgingSteel> All { get; } =
    [
        new("mild", ["mild steel", "S235", "S235JR", "S275", "S275JR", "A36", "C20", "C22", "1018", "1020"], 0.0020, 1, 1250, 800, ByGrade),
        new("S355", ["S355J2", "S355JR"], 0.0020, 1, 1250, 800, ByGrade),
        new("C10", ["1010"], 0.0010, 1, 1250, 800, ByGrade),
        new("C15", ["1015"], 0.0015, 1, 1250, 800, ByGrade),
        new("C35", ["1035"], 0.0035, 1, 1200, 800, ByGrade),
        new("C45", ["C45E", "1045"], 0.0045, 1, 1200, 800, ByGrade),
        new("C60", ["1060"], 0.0060, 1, 1200, 800, ByGrade),
        new("C80", ["C80U", "1080", "1084"], 0.0080, 1, 1150, 850, ToolSteel),
        new("C105", ["C105U", "1095"], 0.0105, 1, 1100, 850, ToolSteel),
        new("41Cr4", ["5140"], 0.0041, ChromeMoly, 1200, 800, ByGrade),
        new("42CrMo4", ["4140"], 0.0042, ChromeMoly, 1150, 850, ByGrade),
        new("34CrNiMo6", ["4340"], 0.0036, ChromeMoly, 1150, 850, ByGrade),
    ];

    /// <summary>The steel by one of its names, without regard to case and spaces; null where none is called so.</summary>
    public static ForgingSteel? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (ForgingSteel steel in All)
        {
            if (Shelf.SameName(steel.Name, name) || steel.Also.Any(also => Shelf.SameName(also, name)))
                return steel;
        }

        return null;
    }

    /// <summary>Plain steel by its carbon alone.</summary>
    /// <param name="carbon">Share of one, above zero.</param>
    public static ForgingSteel Plain(double carbon)
    {
        (double hottest, double coldest, Citation source) = carbon switch
        {
            <= 0.0030 => (1250.0, 800.0, ByGrade),
            <= 0.0065 => (1200.0, 800.0, ByGrade),
            <= 0.0090 => (1150.0, 850.0, ToolSteel),
            _ => (1100.0, 850.0, ToolSteel),
        };
        return new ForgingSteel($"steel with {carbon * 100:0.##} % carbon", [], carbon, 1, hottest, coldest, source);
    }
}
