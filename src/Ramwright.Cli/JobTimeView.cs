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
        screen.Heading("In time", " pump, air, oil, frame and work together, " + (time.Heats is null ? "one stroke" : "the first squeeze"));
        screen.Loud(SqueezeWords.Of(r, units));
        screen.WriteLine();
        JobView.Facts(JobFacts.InTime(r, units), screen);
        Against(r, units, screen);
        if (time.Heats is { } heats)
            Heats(heats, units, screen);
        if (time.Hour is { } hour)
            Hour(hour, time.Job, units, screen);
        Balances(r, units, screen);
        foreach (Ramwright.Workings.Remark flag in time.Flags)
            screen.Bullet("?", flag.Text(units));
        if (time.Flags.Count > 0)
            screen.WriteLine();
    }

    private static void Against(SqueezeResult r, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Force against time", r.AtEnd is null ? "" : " of the first squeeze");
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
        foreach (SaidFact fact in JobFacts.Heats(heats, units))
            screen.Fact(fact.What, fact.Value, fact.Remark);
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

    private static void Hour(HourOfWork hour, RigJob job, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("An hour of it on the receiver");
        JobView.Facts(JobFacts.Hour(hour, job, units), screen);
    }

    private static void Balances(SqueezeResult r, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("What went in and where it is");
        foreach (string line in JobFacts.Balances(r, units))
            screen.Bullet("=", line);
        screen.WriteLine();
    }
}
