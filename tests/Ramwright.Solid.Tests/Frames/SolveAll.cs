using System.Globalization;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

public class SolveAll
{
    [Fact]
    public void Now()
    {
        string? which = Environment.GetEnvironmentVariable("RAMWRIGHT_SOLIDS");
        if (which is null)
            return;
        foreach (Study study in Studies.All.Where(s => which == "all" || which.Split(',').Contains(s.Id)))
        {
            string line;
            try
            {
                Answer solid = Answer.OfSolid(study);
                line = string.Join(';', [study.Id, .. new[] { solid.Opening, solid.Sections, solid.Turn }.Select(d => d.ToString("R", CultureInfo.InvariantCulture)),
                    solid.Mesh.Bricks.ToString(), solid.Mesh.Nodes.ToString(), solid.Seconds.ToString("F1", CultureInfo.InvariantCulture),
                    .. solid.Stresses.SelectMany(s => new[] { s.Where, s.At.ToString("R", CultureInfo.InvariantCulture), s.Value.ToString("R", CultureInfo.InvariantCulture) })]);
            }
            catch (Exception e)
            {
                line = $"{study.Id};{e.Message}";
            }
            File.AppendAllText("/tmp/solids.csv", line + "\n");
        }
    }

    [Fact]
    public void Compare()
    {
        if (Environment.GetEnvironmentVariable("RAMWRIGHT_BEAMS") is null)
            return;
        var lines = new List<string>();
        foreach (string[] w in File.ReadLines("/tmp/solids.csv").Select(l => l.Split(';')).Where(w => w.Length > 7))
        {
            double P(int i) => double.Parse(w[i], CultureInfo.InvariantCulture);
            Study study = Studies.All.Single(s => s.Id == w[0]);
            var stresses = new List<Stress>();
            for (int i = 7; i + 2 < w.Length; i += 3)
                stresses.Add(new Stress(w[i], P(i + 1), P(i + 2)));
            try
            {
                Answer beam = Answer.OfBeams(study, stresses);
                string D(double b, double s) => ((b / s - 1) * 100).ToString("+0.0;-0.0", CultureInfo.InvariantCulture);
                lines.Add($"{study.Id} {study.Words,-52} beam {beam.Opening * 1e9:F3}/{beam.Sections * 1e9:F3} solid {P(1) * 1e9:F3}/{P(2) * 1e9:F3} | {D(beam.Opening, P(1)),6} sect {D(beam.Sections, P(2)),6} turn {D(beam.Turn, P(3))}% | "
                    + string.Join(" ", stresses.Zip(beam.Stresses, (s, b) => $"{s.Where.Split(',')[0]} {b.Value:F1}/{s.Value:F1} {D(b.Value, s.Value)}%")));
            }
            catch (Exception e)
            {
                lines.Add($"{study.Id} {e}");
            }
        }
        File.WriteAllLines("/tmp/solids.log", lines);
    }
}
