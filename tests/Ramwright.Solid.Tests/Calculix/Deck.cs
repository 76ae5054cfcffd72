using System.Globalization;
using System.Text;
using Ramwright.Geometry;
using Ramwright.Solid.Tests.Bricks;

namespace Ramwright.Solid.Tests.Calculix;

/// <summary>Writes a model as an input deck of CalculiX: bricks of twenty nodes (C3D20R) or of eight with incompatible modes (C3D8I), one linear static step; mm, N, MPa.</summary>
public static class Deck
{
    /// <summary>The deck.</summary>
    public static string Of(SolidModel model)
    {
        var deck = new StringBuilder();
        void Line(FormattableString text) => deck.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');
        BrickMesh mesh = model.Mesh;

        // CalculiX reads twenty characters of a number and no more
        Line($"*NODE, NSET=ALL");
        foreach (int n in mesh.Used.Order())
            Line($"{n + 1}, {mesh.Places[n].X * 1e3:F9}, {mesh.Places[n].Y * 1e3:F9}, {mesh.Places[n].Z * 1e3:F9}");
        Line($"*ELEMENT, TYPE={(model.Middles ? "C3D20R" : "C3D8I")}, ELSET=STEEL");
        for (int i = 0; i < mesh.Bricks.Count; i++)
        {
            int[] n = mesh.Bricks[i].Nodes;         // a line of the deck takes sixteen numbers at most
            Line($"{i + 1}, {string.Join(", ", n[..Math.Min(10, n.Length)].Select(x => x + 1))}{(n.Length > 10 ? "," : "")}");
            if (n.Length > 10)
                Line($"{string.Join(", ", n[10..].Select(x => x + 1))}");
        }

        Line($"*MATERIAL, NAME=STEEL");
        Line($"*ELASTIC");
        Line($"{model.E / 1e6:R}, {model.Nu:R}");
        Line($"*SOLID SECTION, ELSET=STEEL, MATERIAL=STEEL");
        foreach (Cut cut in model.Cuts)
        {
            Line($"*ELSET, ELSET={cut.Name}");
            foreach (int brick in cut.Bricks(mesh))
                Line($"{brick + 1},");
        }

        Line($"*NSET, NSET=HELD");
        foreach (int node in model.Held.Select(h => h.Node).Distinct().Order())
            Line($"{node + 1},");
        Line($"*BOUNDARY");
        foreach ((int node, int direction) in model.Held.Order())
            Line($"{node + 1}, {direction + 1}, {direction + 1}");
        Line($"*STEP");
        Line($"*STATIC");
        Line($"*CLOAD");
        foreach ((int node, Vector f) in model.Forces)
        {
            if (f.X != 0) Line($"{node + 1}, 1, {f.X:E10}");
            if (f.Y != 0) Line($"{node + 1}, 2, {f.Y:E10}");
            if (f.Z != 0) Line($"{node + 1}, 3, {f.Z:E10}");
        }

        Line($"*NODE PRINT, NSET=ALL");
        Line($"U");
        Line($"*NODE PRINT, NSET=HELD, TOTALS=ONLY");
        Line($"RF");
        foreach (Cut cut in model.Cuts)
        {
            Line($"*EL PRINT, ELSET={cut.Name}");
            Line($"S");
        }

        Line($"*END STEP");
        return deck.ToString();
    }
}
