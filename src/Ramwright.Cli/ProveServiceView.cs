using Ramwright.Files.Readings;
using Ramwright.Proving;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>How a press stands in service, on a terminal.</summary>
internal static class ProveServiceView
{
    public static void Show(Proof proof, IAnsiConsole screen)
    {
        ServiceState service = proof.Service;
        screen.Heading("Service", " " + proof.Check.Rig.Name);
        screen.WriteLine();
        screen.Fact("squeezes", Readout.Number(service.Squeezes, 6), service.ADay > 0 ? $"{Readout.Number(service.ADay, 2)} a day" : "no rate can be told yet");
        foreach (LifeUsed used in service.Lives.Where(l => l.Used > 0).Take(8))
        {
            screen.Fact(Readout.Text(used.Used, Dimension.Ratio, digits: 2), used.Life.Spot,
                used.BeyondCurve > 0 ? $"{Readout.Number(used.BeyondCurve, 6)} squeezes beyond what may be judged: counted as all" : used.Life.Detail);
        }

        screen.WriteLine();
        screen.Heading("Due");
        foreach (ServiceDue due in service.Due)
        {
            screen.Fact(due.What, due.Due is { } day ? $"{day:yyyy-MM-dd}{(due.IsDue(proof.Today) ? " NOW" : "")}" : "not known",
                $"{(due.Last is { } last ? $"last {last:yyyy-MM-dd}; " : "")}{due.Why}");
        }

        screen.Paragraph("Look first at: " + string.Join("; ", service.LookAt.Select(l => l.Life.Spot)) + ".", margin: 2);
        screen.Paragraph($"Intervals: {ServiceState.Intervals}.", margin: 2);
        screen.WriteLine();
        IReadOnlyList<SealLine> seals = SealLine.Of(proof.Book);
        if (seals.Count == 0)
            return;
        screen.Heading("Seals", " O-rings by ISO 3601-1, sizes from memory: check them against the one that comes out");
        foreach (SealLine seal in seals)
            screen.Fact(seal.Where, seal.Choice is { } c ? $"{c.Size.Code}: {Size(c.Size, proof.Units)}" : "none suits", seal.Choice is { } choice
                ? $"squeezed {Readout.Text(choice.Squeeze, Dimension.Ratio, digits: 2)}{(choice.Fill is { } f ? $", fills {Readout.Text(f, Dimension.Ratio, digits: 2)}" : "")}{string.Concat(choice.Remarks.Select(r => "; " + r))}"
                : "measure groove and bore again, or have a seal made");
    }

    private static string Size(ORingSize size, UnitSystem units) => $"{Readout.Text(size.Inside, Dimension.Length, units, 5)} x {Readout.Text(size.Section, Dimension.Length, units)}";
}
