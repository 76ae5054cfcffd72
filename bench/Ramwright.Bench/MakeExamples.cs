using System.Diagnostics;
using System.Globalization;
using Ramwright.Fabrication.Nesting;
using Ramwright.Files;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Bench;

/// <summary>Every file of every example: cut lists, cut files, weld plan, costs, drawings and the dossier.</summary>
internal static class MakeExamples
{
    /// <summary>Makes each example once to warm up and then five times over.</summary>
    public static int Run()
    {
        foreach (string file in Directory.GetFiles(Repository.Find("examples"), "*" + PressFile.Ending).Order(StringComparer.Ordinal))
        {
            PressOnDisk press = PressOnDisk.Open(file);
            var check = PressCheck.Of(press.Rig!);
            double[] seconds = [.. Enumerable.Range(0, 6).Select(_ => Seconds(press, check)).Skip(1).Order()];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileName(file),-32} median {seconds[2]:0.00} s, quickest {seconds[0]:0.00} s"));
        }

        return 0;
    }

    private static double Seconds(PressOnDisk press, PressCheck check)
    {
        long start = Stopwatch.GetTimestamp();
        Makers.Files(new MakeOf(press, check, UnitSystem.Metric, new NestEffort()));
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
