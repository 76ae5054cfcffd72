using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>The kinds of stock tables.</summary>
internal static class TableKinds
{
    private const double LeastStrength = 20e6, GreatestStrength = 3e9;

    public static readonly IReadOnlyList<TableKind> All =
    [
        new("steels",
            [new("name", Measured.Text), new("up_to", Measured.Length), new("fy", Measured.Stress), new("fu", Measured.Stress)],
            [new("also", Measured.Text), new("beta_w", Measured.Number), new("caution", Measured.Text)],
            PutSteel),
        new("classes",
            [new("name", Measured.Text), new("above", Measured.Length), new("up_to", Measured.Length),
                new("sp", Measured.Stress), new("fyb", Measured.Stress), new("fub", Measured.Stress)],
            [new("re", Measured.Stress), new("rm", Measured.Stress)],
            PutClass),
        new("threads",
            [new("name", Measured.Text), new("d", Measured.Length), new("pitch", Measured.Length)], [],
            PutThread),
        new("hoses",
            [new("type", Measured.Text), new("bore", Measured.Length), new("pressure", Measured.Pressure)], [new("bend", Measured.Length)],
            (row, shelf) => shelf.Add(new HoseGrade(
                row.Needed("type"), row.Length("bore"), row.Number("pressure", 1e5, 400e6), row.Source())
            {
                BendRadius = row.Has("bend") ? row.Length("bend") : null,
            })),
        new("port-threads",
            [new("name", Measured.Text), new("family", Measured.Text), new("d", Measured.Length), new("pitch", Measured.Length)],
            [new("also", Measured.Text)],
            PutPort),
        new("oils",
            [new("name", Measured.Text), new("nu40", Measured.Viscosity), new("nu100", Measured.Viscosity), new("density", Measured.Density)], [],
            PutOil),
        new("i-sections",
            [new("name", Measured.Text), new("h", Measured.Length), new("b", Measured.Length), new("tw", Measured.Length),
                new("tf", Measured.Length), new("r", Measured.Length)], [],
            (row, shelf) => shelf.Add(row, new ISection(
                row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf"), row.LengthOrZero("r"))
            {
                Name = row.Needed("name"),
                Source = row.Source(),
            })),
        new("channels",
            [new("name", Measured.Text), new("h", Measured.Length), new("b", Measured.Length), new("tw", Measured.Length),
                new("tf", Measured.Length), new("r1", Measured.Length)],
            [new("r2", Measured.Length), new("slope", Measured.Slope), new("tf_at", Measured.Length)],
            (row, shelf) => shelf.Add(row, new Channel(
                row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf"), row.LengthOrZero("r1"),
                row.LengthOrZero("r2"), row.Has("slope") ? row.Number("slope", 0, 0.29) : 0, row.LengthOrZero("tf_at"))
            {
                Name = row.Needed("name"),
                Source = row.Source(),
            })),
        new("hollow-sections",
            [new("name", Measured.Text), new("h", Measured.Length), new("b", Measured.Length), new("t", Measured.Length)],
            [new("forming", Measured.Text), new("ro", Measured.Length), new("ri", Measured.Length)],
            PutHollow),
        new("tubes",
            [new("name", Measured.Text), new("d", Measured.Length), new("t", Measured.Length)],
            [new("forming", Measured.Text)],
            (row, shelf) => shelf.Add(row, new CircularHollow(
                row.Length("d"), row.Length("t"), row.IsSecond("forming", "hot", "cold"))
            {
                Name = row.Needed("name"),
                Source = row.Source(),
            })),
        new("boxes",
            [new("name", Measured.Text), new("h", Measured.Length), new("b", Measured.Length), new("tw", Measured.Length), new("tf", Measured.Length)], [],
            (row, shelf) => shelf.Add(row, new Box(row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf"))
            {
                Name = row.Needed("name"),
                Source = row.Source(),
            })),
        new("bars",
            [new("name", Measured.Text), new("h", Measured.Length), new("t", Measured.Length)], [],
            (row, shelf) => shelf.Add(row, new Flat(row.Length("h"), row.Length("t"))
            {
                Name = row.Needed("name"),
                Source = row.Source(),
            })),
    ];

    private static void PutSteel(TableRow row, ShelfFiller shelf)
    {
        double fy = row.Number("fy", LeastStrength, GreatestStrength), fu = row.Number("fu", LeastStrength, GreatestStrength);
        if (fu < fy)
            throw new BadRowException("the tensile strength fu is less than the yield strength fy", "fy first, then fu, not below it");

        shelf.AddBand(
            row,
            new StrengthBand(row.Length("up_to"), fy, fu),
            row.Has("beta_w") ? row.Number("beta_w", 0.5, 1.5) : null);
    }

    private static void PutClass(TableRow row, ShelfFiller shelf)
    {
        double Strength(string column) => row.Number(column, LeastStrength, GreatestStrength);
        double above = row.LengthOrZero("above"), upTo = row.Length("up_to");
        if (upTo <= above)
            throw new BadRowException("the range of diameters ends before it begins", "above, then a greater up_to");

        double fyb = Strength("fyb"), fub = Strength("fub");
        shelf.Add(new PropertyClass(row.Needed("name"), above, upTo, Strength("sp"), fyb, fub, row.Source())
        {
            Re = row.Has("re") ? Strength("re") : fyb,
            Rm = row.Has("rm") ? Strength("rm") : fub,
        });
    }

    private static void PutThread(TableRow row, ShelfFiller shelf)
    {
        double d = row.Length("d"), p = row.Length("pitch");
        if (p > d / 4)
            throw new BadRowException("the pitch is more than a quarter of the diameter", "diameter, then pitch");
        shelf.Add(row, new MetricThread(d, p) { Name = row.Needed("name") });
    }

    private static void PutPort(TableRow row, ShelfFiller shelf)
    {
        string written = row.Needed("family");
        PortFamily family = written switch
        {
            "NPT" => PortFamily.Npt,
            "NPTF" => PortFamily.Nptf,
            "BSPP" => PortFamily.BritishParallel,
            "BSPT" => PortFamily.BritishTaper,
            "JIC" => PortFamily.Flare37,
            "ORB" => PortFamily.UnifiedBoss,
            "cone" => PortFamily.MetricCone,
            "port" => PortFamily.MetricBoss,
            _ => throw new BadRowException($"family is \"{written}\"", "NPT, NPTF, BSPP, BSPT, JIC, ORB, cone or port"),
        };
        double d = row.Length("d"), p = row.Length("pitch");
        if (p > d / 4)
            throw new BadRowException("the pitch is more than a quarter of the diameter", "diameter, then pitch");
        shelf.Add(row, new PortThread(row.Needed("name"), family, d, p, row.Source()));
    }

    private static void PutOil(TableRow row, ShelfFiller shelf)
    {
        double nu40 = row.Number("nu40", 1e-6, 2e-3), nu100 = row.Number("nu100", 0.5e-6, 2e-4);
        if (nu100 >= nu40)
            throw new BadRowException("the oil is no thinner at 100 °C than at 40 °C", "nu40, then a smaller nu100");
        shelf.Add(row, new OilGrade(row.Needed("name"), nu40, nu100, row.Number("density", 600, 1300), row.Source()));
    }

    private static void PutHollow(TableRow row, ShelfFiller shelf)
    {
        string name = row.Needed("name");
        double h = row.Length("h"), b = row.Length("b"), t = row.Length("t");
        bool cold = row.IsSecond("forming", "hot", "cold");
        RectangularHollow byStandard = cold
            ? RectangularHollow.Cold(name, h, b, t, row.Source())
            : RectangularHollow.Hot(name, h, b, t, row.Source());
        shelf.Add(row, !row.Has("ro") ? byStandard : new RectangularHollow(
            h, b, t, row.Length("ro"), row.Has("ri") ? row.LengthOrZero("ri") : Math.Max(0, row.Length("ro") - t), cold)
        {
            Name = name,
            Source = row.Source(),
        });
    }
}
