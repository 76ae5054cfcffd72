using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Files;

/// <summary>The kinds of stock tables.</summary>
internal static class TableKinds
{
    private const double LeastStrength = 20e6, GreatestStrength = 3e9;

    public static readonly IReadOnlyList<TableKind> All =
    [
        new("steels",
            [new("name", Measured.Text), new("up_to", Measured.Length), new("fy", Measured.Stress), new("fu", Measured.Stress)],
            [new("also", Measured.Text), new("beta_w", Measured.Number), new("caution", Measured.Text), new("refused", Measured.Text)],
            PutSteel),
        new("classes",
            [new("name", Measured.Text), new("above", Measured.Length), new("up_to", Measured.Length),
                new("sp", Measured.Stress), new("fyb", Measured.Stress), new("fub", Measured.Stress)],
            [new("re", Measured.Stress), new("rm", Measured.Stress), new("alpha_v", Measured.Number), new("also", Measured.Text)],
            PutClass),
        new("threads",
            [new("name", Measured.Text), new("d", Measured.Length)], [Length("pitch"), new("tpi", Measured.Number)],
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
        Sections("i-sections", ["h", "b", "tw", "tf", "r"], [], (row, name, source) => new ISection(
            row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf"), row.LengthOrZero("r")) { Name = name, Source = source }),
        Sections("channels", ["h", "b", "tw", "tf", "r1"], [Length("r2"), new("slope", Measured.Slope), Length("tf_at")], (row, name, source) => new Channel(
            row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf"), row.LengthOrZero("r1"),
            row.LengthOrZero("r2"), Slope(row), row.LengthOrZero("tf_at")) { Name = name, Source = source }),
        Sections("angles", ["h", "b", "t", "r1"], [Length("r2")], (row, name, source) => new Angle(
            row.Length("h"), row.Length("b"), row.Length("t"), row.LengthOrZero("r1"), row.LengthOrZero("r2")) { Name = name, Source = source }),
        Sections("tees", ["h", "b", "tw", "tf", "r1"], [Length("r2"), Length("r3"), new("slope", Measured.Slope)], (row, name, source) => new Tee(
            row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf"), row.LengthOrZero("r1"),
            row.LengthOrZero("r2"), row.LengthOrZero("r3"), Slope(row)) { Name = name, Source = source }),
        Sections("hollow-sections", ["h", "b", "t"], [new("forming", Measured.Text), Length("ro"), Length("ri")], Hollow),
        Sections("tubes", ["d", "t"], [new("forming", Measured.Text)], (row, name, source) => new CircularHollow(
            row.Length("d"), row.Length("t"), IsCold(row)) { Name = name, Source = source }),
        Sections("boxes", ["h", "b", "tw", "tf"], [], (row, name, source) => new Box(
            row.Length("h"), row.Length("b"), row.Length("tw"), row.Length("tf")) { Name = name, Source = source }),
        Sections("bars", ["h", "t"], [], (row, name, source) => new Flat(row.Length("h"), row.Length("t")) { Name = name, Source = source }),
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
        foreach (string name in row.Names())
        {
            shelf.Add(new PropertyClass(name, above, upTo, Strength("sp"), fyb, fub, row.Source())
            {
                AlphaV = row.Has("alpha_v") ? row.Number("alpha_v", 0.3, 0.6) : null,
                Re = row.Has("re") ? Strength("re") : fyb,
                Rm = row.Has("rm") ? Strength("rm") : fub,
            });
        }
    }

    private static void PutThread(TableRow row, ShelfFiller shelf)
    {
        bool unified = row.Has("tpi");
        if (unified == row.Has("pitch"))
            throw new BadRowException("a thread has one pitch", "its pitch, or its threads per inch under tpi");
        double d = row.Length("d"), p = unified ? 0.0254 / row.Number("tpi", 1, 80) : row.Length("pitch");
        if (p > d / 4)
            throw new BadRowException("the pitch is more than a quarter of the diameter", "diameter, then pitch");
        shelf.Add(row, new ScrewThread(d, p)
        {
            Name = row.Needed("name"),
            Form = unified ? ThreadForm.Unified : ThreadForm.Metric,
        });
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

    private static RectangularHollow Hollow(TableRow row, string name, Citation source)
    {
        double h = row.Length("h"), b = row.Length("b"), t = row.Length("t");
        bool cold = IsCold(row);
        if (!row.Has("ro"))
            return cold ? RectangularHollow.Cold(name, h, b, t, source) : RectangularHollow.Hot(name, h, b, t, source);
        return new RectangularHollow(
            h, b, t, row.Length("ro"), row.Has("ri") ? row.LengthOrZero("ri") : Math.Max(0, row.Length("ro") - t), cold)
        {
            Name = name,
            Source = source,
        };
    }

    private static bool IsCold(TableRow row) => row.IsSecond("forming", "hot", "cold");

    private static double Slope(TableRow row) => row.Has("slope") ? row.Number("slope", 0, 0.29) : 0;

    private static TableColumn Length(string name) => new(name, Measured.Length);

    /// <summary>A kind of section: a name, lengths that make it, and what may be said besides.</summary>
    private static TableKind Sections(string kind, string[] lengths, TableColumn[] optional, Func<TableRow, string, Citation, Shape> make) => new(
        kind,
        [new("name", Measured.Text), .. lengths.Select(Length)],
        [.. optional, new("mass", Measured.MassPerLength)],
        (row, shelf) =>
        {
            Shape shape = make(row, row.Needed("name"), row.Source());
            shelf.Add(row, row.Has("mass") ? shape with { PrintedMass = Weighed(row, shape) } : shape);
        });

    // Rolling tolerances allow 4 % and more; what is further off has a slip in its dimensions.
    private static double Weighed(TableRow row, Shape shape)
    {
        double mass = row.Number("mass", 0.05, 5000);
        if (row.Own && Math.Abs(mass / shape.Mass - 1) > 0.08)
        {
            throw new BadRowException(
                $"{shape.Name} is said to weigh {Readout.Text(mass, Dimension.MassPerLength)}, but its dimensions weigh {Readout.Text(shape.Mass, Dimension.MassPerLength)}",
                "dimensions and mass of one section");
        }

        return mass;
    }
}
