using Ramwright.Geometry;

namespace Ramwright.Presses;

/// <summary>Parts and sheets that cannot be.</summary>
internal static class MakingRules
{
    public static void Check(Press press, List<Fault> faults)
    {
        var names = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < (press.Parts?.Count ?? 0); i++)
        {
            if (press.Parts![i] is not { } part)
                continue;
            string path = $"parts.{i}";
            if (part.Name is { } name && !names.TryAdd(name, i))
                faults.Add(new Fault($"{path}.name", $"two parts are called {name}", "a name of its own for each, or count", Against: $"parts.{names[name]}.name"));
            if (part is OwnPlate plate)
                Outline(path, plate.Width, plate.Height, plate.Diameter, plate.Corners, faults);
            if (part is OwnBentPlate { Legs: { Count: < 2 } })
                faults.Add(new Fault($"{path}.legs", "a bent plate has two legs or more", "another leg, or kind: plate"));
        }

        for (int i = 0; i < (press.Sheets?.Count ?? 0); i++)
        {
            if (press.Sheets![i] is { } sheet)
                Outline($"sheets.{i}", sheet.Width, sheet.Height, null, sheet.Corners, faults);
        }
    }

    private static void Outline(string path, double? width, double? height, double? diameter, IReadOnlyList<PlateCorner>? corners, List<Fault> faults)
    {
        int ways = (width is not null || height is not null ? 1 : 0) + (diameter is not null ? 1 : 0) + (corners is not null ? 1 : 0);
        if (ways != 1)
        {
            string found = ways == 0 ? "its outline is not given" : "its outline is given in more than one way", first = corners is not null ? ".corners" : width is not null ? ".width" : ".height";
            faults.Add(new Fault(ways == 0 ? path : path + first, found, "either width and height, or corners", Against: ways > 1 && diameter is not null ? path + ".diameter" : null));
        }
        else if ((width is null) != (height is null))
        {
            faults.Add(new Fault(path + (width is null ? ".height" : ".width"), "one side of a rectangle is not given", "width and height"));
        }
        else if (corners is not null)
        {
            if (WhyNot(corners) is { } reason)
                faults.Add(new Fault(path + ".corners", reason, "corners in turn round the outline, with radii that fit their edges"));
        }
    }

    /// <summary>The loop of some corners, anticlockwise.</summary>
    public static IReadOnlyList<Corner> Loop(IReadOnlyList<PlateCorner> corners)
    {
        (double, double, double)[] given = [.. corners.Select(c => (c.Right ?? 0, c.Up ?? 0, c.Radius ?? 0))];
        double area = 0;
        for (int i = 0; i < given.Length; i++)
        {
            ((double ay, double az, _), (double by, double bz, _)) = (given[i], given[(i + 1) % given.Length]);
            area += ay * bz - by * az;
        }

        if (area < 0)
            Array.Reverse(given);
        return Loops.Rounded(given);
    }

    private static string? WhyNot(IReadOnlyList<PlateCorner> corners)
    {
        if (corners.Count < 3)
            return "an outline has three corners or more";
        if (corners.Any(c => c is null))
            return null;
        try
        {
            (double Y, double Z)[] polygon = new Outline([Loop(corners)]).Polygons(1e-4)[0];
            return Crosses(polygon) ? "its edges cross or touch each other" : null;
        }
        catch (ArgumentException)
        {
            return "a radius is too great for the edges beside it, or two corners lie on one spot";
        }
    }

    private static bool Crosses((double Y, double Z)[] p)
    {
        int n = p.Length;
        for (int i = 0; i < n; i++)
        {
            // a spike that runs back on itself
            (double Y, double Z) a = p[i], b = p[(i + 1) % n], c = p[(i + 2) % n];
            if (Math.Abs(Side(a, b, c)) < 1e-15 && (b.Y - a.Y) * (c.Y - b.Y) + (b.Z - a.Z) * (c.Z - b.Z) < 0)
                return true;
            for (int j = i + 2; j < n; j++)
            {
                if (i == 0 && j == n - 1)
                    continue;
                if (Meet(a, b, p[j], p[(j + 1) % n]))
                    return true;
            }
        }

        return false;
    }

    private static bool Meet((double Y, double Z) a, (double Y, double Z) b, (double Y, double Z) c, (double Y, double Z) d)
    {
        double c1 = Side(a, b, c), d1 = Side(a, b, d), a1 = Side(c, d, a), b1 = Side(c, d, b);
        if (c1 * d1 < 0 && a1 * b1 < 0)
            return true;
        return (c1 == 0 && On(a, b, c)) || (d1 == 0 && On(a, b, d)) || (a1 == 0 && On(c, d, a)) || (b1 == 0 && On(c, d, b));
    }

    private static bool On((double Y, double Z) a, (double Y, double Z) b, (double Y, double Z) p) =>
        p.Y >= Math.Min(a.Y, b.Y) && p.Y <= Math.Max(a.Y, b.Y) && p.Z >= Math.Min(a.Z, b.Z) && p.Z <= Math.Max(a.Z, b.Z);

    private static double Side((double Y, double Z) a, (double Y, double Z) b, (double Y, double Z) p) => (b.Y - a.Y) * (p.Z - a.Z) - (b.Z - a.Z) * (p.Y - a.Y);
}
