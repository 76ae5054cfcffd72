using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles how the press is welded.</summary>
internal static class ResolveWelder
{
    private const string Usual = "common practice for this process; read it off your machine";

    public static RigWelder Of(Welder? said, Shelf shelf)
    {
        said ??= new Welder();
        var assume = new Assumptions();
        WeldingProcess process = assume.Or(said.Process, "welding.process", WeldingProcess.LowHydrogenStick, "nothing said: basic rods, the usual choice for load-bearing welds");
        Setting setting = Of(process);
        return new RigWelder
        {
            Process = process,
            Hydrogen = assume.Or(said.Hydrogen, "welding.hydrogen", setting.Hydrogen, Dimension.Number, "mL per 100 g: " + setting.WhyHydrogen),
            Amperes = assume.Or(said.Amperes, "welding.amperes", setting.Amperes, Dimension.Number, Usual),
            Volts = assume.Or(said.Volts, "welding.volts", setting.Volts, Dimension.Number, Usual),
            Rate = assume.Or(said.KilogramsAnHour, "welding.kilograms-an-hour", setting.Rate, Dimension.Number, Usual) / 3600,
            Travel = assume.Or(said.Travel, "welding.travel", setting.Travel * 1e-3, Dimension.Speed, Usual),
            SteelTemperature = assume.Or(said.SteelTemperature, "welding.steel-temperature", 10, Dimension.Temperature, "a cool workshop"),
            Torch = assume.Or(said.Torch, "welding.torch", 20e3, Dimension.Power, "a middling propane heating torch"),
            Analyses = (said.Analyses ?? []).Where(a => a.Steel is not null).GroupBy(a => NameOf(a.Steel!, shelf)).ToDictionary(g => g.Key, g => Analysis(g.Key, g.Last(), assume)),
            Assumed = assume.Made,
        };
    }

    private static string NameOf(string said, Shelf shelf) => shelf.TrySteel(said, out Steel? steel) ? steel.Name : said;

    /// <summary>What is usually left in steel of elements that nobody added, per cent: an analysis that does not name them would else promise too much.</summary>
    private const double ResidualCr = 0.05, ResidualMo = 0.01, ResidualNi = 0.05, ResidualCu = 0.10;

    private static Composition Analysis(string steel, SteelAnalysis said, Assumptions assume)
    {
        double Percent(double? share, double residual, string element)
        {
            if (share is { } there)
                return 100 * there;
            if (residual > 0)
                assume.Note($"welding.analyses of {steel}, {element}", $"{Readout.Number(residual)} %", "not named in the analysis: counted with what is usually left in steel; common practice");
            return residual;
        }

        return new Composition(Percent(said.Carbon, 0, "carbon"), Percent(said.Silicon, 0, "silicon"), Percent(said.Manganese, 0, "manganese"), Percent(said.Chromium, ResidualCr, "chromium"),
            Percent(said.Molybdenum, ResidualMo, "molybdenum"), Percent(said.Nickel, ResidualNi, "nickel"), Percent(said.Copper, ResidualCu, "copper"), Percent(said.Vanadium, 0, "vanadium"),
            Percent(said.Boron, 0, "boron"));
    }

    /// <summary>What a process usually runs at.</summary>
    private sealed record Setting(double Hydrogen, string WhyHydrogen, double Amperes, double Volts, double Rate, double Travel);

    private static Setting Of(WeldingProcess process) => process switch
    {
        WeldingProcess.Stick => new(20, "rutile and cellulosic rods belong to the highest scale, above 15", 120, 24, 1.1, 2.5),
        WeldingProcess.LowHydrogenStick => new(10, "basic rods not marked H5", 125, 24, 1.2, 2.5),
        WeldingProcess.Wire => new(5, "solid wire under gas, EN 1011-2 table C.2, from memory", 200, 24, 3.0, 5),
        WeldingProcess.CoredWire => new(10, "flux-cored wire not marked H5", 200, 26, 3.2, 5),
        _ => new(3, "bare rod under inert gas, EN 1011-2 table C.2, from memory", 150, 12, 0.6, 1.5),
    };
}
