using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles hoses and oil.</summary>
internal static class ResolveLines
{
    // a common hose, where nothing is said, m
    private const double Bore = 9.5e-3, Length = 3;

    public static IReadOnlyList<RigLine> Of(IReadOnlyList<Line>? said, Shelf shelf, Assumptions assume)
    {
        if (said is null || said.Count == 0)
        {
            assume.Note("lines", new Remark("one hose, {0} bore, {1} long", Remark.Of(Bore, Dimension.Length), Remark.Of(Length, Dimension.Length)), "nothing said; its rating stays unchecked");
            assume.Caution("No hose is stated, so none is checked. A hose must be rated for the most the pump can give.");
            return [new RigLine(LineDuty.Pressure, Bore, Length, null, "hose")];
        }

        var lines = new List<RigLine>(said.Count);
        for (int i = 0; i < said.Count; i++)
            lines.Add(One(said[i], i, said.Count, shelf, assume));
        return lines;
    }

    public static RigOil Oil(Oil? said, Shelf shelf, Assumptions assume)
    {
        string grade = assume.Or(said?.Grade, "oil.grade", "VG 46", "the usual hydraulic oil");
        if (!shelf.TryOil(grade, out OilGrade? found))
            throw new ArgumentException($"'oil.grade' is not in stock: {grade}");
        return new RigOil(found, assume.Or(said?.Temperature, "oil.temperature", 20, Dimension.Temperature, "a cold workshop: the slower case"))
        {
            BulkModulus = assume.Or(said?.BulkModulus, "oil.bulk-modulus", 1.5e9, Dimension.Stress,
                "a middle value for mineral oil free of air; the walls are taken as rigid"),
            Surroundings = said?.Surroundings ?? 20,
        };
    }

    private static Remark Bores(string type, Shelf shelf)
    {
        Given[] bores = [.. shelf.Hoses.Where(h => Shelf.SameName(h.Type, type)).Select(h => Remark.Of(h.Bore, Dimension.Length))];
        return new Remark("the pressure printed on the hose as rating:, or a bore it is made in: " + string.Join(", ", bores.Select((_, i) => "{" + i + "}")), bores);
    }

    private static RigLine One(Line said, int i, int count, Shelf shelf, Assumptions assume)
    {
        string path = $"lines.{i}";
        double bore = Resolver.Needed(said.Bore, path + ".bore");
        LineDuty duty = said.Duty ?? LineDuty.Pressure;
        double? rating = said.Rating, leastBend = null;
        if (said.Type is { } type)
        {
            if (shelf.TryHose(type, bore, out HoseGrade? grade))
            {
                rating ??= grade.WorkingPressure;
                leastBend = grade.BendRadius;
            }
            else if (rating is null)
                assume.Fault(path + ".bore", new Remark($"{type} is not in stock with a bore of {{0}}", Remark.Of(bore, Dimension.Length)), Bores(type, shelf));
        }

        string what = duty switch { LineDuty.Return => "return hose", LineDuty.Suction => "suction hose", _ => "hose" };
        if (rating is null && duty == LineDuty.Pressure)
            assume.Caution($"The rating of {what} {i + 1} is not stated, so it is not checked: read it off the hose.");
        string name = count == 1 ? what : $"{what} {i + 1}";
        if (said.Fittings is null)
            assume.Note(path + ".fittings", "none but its two ends", "couplers, valves and elbows are not told and lose more");
        return new RigLine(
            duty, bore,
            assume.Or(said.Length, path + ".length", Length, Dimension.Length, "a common hose"),
            rating,
            name)
        {
            Fittings = said.Fittings,
            BendRadius = said.BendRadius,
            LeastBend = leastBend,
            Inlet = ResolveLineEnd.Of(said.Inlet, path + ".inlet", "inlet of " + name, shelf, assume),
            Outlet = ResolveLineEnd.Of(said.Outlet, path + ".outlet", "outlet of " + name, shelf, assume),
        };
    }
}
