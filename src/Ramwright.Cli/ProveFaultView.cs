using Ramwright.FaultFinding;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Fault finding on a terminal: suspects, the next test, and safety before a line is opened.</summary>
internal static class ProveFaultView
{
    public static void Show(FaultSearch search, string file, string signs, IAnsiConsole screen)
    {
        screen.Heading("Fault finding");
        foreach ((Sign sign, bool yes) in search.Seen)
            screen.Bullet("-", $"{(yes ? "yes" : "no")}: {sign.Question} ({sign.Id})");
        screen.WriteLine();
        screen.Heading("Suspects", " more than one may be there");
        foreach (Suspect s in search.Suspects.Where(s => s.Chance >= 0.03).Take(7))
        {
            screen.Fact(Readout.Text(s.Chance, Dimension.Ratio, digits: 2), s.Cause.Id, $"{s.Cause.Says}{(s.Cause.Opens ? " [opens a line]" : "")}");
            screen.Paragraph(s.Cause.Do + (s.Because.Count > 0 ? $". Because of: {string.Join(", ", s.Because.Select(b => b.Id))}" : ""), margin: 38);
        }

        screen.WriteLine();
        if (search.Tests.Count > 0)
        {
            NextTest next = search.Tests[0];
            screen.Loud($"Find out next: {next.Sign.Question}");
            screen.Paragraph($"{next.Sign.Id}: about {Readout.Number(next.Sign.Minutes)} min; yes in {Readout.Text(next.Yes, Dimension.Ratio, digits: 2)} of such cases.{(next.Sign.Opens ? " It opens a line: first the steps below." : "")}", margin: 2);
            screen.Line($"  ramwright prove {file} --fault \"{signs}, {next.Sign.Id}=yes\"  (or =no)");
            screen.Paragraph("After that: " + string.Join(", ", search.Tests.Skip(1).Take(4).Select(t => t.Sign.Id)) + ".", margin: 2);
            screen.WriteLine();
        }

        screen.Heading("Before any line is opened");
        int number = 1;
        foreach (string step in search.BeforeOpening)
            screen.Bullet($"{number++}.", step);
        screen.WriteLine();
        screen.Paragraph("Chances are common practice, from a table that you may change (NAME.fault-causes.csv beside the press file). They weigh; they do not know.");
    }

    public static void List(PressCheck check, FaultTables tables, IAnsiConsole screen)
    {
        FaultNetwork network = FaultNetwork.Of(check.Rig, tables);
        screen.Heading("What do you see?", " " + check.Rig.Name);
        foreach (Sign sign in network.Signs.Where(s => s.IsSymptom))
            screen.Fact(sign.Id, "", sign.Question);
    }
}
