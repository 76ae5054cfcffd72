using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>The hydraulic circuit of a press, from the components that its file names; symbols after ISO 1219-1.</summary>
public static class HydraulicSchematic
{
    private const double Wide = 172, Tall = 147, Main = 78, Down = 12;

    /// <summary>Draws it.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of the settings.</param>
    public static Circuit Of(PressCheck check, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        var d = new Draft(check, units);
        Source(d);
        Relief(d);
        Gauge(d);
        bool pulls = check.Rig.Cylinder.PullsByOil;
        ControlValve.Draw(d, pulls);
        Ram.Draw(d, pulls);
        foreach (IGrouping<string, RigLine> line in check.Rig.Lines.GroupBy(l => Words(l, d)))
            d.List("hose or pipe", line.Count() > 1 ? $"{line.Count()} of {line.Key}" : line.Key);
        if (check.Rig.Lines.Count == 0)
            d.List("hoses and pipes", CircuitComponent.Open);
        d.List("filter", CircuitComponent.Open + ": the file names none; a return filter of 10 to 25 µm is common practice");
        d.List("oil", $"{check.Rig.Oil.Grade.Name}");
        return new Circuit(new Sheet($"{check.Rig.Name}: hydraulic circuit", Wide, Tall, [.. Moving.By(d.Symbols.Marks, 0, -Down)]), d.Components);
    }

    private static string Words(RigLine line, Draft d)
    {
        string duty = KeyNames.Written(line.Duty.ToString()).Replace('-', ' ');
        return $"{duty}, bore {d.Text(line.Bore, Dimension.Length)}, {d.Text(line.Length, Dimension.Length)} long, "
            + (line.Rating is { } rating ? $"rated {d.Text(rating, Dimension.Pressure)}" : $"rating: {CircuitComponent.Open}");
    }

    private static void Source(Draft d)
    {
        CircuitSymbols s = d.Symbols;
        switch (d.Check.Rig.Pump)
        {
            case RigElectricPack pack:
                Electric(d, pack);
                break;
            case RigAirPump air:
                Air(d, air);
                break;
            default:
                var hand = (RigHandPump)d.Check.Rig.Pump;
                s.Pump(Main, 38);
                s.Lever(Main - 6, 38);
                s.Tank(Main, 16);
                s.Pipe((Main, 22), (Main, 32));
                s.Pipe((Main, 44), (Main, 92));
                s.Check(Main, 50);
                d.Tag("hand pump", $"{d.Text(hand.PerStroke, Dimension.Volume)} a stroke, built for {d.Text(hand.RatedPressure, Dimension.Pressure)}"
                    + (hand.LowPerStroke > hand.PerStroke ? $"; large piston {d.Text(hand.LowPerStroke, Dimension.Volume)} up to {d.Text(hand.UnloadAt, Dimension.Pressure)}" : ""), Main + 11, 36);
                break;
        }
    }

    private static void Electric(Draft d, RigElectricPack pack)
    {
        CircuitSymbols s = d.Symbols;
        s.Motor(18, 38);
        s.Shaft(24, pack.LowStage is null ? Main - 6 : 46, 38);
        d.Tag("electric motor", d.Text(pack.Motor, Dimension.Power), 18, 28.5);
        if (pack.LowStage is { } low)
        {
            s.Shaft(58, Main - 6, 38);
            s.Tank(52, 16);
            s.Pipe((52, 22), (52, 32));
            s.Pipe((52, 44), (52, 72), (Main, 72));
            s.Dot(Main, 72);
            s.Pump(52, 38);
            s.Check(52, 66);
            s.Dot(52, 54);
            s.Pipe((52, 54), (32, 54), (32, 22));
            s.PressureValve(32, 48);
            s.Tank(32, 16);
            s.Dot(Main, 76);
            s.Pilot((Main, 76), (23, 76), (23, 48), (27, 48));
            d.Tag("pump, large stage", Stage(d, low), 60, 31);
            d.Tag("unloading valve of the large stage", "opens at " + d.Text(pack.UnloadAt, Dimension.Pressure), 17, 58);
        }

        s.Tank(Main, 16);
        s.Pipe((Main, 22), (Main, 32));
        s.Pipe((Main, 44), (Main, 92));
        s.Pump(Main, 38);
        d.Tag(pack.LowStage is null ? "pump" : "pump, small stage", Stage(d, pack.HighStage), Main + 11, 36);
        if (d.Check.Rig.Valves.PumpCheck == true || pack.LowStage is not null)
        {
            s.Check(Main, 52);
            d.Tag("check valve at the pump", d.Check.Rig.Valves.PumpCheck == true ? "keeps oil from running back" : "of the two-stage pump", Main - 7, 52);
        }
    }

    private static string Stage(Draft d, RigStage stage) => $"{d.Text(stage.Displacement, Dimension.Displacement)} at {Readout.Text(((RigElectricPack)d.Check.Rig.Pump).Speed, Dimension.RotationalSpeed)}";

    private static void Air(Draft d, RigAirPump air)
    {
        CircuitSymbols s = d.Symbols;
        s.Shaft(14, 19, 20);
        s.Motor(9, 20, 5);
        s.Compressor(24, 20, 5);
        s.Pipe((24, 25), (24, 29));
        s.Receiver(24, 32.5);
        s.Pipe((24, 36), (24, 44), (40.5, 44));
        s.Regulator(45, 44);
        s.Pipe((49.5, 44), (Main - 6.5, 44));
        s.Intensifier(Main, 44);
        s.Pipe((Main + 3.2, 37.5), (Main + 3.2, 22));
        s.Tank(Main + 3.2, 16);
        s.Pipe((Main + 3.2, 50.5), (Main + 3.2, 56), (Main, 56), (Main, 92));
        s.Check(Main, 62);
        RigCompressor c = air.Compressor;
        d.Tag("compressor with receiver", $"{d.Text(c.Receiver, Dimension.Volume)}, starts at {d.Text(c.CutIn, Dimension.Pressure)}, stops at {d.Text(c.CutOut, Dimension.Pressure)}", 36, 26);
        d.Tag("air regulator", $"set {d.Setting(air.AirPressure, air.EffectiveRatio)}: this setting is the force", 45, 37);
        d.Tag("air-driven pump", $"{air.EffectiveRatio:0.#} to 1; {d.Text(air.FullFlow, Dimension.Flow)} at {d.Text(air.FullFlowAt, Dimension.Pressure)}", Main + 11, 36);
    }

    private static void Relief(Draft d)
    {
        CircuitSymbols s = d.Symbols;
        double? relief = d.Check.Rig.Pump.Relief;
        if (relief is null)
        {
            d.List("relief valve", d.Check.Rig.Pump is RigAirPump
                ? "none in the file: the air regulator alone limits the oil, and a larger compressor can pass it. " + CircuitComponent.OpenSentence
                : "none in the file. There must be one. " + CircuitComponent.OpenSentence);
            return;
        }

        const double x = 120;
        s.Dot(Main, 80);
        s.Pipe((Main, 80), (x, 80), (x, 22));
        s.PressureValve(x, 58);
        s.Dot(x, 68);
        s.Pilot((x, 68), (x - 9, 68), (x - 9, 58), (x - 5, 58));
        s.Tank(x, 16);
        d.Tag("relief valve", $"set {d.Setting(relief.Value)}, and sealed", x + 16, 58);
    }

    private static void Gauge(Draft d)
    {
        CircuitSymbols s = d.Symbols;
        s.Dot(Main, 86);
        s.Pipe((Main, 86), (139, 86));
        s.Gauge(143.6, 86, there: d.Check.Rig.Gauge is not null);
        d.Tag("pressure gauge", d.Check.Rig.Gauge is { } gauge ? $"to {d.Text(gauge.Range, Dimension.Pressure)}, class {Readout.Number(gauge.Class)}" : "none in the file. There must be one. " + CircuitComponent.OpenSentence, 152, 86);
    }

    /// <summary>A circuit while it is drawn.</summary>
    internal sealed class Draft(PressCheck check, UnitSystem units)
    {
        private readonly List<CircuitComponent> _components = [];

        public PressCheck Check { get; } = check;
        public CircuitSymbols Symbols { get; } = new();
        public IReadOnlyList<CircuitComponent> Components => _components;

        public string Text(double si, Dimension dimension) => Readout.Text(si, dimension, units);

        /// <summary>What a limit of the pressure is set to in use; where the press is not safe to what the file says, that too.</summary>
        public string Setting(double said, double ratio = 1)
        {
            var use = SettingInUse.Of(Check);
            return use.IsSafe ? "to " + use.Text(said, ratio, units) : $"{use.Text(said, ratio, units)}, not to the {Text(said, Dimension.Pressure)} of the file, which the press is not safe to";
        }

        /// <summary>Numbers a component on the drawing and lists it.</summary>
        public void Tag(string what, string setting, double x, double y)
        {
            List(what, setting);
            Symbols.Number(_components.Count, x, y);
        }

        /// <summary>Lists a component that has no place on the drawing.</summary>
        public void List(string what, string setting) => _components.Add(new CircuitComponent(_components.Count + 1, what, setting));
    }
}
