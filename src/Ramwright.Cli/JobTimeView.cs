using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>A job in time on a terminal: phases, heat, force against time, heats, an hour of air, and the balances.</summary>
internal static class JobTimeView
{
    private const int LongestBar = 24, Rows = 10;

    public static void Show(JobInTime time, UnitSystem units, IAnsiConsole screen)
    {
        SqueezeResult r = time.First;
        screen.Heading("In time", " pump, air, oil, frame and work together, one " + (time.Heats is null ? "stroke" : "squeeze"));
        screen.Loud(SqueezeWords.Of(r, units));
        screen.WriteLine();
        Facts(time, units, screen);
        Against(r, units, screen);
        if (time.Heats is { } heats)
            Heats(heats, units, screen);
        if (time.Hour is { } hour)
            Hour(hour, time.Heats is not null, units, screen);
        Balances(r, units, screen);
        foreach (Ramwright.Jobs.Remark flag in time.Flags)
            screen.Bullet("?", flag.Text(units));
        foreach (Assumed a in r.Assumed)
            screen.Bullet("*", $"assumed: {a.What}: {a.Value(units)}  ({a.Why})");
        screen.WriteLine();
    }

    private static void Facts(JobInTime time, UnitSystem units, IAnsiConsole screen)
    {
        SqueezeResult r = time.First;
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        foreach ((SqueezePhase phase, double t) in r.Times)
        {
            string remark = phase switch
            {
                SqueezePhase.Approach => "from just above the work to the touch",
                SqueezePhase.Pressing => r.Unloaded ? "the pump's large stage is unloaded on the way" : "",
                SqueezePhase.Return => "the ram up again",
                _ => "",
            };
            screen.Fact(SqueezeWords.Name(phase), Show(t, Dimension.Time), remark);
        }

        screen.Fact("force up to", Show(r.PeakForce, Dimension.Force), $"at {Show(r.PeakPressure, Dimension.Pressure)} in the cylinder");
        if (r.Height is { } h)
            screen.Fact("height", Show(h, Dimension.Length), $"{Show(r.Travel, Dimension.Length)} taken off");
        if (r.AtEnd is { } end && r.AtTouch is { } touch)
        {
            screen.Fact("heat", Show(end.Mean, Dimension.Temperature),
                $"on the mean at the end, {Show(touch, Dimension.Temperature)} at the touch; {Show(end.Coldest, Dimension.Temperature)} at the skin to {Show(end.Hottest, Dimension.Temperature)} inside");
        }

        if (r.Receiver is { } p)
            screen.Fact("receiver", Show(p, Dimension.Pressure), $"after it; {Show(r.AirTaken, Dimension.Volume)} of free air taken");
        screen.WriteLine();
    }

    private static void Against(SqueezeResult r, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Force against time");
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        Unit length = Readout.UnitFor(Dimension.Length, units), force = Readout.UnitFor(Dimension.Force, units), heat = Readout.UnitFor(Dimension.Temperature, units);
        table.AddColumn(JobView.Column("time, s", right: true));
        table.AddColumn(JobView.Column($"travel, {length.Symbol}", right: true));
        table.AddColumn(JobView.Column($"force, {force.Symbol}", right: true));
        bool hot = r.AtEnd is not null;
        if (hot)
            table.AddColumn(JobView.Column($"mean, {heat.Symbol}", right: true));
        table.AddColumn(JobView.Column("", right: false));
        double from = r.Times.GetValueOrDefault(SqueezePhase.Approach), length_ = r.Times.GetValueOrDefault(SqueezePhase.Pressing);
        SqueezePoint[] under = [.. r.Points.Where(p => p.Phase is SqueezePhase.Pressing or SqueezePhase.Dwell)];
        for (int i = 0; i <= Rows && under.Length > 1; i++)
        {
            SqueezePoint p = At(under, from + length_ * i / Rows);
            List<Spectre.Console.Rendering.IRenderable> cells =
            [
                new Text(Readout.Number(p.Time - from)), new Text(Readout.Number(length.FromSi(p.Travel < 5e-6 ? 0 : p.Travel))),
                new Text(Readout.Number(force.FromSi(p.Force))),
            ];
            if (hot)
                cells.Add(new Text(Readout.Number(Math.Round(heat.FromSi(p.Mean ?? 0)), 4)));
            cells.Add(new Text(new string('█', (int)Math.Round(p.Force / Math.Max(r.PeakForce, 1) * LongestBar))));
            table.AddRow(cells);
        }

        screen.Write(table);
        screen.WriteLine();
    }

    /// <summary>The state at a time, straight between the points.</summary>
    private static SqueezePoint At(SqueezePoint[] points, double time)
    {
        int i = 1;
        while (i < points.Length - 1 && points[i].Time < time)
            i++;
        (SqueezePoint a, SqueezePoint b) = (points[i - 1], points[i]);
        double share = b.Time > a.Time ? Math.Clamp((time - a.Time) / (b.Time - a.Time), 0, 1) : 1;
        return b with
        {
            Time = time,
            Travel = a.Travel + (b.Travel - a.Travel) * share,
            Force = a.Force + (b.Force - a.Force) * share,
            Mean = a.Mean + (b.Mean - a.Mean) * share,
        };
    }

    private static void Heats(WorkInHeats heats, UnitSystem units, IAnsiConsole screen)
    {
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        screen.Heading("Squeezes and heats", " each squeeze followed, the dies' chill counted");
        screen.Fact("in one heat", heats.OneHeatIsMore ? $"{heats.InOneHeat} or more" : $"{heats.InOneHeat}", "squeezes before the bar is too cold or the press cannot");
        screen.Fact("the whole job", $"{heats.Squeezes} squeezes", heats.IsDone
            ? $"in {heats.Heats.Count} heats, {Show(heats.PeakForce, Dimension.Force)} at most"
            : $"in {heats.Heats.Count} heats, then given up at pass {heats.StoppedAt?.Pass}, squeeze {heats.StoppedAt?.Squeeze}. {SqueezeWords.Short(heats.StoppedBy)}");
        if (heats.Heats.Count > 0)
        {
            (double least, double most) = heats.Scale;
            screen.Fact("scale", $"{least * 100:0.#} to {most * 100:0.#} %", "of the weight burnt away in a gas or coal fire; leave that much more");
        }

        if (heats.Heats.Count > 1)
        {
            var table = new Table { Border = TableBorder.None, ShowHeaders = true };
            foreach (string title in new[] { "heat", "squeezes", "for, s", "from", "to", "force" })
                table.AddColumn(JobView.Column(title, right: true));
            foreach (HeatOfWork heat in heats.Heats)
            {
                table.AddRow(new Text($"{heat.Number}"), new Text($"{heat.Squeezes}"), new Text(Readout.Number(heat.Time)),
                    new Text(Show(Math.Round(heat.FirstTouch), Dimension.Temperature)), new Text(Show(Math.Round(heat.LastTouch), Dimension.Temperature)), new Text(Show(heat.PeakForce, Dimension.Force)));
            }

            screen.Write(table);
        }

        screen.WriteLine();
    }

    private static void Hour(HourOfWork hour, bool hot, UnitSystem units, IAnsiConsole screen)
    {
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        screen.Heading("An hour of it on the receiver");
        screen.Fact("done", $"{Readout.Number(hour.Rounds, 2)} times", $"each takes {Show(hour.RoundTime, Dimension.Time)}, " + (hot
            ? $"{Show(WorkInHeats.InTheFire, Dimension.Time)} of it in the fire for each heat"
            : $"{Show(HourOfWork.BetweenPieces, Dimension.Time)} of it to change the piece"));
        screen.Fact("lowest", Show(hour.Lowest, Dimension.Pressure), $"in the receiver; the work needs {Show(hour.Needs, Dimension.Pressure)} at the pump");
        screen.Fact("compressor", $"{hour.CompressorRuns * 100:0} % of it", $"runs, {hour.Starts} starts, {Show(hour.Made, Dimension.Volume)} of free air");
        if (hour.Starved)
            screen.Fact("stops", Show(hour.FirstWait ?? 0, Dimension.Time), "from the start: the air is gone and no compressor fills it");
        else if (hour.FirstWait is { } first)
            screen.Fact("waits", Show(hour.Waiting, Dimension.Time), $"for air in all, first after {Show(first, Dimension.Time)}");
        else
            screen.Fact("waits", "never", "the air keeps up");
        screen.WriteLine();
    }

    private static void Balances(SqueezeResult r, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("What went in and where it is");
        foreach (SqueezeBalance balance in r.Balances)
        {
            Dimension dimension = balance.Name is "oil" or "air" ? Dimension.Volume : Dimension.Energy;
            string parts = string.Join(", ", balance.Parts.Where(p => Math.Abs(p.Value) > 0.0005 * balance.Turnover).Select(p => $"{p.Name} {Readout.Text(p.Value, dimension, units)}"));
            string missing = balance.Error < 0.0001 ? "less than 0.01 % missing" : $"{balance.Error * 100:0.00} % missing";
            screen.Bullet("=", $"{balance.Name}: {Readout.Text(balance.In, dimension, units)}: {parts}; {missing}");
        }

        screen.WriteLine();
    }
}
