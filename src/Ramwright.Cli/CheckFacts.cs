using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Speed, give and life of a press, and what a raised ram does when power fails: in full, or in a few lines.</summary>
internal static class CheckFacts
{
    public static void Show(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        Speeds(check, units, screen);
        screen.WriteLine();
        Stiffness(check, units, screen);
        screen.WriteLine();
        screen.Heading("When it fails with the ram up");
        foreach (PowerFailure failure in check.PowerFailing)
        {
            string missing = failure.Missing.Count == 0 ? "" : " Missing: " + string.Join("; ", failure.Missing) + ".";
            screen.Bullet(failure.Fate == RamFate.Holds ? "-" : "!", $"{failure.Lost}: {failure.What.Text(units)}.{missing}");
        }
    }

    public static void Brief(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Speed, give and life");
        PowerReport power = check.Power;
        SpeedAtLoad half = Near(power.Speeds, power.TrueForce / 2);
        string back = power.ReturnSpeed is { } up ? $"; back {Speed(up, units)}" : "";
        screen.Fact("approach", Speed(power.ApproachSpeed, units), $"{Speed(half.Speed, units)} at {Readout.Text(half.Load, Dimension.Force, units)}{back}");
        screen.Fact("daylight grows", Readout.Text(check.DaylightGrowth, Dimension.Length, units),
            $"dies open {Readout.Text(check.Opening, Dimension.Slope, units)}, at what is wanted");
        foreach ((string what, string value, string remark) in LastingFacts.Of(check, units, brief: true))
            screen.Fact(what, value, remark);
        if (check.PowerFailing.Where(f => f.Fate != RamFate.Holds).ToArray() is { Length: > 0 } fails)
            screen.Fact("power fails", Fate(fails.Max(f => f.Fate)), $"{string.Join(" or ", fails.Select(f => f.Lost))} lost; why: --all");
        else
            screen.Fact("power fails", "the ram holds", "");
    }

    private static string Fate(RamFate fate) => fate switch
    {
        RamFate.Creeps => "the ram creeps",
        RamFate.Drops => "THE RAM DROPS",
        _ => "RAM MAY DROP",
    };

    private static void Speeds(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Speed");
        PowerReport power = check.Power;
        screen.Fact("approach", Speed(power.ApproachSpeed, units), "no load");
        foreach (SpeedAtLoad at in Told(power.Speeds))
            screen.Fact($"at {Readout.Text(at.Load, Dimension.Force, units)}", Speed(at.Speed, units), "");
        screen.Fact("return", power.ReturnSpeed is { } back ? Speed(back, units) : "not known",
            power.Times.ReturnBy switch { ReturnBy.Oil => "by oil", ReturnBy.Spring => "by its spring", _ => "by weight or load" });
        screen.Fact("full stroke", Readout.Text(power.Times.FullStroke, Dimension.Time, units),
            $"{Readout.Text(check.Rig.Cylinder.Stroke, Dimension.Length, units)}, no load");
        foreach ((string what, string value, string remark) in PowerFacts.Of(check, units))
            screen.Fact(what, value, remark);
    }

    private static void Stiffness(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Give");
        screen.Fact("daylight grows", Readout.Text(check.DaylightGrowth, Dimension.Length, units),
            $"at the wanted force; {Readout.Text(check.Response.Stiffness, Dimension.Stiffness, units)}");
        screen.Fact("dies open", Readout.Text(check.Opening, Dimension.Slope, units),
            $"at the wanted force, {check.Response.Solutions[check.WorstOpening.Case].Case.Name}");
        foreach ((string what, string value, string remark) in LastingFacts.Of(check, units))
            screen.Fact(what, value, remark);
    }

    private static string Speed(double speed, UnitSystem units) => Readout.Text(speed < 1e-9 ? 0 : speed, Dimension.Speed, units);

    private static SpeedAtLoad Near(IReadOnlyList<SpeedAtLoad> speeds, double load) => speeds.MinBy(s => Math.Abs(s.Load - load))!;

    /// <summary>Up to four loads out of the list, evenly spread, the greatest last; of several at one speed the greatest.</summary>
    private static List<SpeedAtLoad> Told(IReadOnlyList<SpeedAtLoad> speeds)
    {
        int last = speeds.Count - 1;
        var told = new List<SpeedAtLoad>();
        for (int i = 1; i <= 4; i++)
        {
            int at = last * i / 4;
            if (at == 0)
                continue;
            if (told.Count > 0 && Math.Abs(told[^1].Speed - speeds[at].Speed) <= 1e-6 * speeds[at].Speed)
                told[^1] = speeds[at];
            else
                told.Add(speeds[at]);
        }

        return told;
    }
}
