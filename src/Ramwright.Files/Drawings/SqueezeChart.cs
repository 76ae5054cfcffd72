using Ramwright.Quantities;
using Ramwright.Squeeze;

namespace Ramwright.Files.Drawings;

/// <summary>A squeeze as curves on A4: force against travel, force and heat against time.</summary>
public static class SqueezeChart
{
    private const double Wide = 210, High = 297;
    private const string Shaded = "#dddddd";

    /// <summary>Draws a job in time.</summary>
    /// <param name="time">The job.</param>
    /// <param name="press">The press's name.</param>
    /// <param name="units">Which units.</param>
    public static Sheet Of(JobInTime time, string press, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(time);
        SqueezeResult r = time.First;
        Unit force = Readout.UnitFor(Dimension.Force, units), length = Readout.UnitFor(Dimension.Length, units), heat = Readout.UnitFor(Dimension.Temperature, units);
        string title = $"{time.Job.Name}, {press}";
        List<Mark> marks = [new Lettering("", title, 20, High - 20, 4, Bold: true)];
        Wrapped(marks, SqueezeWords.Of(r, units), High - 28);
        SqueezePoint[] points = [.. r.Points];
        SqueezePoint[] loaded = [.. points.Where(p => p.Phase is SqueezePhase.Pressing or SqueezePhase.Dwell or SqueezePhase.LetOff)];
        (double, double) forces = Plot.Round(0, force.FromSi(Math.Max(r.PeakForce, 1)));
        var travel = new Plot("force-travel", 35, 190, 150, 65, $"travel from the touch, {length.Symbol}", $"force, {force.Symbol}")
        {
            XRange = Plot.Round(0, length.FromSi(Math.Max(r.Travel, 1e-6))),
            YRange = forces,
        };
        travel.Frame(marks);
        travel.Draw(marks, new PlotLine("", [.. loaded.Select(p => (length.FromSi(Math.Max(0, p.Travel)), force.FromSi(p.Force)))]));
        (double, double) seconds = Plot.Round(0, r.Time);
        var against = new Plot("force-time", 35, 105, 150, 65, "time, s", $"force, {force.Symbol}") { XRange = seconds, YRange = forces };
        against.Frame(marks);
        against.Draw(marks, new PlotLine("", [.. points.Select(p => (p.Time, force.FromSi(p.Force)))]));
        if (r.AtEnd is not null)
        {
            double low = points.Min(p => p.Coldest ?? 0), top = points.Max(p => p.Hottest ?? 0);
            var heats = new Plot("heat-time", 35, 22, 150, 65, "time, s", $"heat, {heat.Symbol}")
            {
                XRange = seconds,
                YRange = Plot.Round(heat.FromSi(low), heat.FromSi(top)),
            };
            heats.Frame(marks);
            heats.Draw(marks, new PlotLine("skin", [.. points.Select(p => (p.Time, heat.FromSi(p.Coldest ?? 0)))], Pen.Hidden));
            heats.Draw(marks, new PlotLine("mean", [.. points.Select(p => (p.Time, heat.FromSi(p.Mean ?? 0)))]));
            heats.Draw(marks, new PlotLine("inside", [.. points.Select(p => (p.Time, heat.FromSi(p.Hottest ?? 0)))], Pen.Centre));
        }

        return new Sheet(title, Wide, High, marks);
    }

    /// <summary>Draws a sweep as a chart to pin up.</summary>
    /// <param name="sweep">The sweep.</param>
    /// <param name="press">The press's name.</param>
    /// <param name="units">Which units.</param>
    public static Sheet Of(SqueezeSweep sweep, string press, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        Unit across = Readout.UnitFor(sweep.Across.Dimension, units), up = Readout.UnitFor(sweep.Up.Dimension, units);
        string title = SqueezeWords.Title(sweep);
        List<Mark> marks =
        [
            new Lettering("", title, 20, High - 20, 4, Bold: true),
            new Lettering("", $"{press}: {sweep.Job.Name}, steel {sweep.Job.Steel.Name}", 20, High - 28),
        ];
        var plot = new Plot("sweep", 35, 90, 150, 165, $"{SqueezeWords.Name(sweep.Across.Of)}, {across.Symbol}", $"{SqueezeWords.Name(sweep.Up.Of)}, {up.Symbol}")
        {
            XRange = Plot.Round(across.FromSi(sweep.Across.From), across.FromSi(sweep.Across.To)),
            YRange = Plot.Round(0, up.FromSi(sweep.Up.To)),
        };
        IReadOnlyList<(double Least, double Greatest)?> done = sweep.Done();
        List<(double X, double Y)> top = [], bottom = [];
        for (int i = 0; i < done.Count; i++)
        {
            if (done[i] is not { } band)
                continue;
            top.Add((across.FromSi(sweep.Across.At(i)), up.FromSi(band.Greatest)));
            bottom.Add((across.FromSi(sweep.Across.At(i)), up.FromSi(band.Least)));
        }

        plot.Fill(marks, top, bottom, Shaded);
        plot.Frame(marks);
        plot.Draw(marks, new PlotLine("", top, Pen.Frame));
        plot.Draw(marks, new PlotLine("", bottom, Pen.Hidden));
        Name(marks, plot, sweep, across, up, p => p.IsDone, "DONE");
        Name(marks, plot, sweep, across, up, p => p.Ends is not null && p.StoppedBy == StoppedBy.Cold, "goes cold first");
        Name(marks, plot, sweep, across, up, p => p.StoppedBy == StoppedBy.Force, "wants more force");
        Wrapped(marks, $"Heat out of the fire; {Readout.Text(sweep.Job.Transfer, Dimension.Time, units)} to the touch; dies {Readout.Text(sweep.Job.DieHeat, Dimension.Temperature, units)} warm and "
            + $"{Readout.Text(sweep.Job.DieWidth, Dimension.Length, units)} wide unless swept. Reckoned, not tried: the flow stress is known to 20 %, the chill of the dies to a third. "
            + "Stop when the steel is too cold; never stand where the work can fly.", 66);
        return new Sheet(title, Wide, High, marks);
    }

    /// <summary>Writes a word into the middle of a region, where there is one.</summary>
    private static void Name(List<Mark> marks, Plot plot, SqueezeSweep sweep, Unit across, Unit up, Func<SweepPoint, bool> belongs, string word)
    {
        int n = 0, best = 0;
        double most = -1;
        for (int i = 0; i < sweep.Points.Count; i++)
        {
            if (!belongs(sweep.Points[i]))
                continue;
            n++;
            double far = Clearance(sweep, plot, i, belongs);
            if (far > most)
                (most, best) = (far, i);
        }

        if (n < 0.02 * sweep.Points.Count)
            return;
        double half = word.Length * 0.4 * 3.5;
        marks.Add(new Lettering(plot.Part, word, Math.Clamp(plot.AtX(across.FromSi(sweep.Across.At(best % sweep.Across.Count))), plot.X + half, plot.X + plot.Width - half),
            plot.AtY(up.FromSi(sweep.Up.At(best / sweep.Across.Count))), 3.5, Anchor.Middle, Bold: true));
    }

    /// <summary>How far a point stands from all that belongs elsewhere and from the sides, mm of paper; a word is some four times as wide as high.</summary>
    private static double Clearance(SqueezeSweep sweep, Plot plot, int of, Func<SweepPoint, bool> belongs)
    {
        double dx = plot.Width / (sweep.Across.Count - 1) / 4, dy = plot.Height / (sweep.Up.Count - 1);
        (int i, int k) = (of % sweep.Across.Count, of / sweep.Across.Count);
        double least = Math.Min(Math.Min(i, sweep.Across.Count - 1 - i) * dx + 4, Math.Min(k, sweep.Up.Count - 1 - k) * dy + 4);
        for (int m = 0; m < sweep.Points.Count; m++)
        {
            if (!belongs(sweep.Points[m]))
                least = Math.Min(least, Math.Max(Math.Abs(m % sweep.Across.Count - i) * dx, Math.Abs(m / sweep.Across.Count - k) * dy));
        }

        return least;
    }

    private static void Wrapped(List<Mark> marks, string text, double y)
    {
        const int most = 95;
        var line = new System.Text.StringBuilder();
        foreach (string word in text.Split(' '))
        {
            if (line.Length + word.Length > most)
            {
                marks.Add(new Lettering("", line.ToString(), 20, y, 2.2));
                y -= 4.5;
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        marks.Add(new Lettering("", line.ToString(), 20, y, 2.2));
    }
}
