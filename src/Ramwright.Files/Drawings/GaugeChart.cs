using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>What the gauge's reading is worth as ram force: a card to print at true size and hang beside the gauge.</summary>
public static class GaugeChart
{
    private const double Wide = 105, Tall = 222, Foot = 34, Long = 150, LineAt = 33;

    /// <summary>Ram force at a gauge reading, N: less the seals, and less the return spring with the ram fully out.</summary>
    /// <param name="check">The press.</param>
    /// <param name="p">Reading, Pa, 0 or more.</param>
    public static double Force(PressCheck check, double p)
    {
        ArgumentNullException.ThrowIfNull(check);
        RigCylinder c = check.Rig.Cylinder;
        return RamForce.Net(p, check.Power.Areas.Force, c.SealFriction, RamForce.Spring(c));
    }

    /// <summary>Reading at a ram force, Pa.</summary>
    public static double Reading(PressCheck check, double force)
    {
        ArgumentNullException.ThrowIfNull(check);
        RigCylinder c = check.Rig.Cylinder;
        return RamForce.PressureFor(force, check.Power.Areas.Force, c.SealFriction, RamForce.Spring(c));
    }

    /// <summary>Top of the scale, Pa: all the pump can give, and what the press is safe to, with room above.</summary>
    public static double Most(PressCheck check, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(check);
        double unit = Readout.UnitFor(Dimension.Pressure, units).ToSi(1), most = Math.Max(check.Power.MostPossiblePressure, Reading(check, Math.Min(check.Ladder.SafeRating, 2 * check.Power.MostPossibleForce))) / unit;
        double step = Step(most / 8);
        return Math.Ceiling(most / step + 0.25) * step * unit;
    }

    /// <summary>Draws it.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of the gauge.</param>
    public static Sheet Of(PressCheck check, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        var marks = new List<Mark> { new Area("", new Geometry.Outline([Geometry.Loops.Rectangle(1, Wide - 1, 1, Tall - 1)]), Pen.Frame) };
        double top = Most(check, units);
        Unit pressure = Readout.UnitFor(Dimension.Pressure, units);
        void Say(string text, double x, double y, double height = 2.2, Anchor at = Anchor.Left, bool bold = false) => marks.Add(new Lettering("", text, x, y, height, at, Bold: bold));
        double At(double p) => Foot + Long * p / top;

        Say(check.Rig.Name, Wide / 2, Tall - 10, 3.6, Anchor.Middle, true);
        Say("what the gauge reads, and what the ram pushes with", Wide / 2, Tall - 15.5, 2.1, Anchor.Middle);
        marks.Add(new Line("", [(LineAt, Foot), (LineAt, Foot + Long)], Pen.Frame));
        Say(pressure.Symbol, LineAt - 9, Foot + Long + 5, 2.8, Anchor.Right, true);
        (Unit Unit, string Name)[] forces = units == UnitSystem.Metric ? [(Find("kN"), "kN"), (Find("t"), "t")] : [(Find("US ton"), "US ton"), (Find("kN"), "kN")];
        Say(forces[0].Name, LineAt + 13, Foot + Long + 5, 2.8, Anchor.Middle, true);
        Say(forces[1].Name, LineAt + 36, Foot + Long + 5, 2.8, Anchor.Middle, true);

        foreach ((double value, bool major) in Ticks(pressure.FromSi(top)))
        {
            double y = At(pressure.ToSi(value));
            marks.Add(new Line("", [(LineAt - (major ? 6 : 3), y), (LineAt, y)], major ? Pen.Edge : Pen.Thin));
            if (major)
                Say(Readout.Number(value, 5), LineAt - 8, y - 1.1, 2.3, Anchor.Right);
        }

        for (int i = 0; i < 2; i++)
        {
            double x = LineAt + 23 * i, most = forces[i].Unit.FromSi(Force(check, top));
            if (i == 1)
                marks.Add(new Line("", [(x, Foot), (x, Foot + Long)], Pen.Edge));
            foreach ((double value, bool major) in Ticks(most))
            {
                double p = Reading(check, forces[i].Unit.ToSi(value)), y = At(p);
                if (p > top * (1 + 1e-9))
                    continue;
                marks.Add(new Line("", [(x, y), (x + (major ? 6 : 3), y)], major ? Pen.Edge : Pen.Thin));
                if (major)
                    Say(Readout.Number(value, 5), x + 8, y - 1.1, 2.3);
            }
        }

        Lines(check, marks, top, At);
        Feet(check, units, marks);
        return new Sheet($"{check.Rig.Name}: gauge chart", Wide, Tall, marks);
    }

    private static void Lines(PressCheck check, List<Mark> marks, double top, Func<double, double> at)
    {
        // no two words on one spot: those that are close are moved apart, their lines stay
        var lines = new List<(double P, string Words, Pen Pen)> { (check.Power.MostPossiblePressure, "the pump's most", Pen.Hidden), (Reading(check, check.Ladder.SafeRating), "SAFE TO", Pen.Frame) };
        if (check.Rig.Wanted is > 0 and var wanted)
            lines.Add((Reading(check, wanted), "wanted", Pen.Centre));
        double last = double.NegativeInfinity;
        foreach ((double p, string words, Pen pen) in lines.Where(l => l.P <= top).OrderBy(l => l.P))
        {
            double y = at(p), text = Math.Max(y - 0.9, last + 3.2);
            last = text;
            // the figures of both scales stay clear of it
            foreach ((double from, double to) in ((double, double)[])[(LineAt, LineAt + 6.8), (LineAt + 17.5, LineAt + 29.8), (LineAt + 38.5, LineAt + 40.5)])
                marks.Add(new Line("", [(from, y), (to, y)], pen));
            marks.Add(new Line("", [(LineAt + 40.5, y), (LineAt + 42.2, text + 0.9)], Pen.Thin));
            marks.Add(new Lettering("", words, LineAt + 42.6, text, 1.9, Bold: pen == Pen.Frame));
        }
    }

    private static void Feet(PressCheck check, UnitSystem units, List<Mark> marks)
    {
        string mu = Readout.Text(check.Rig.Cylinder.SealFriction, Dimension.Ratio, units);
        string spring = RamForce.Spring(check.Rig.Cylinder) > 0 ? ", and the spring, ram fully out" : "";
        double y = Foot - 7;
        foreach (string line in (string[])
            [$"Ram going out. Taken off: the seals' {mu}{spring}.", "Going back, or held, the gauge shows less than this.", Error(check, units), "Calculated, not measured: prove it before you lean on it."])
        {
            marks.Add(new Lettering("", line, Wide / 2, y, 1.8, Anchor.Middle));
            y -= 3.5;
        }

        // whoever prints it can measure that it came out at true size
        (double bar, string words) = TrueSize(units);
        double left = (Wide - bar) / 2;
        marks.Add(new Line("", [(left, 7), (left + bar, 7)], Pen.Edge));
        marks.Add(new Line("", [(left, 5.5), (left, 8.5)], Pen.Edge));
        marks.Add(new Line("", [(left + bar, 5.5), (left + bar, 8.5)], Pen.Edge));
        marks.Add(new Lettering("", $"{words}: measure it on the print", Wide / 2, 8.2, 1.7, Anchor.Middle));
    }

    /// <summary>The bar that shows whether a print came out at true size, in mm of the sheet, and as it is read.</summary>
    internal static (double Long, string Words) TrueSize(UnitSystem units) => units == UnitSystem.Imperial ? (50.8, "2 in") : (50, "50 mm");

    private static string Error(PressCheck check, UnitSystem units) => check.Rig.Gauge is { } gauge
        ? $"A gauge of class {Readout.Number(gauge.Class)} to {Readout.Text(gauge.Range, Dimension.Pressure, units)} may be {Readout.Text(gauge.Class / 100 * gauge.Range, Dimension.Pressure, units)} off anywhere."
        : "No gauge is named in the file: how far off it may be is not known.";

    private static Unit Find(string symbol) => Units.TryFind(symbol, Dimension.Force, out Unit? unit) ? unit : throw new ArgumentException($"no unit of force is called {symbol}", nameof(symbol));

    /// <summary>Where the scale is marked: long marks at round values, five short steps between.</summary>
    private static IEnumerable<(double Value, bool Major)> Ticks(double most)
    {
        double step = Step(most / 9) / 5;
        for (int i = 0; i * step <= most * (1 + 1e-9); i++)
            yield return (i * step, i % 5 == 0);
    }

    private static double Step(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough))), share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }
}
