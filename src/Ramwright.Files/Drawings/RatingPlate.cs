using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>The plate that is riveted to the press: what it is safe to, at which reading, and what else its user must know. At true size.</summary>
public static class RatingPlate
{
    private const double Wide = 120, Tall = 84, Hole = 3.3, In = 5;

    /// <summary>Draws it.</summary>
    /// <param name="check">The press.</param>
    /// <param name="mass">Mass of the press, kg; null where it is not known.</param>
    /// <param name="units">Units of the plate.</param>
    public static Sheet Of(PressCheck check, double? mass, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        Rig rig = check.Rig;
        string T(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        var marks = new List<Mark>
        {
            new Area("", new Outline([Loops.Rounded((0, 0, 3), (Wide, 0, 3), (Wide, Tall, 3), (0, Tall, 3))]), Pen.Frame, "#ffffff"),
        };
        foreach ((double right, double up) in ((double, double)[])[(In, In), (Wide - In, In), (Wide - In, Tall - In), (In, Tall - In)])
            marks.Add(new Area("", new Outline([[new(right + Hole / 2, up, 1), new(right - Hole / 2, up, 1)]]), Pen.Edge));
        void Say(string text, double x, double y, double height, Anchor at = Anchor.Left, bool bold = false) => marks.Add(new Lettering("", text, x, y, height, at, Bold: bold));

        Say(Short(rig.Name, 34), Wide / 2, Tall - 11, 4.2, Anchor.Middle, true);
        Say("HYDRAULIC PRESS", Wide / 2, Tall - 16, 1.9, Anchor.Middle);
        marks.Add(new Line("", [(8, Tall - 18.5), (Wide - 8, Tall - 18.5)], Pen.Edge));
        // down to three figures: a plate never says more than the ladder does
        Unit unit = Readout.UnitFor(Dimension.Force, units);
        double safe = unit.ToSi(Down(unit.FromSi(Math.Min(check.Ladder.SafeRating, check.Power.MostPossibleForce))));
        Say("SAFE TO", 9, Tall - 27, 2.4);
        Say(ForceText.Of(safe, units), 38, Tall - 27.6, 5, bold: true);
        double reading = GaugeChart.Reading(check, safe);
        (string Name, string Value)[] rows =
        [
            ("gauge reads there", T(reading, Dimension.Pressure)),
            ("relief valve", Relief(check, units)),
            ("stroke; daylight", $"{T(rig.Cylinder.Stroke, Dimension.Length)}; {T(rig.Frame.Daylight, Dimension.Length)}"),
            ("work off centre at most", $"{T(rig.Loading.Across, Dimension.Length)} aside, {T(rig.Loading.Deep, Dimension.Length)} to front or back"),
            ("mass, oil not counted", mass is { } kg ? T(kg, Dimension.Mass) : Line),
            ("built by", rig.Papers.Builder ?? Line),
            ("number; year", $"{rig.Papers.Number ?? Line}; {rig.Papers.Year ?? Line}"),
        ];
        double y = Tall - 34;
        foreach ((string name, string value) in rows)
        {
            Say(name, 9, y, 2);
            Say(Short(value, 44), 45, y, 2.2, bold: true);
            y -= 4.7;
        }

        marks.Add(new Line("", [(8, 14.5), (Wide - 8, 14.5)], Pen.Edge));
        Say("Oil under pressure pierces skin: go to hospital at once. Never a hand under the ram.", Wide / 2, 10.6, 1.75, Anchor.Middle);
        Say("Nothing loose under it; stand aside. Over the safe force it can break and throw.", Wide / 2, 7.2, 1.75, Anchor.Middle);
        return new Sheet($"{rig.Name}: rating plate", Wide, Tall, marks);
    }

    /// <summary>The relief valve's setting; where that lets more through than the press is safe to, the setting it must have.</summary>
    private static string Relief(PressCheck check, UnitSystem units)
    {
        var use = SettingInUse.Of(check);
        return !use.IsSafe ? "set and seal at or below " + SettingInUse.Below(use.Safe, units)
            : use.Said is { } set ? "sealed at " + Readout.Text(set, Dimension.Pressure, units) : Line;
    }

    /// <summary>What is stamped in by hand.</summary>
    private const string Line = "____________";

    /// <summary>Rounded down to three figures.</summary>
    internal static double Down(double value)
    {
        if (!(value > 0))
            return 0;
        double step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return Math.Floor(value / step + 1e-9) * step;
    }

    private static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 1)] + "…";
}
