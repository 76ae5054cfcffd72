using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What this press bends in its owner's V-dies: plate down, dies across.</summary>
internal static class BendChartView
{
    private const int MostDies = 5;

    public static void Show(JobCheck check, UnitSystem units, IAnsiConsole screen)
    {
        var job = (RigVBend)check.Job;
        screen.Heading("Bending chart", $" {job.Steel.Name} on this press, good for {Force.Text(check.Available, units)}");
        Unit length = Readout.UnitFor(Dimension.Length, units), perLength = Readout.UnitFor(Dimension.ForcePerLength, units);
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        table.AddColumn(JobView.Column($"plate, {length.Symbol}", right: true));
        bool own = job.Dies.Count > 0;
        foreach (RigVeeDie die in job.Dies.Take(MostDies))
            table.AddColumn(JobView.Column($"V {Readout.Text(die.Opening, Dimension.Length, units)}", right: true));
        if (!own)
            table.AddColumn(JobView.Column("in the V of the rule", right: true));
        foreach (var row in check.Chart.GroupBy(p => p.Thickness))
        {
            var cells = new List<string> { Readout.Number(length.FromSi(row.Key)) };
            foreach (BendChartPlace place in row.Take(MostDies))
            {
                string text = !place.Suits ? "-"
                    : $"{Readout.Number(perLength.FromSi(place.PerMetre), 2)} / {Readout.Number(length.FromSi(place.Longest), 2)}";
                cells.Add(own ? text : $"{Readout.Text(place.Opening, Dimension.Length, units)}: {text}");
            }

            table.AddRow([.. cells.Select(c => new Text(c))]);
        }

        screen.Write(table);
        screen.Paragraph($"Likely force, {perLength.Symbol} of bend, and the longest bend, {length.Symbol}, with the steel at its strongest. - : the V does not suit the plate.");
        screen.WriteLine();
    }
}
