using Ramwright.Quantities;
using Ramwright.Squeeze;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>A sweep on a terminal: the greatest that is done for each value across, and a map of what stops the rest.</summary>
internal static class SweepView
{
    private const int MostColumns = 60, MostRows = 24;

    public static void Show(SqueezeSweep sweep, string press, UnitSystem units, IAnsiConsole screen)
    {
        screen.Loud(SqueezeWords.Title(sweep));
        screen.Paragraph($"{sweep.Job.Name} on {press}");
        screen.Paragraph($"{sweep.Points.Count} squeezes followed in time, steel: {sweep.Job.Steel.Name}.");
        screen.WriteLine();
        IReadOnlyList<(double Least, double Greatest)?> done = sweep.Done();
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        table.AddColumn(JobView.Column(SqueezeWords.Name(sweep.Across.Of), right: true));
        table.AddColumn(JobView.Column(SqueezeWords.Name(sweep.Up.Of) + " up to", right: true));
        table.AddColumn(JobView.Column("from", right: true));
        table.AddColumn(JobView.Column("", right: false));
        double most = sweep.Up.To;
        foreach (int i in Picked(sweep.Across.Count, 12))
        {
            string up = "none", from = "";
            if (done[i] is { } band)
            {
                up = Readout.Text(band.Greatest, sweep.Up.Dimension, units) + (band.Greatest >= most * (1 - 1e-9) ? " or more" : "");
                from = Readout.Text(band.Least, sweep.Up.Dimension, units) + (band.Least <= sweep.Up.From * (1 + 1e-9) ? " or less" : "");
            }

            table.AddRow(new Text(Readout.Text(sweep.Across.At(i), sweep.Across.Dimension, units, 4)), new Text(up), new Text(from),
                new Text(new string('█', (int)Math.Round((done[i]?.Greatest ?? 0) / most * 24))));
        }

        screen.Write(table);
        screen.WriteLine();
        Map(sweep, units, screen);
        foreach (string note in SqueezeWords.Notes(sweep, units))
            screen.Bullet("!", note);
    }

    private static void Map(SqueezeSweep sweep, UnitSystem units, IAnsiConsole screen)
    {
        screen.Paragraph("█ done   F wants more force   C goes cold first   . colder than it may be forged   - other");
        int[] columns = [.. Picked(sweep.Across.Count, MostColumns)];
        foreach (int k in Picked(sweep.Up.Count, MostRows).Reverse())
        {
            string row = new([.. columns.Select(i => Letter(sweep.At(i, k)))]);
            screen.WriteLine($"{Readout.Text(sweep.Up.At(k), sweep.Up.Dimension, units),10} {row}");
        }

        string left = Readout.Text(sweep.Across.From, sweep.Across.Dimension, units, 4), right = Readout.Text(sweep.Across.To, sweep.Across.Dimension, units, 4);
        screen.WriteLine($"{"",10} {left}{right.PadLeft(Math.Max(right.Length + 1, columns.Length - left.Length))}");
        screen.WriteLine();
    }

    private static char Letter(SweepPoint point) => point switch
    {
        { IsDone: true } => '█',
        { Ends: null } => '.',
        { StoppedBy: StoppedBy.Force } => 'F',
        { StoppedBy: StoppedBy.Cold } => 'C',
        _ => '-',
    };

    private static IEnumerable<int> Picked(int count, int most)
    {
        int n = Math.Min(count, most);
        for (int i = 0; i < n; i++)
            yield return n == 1 ? 0 : (int)Math.Round(i * (count - 1.0) / (n - 1));
    }
}
