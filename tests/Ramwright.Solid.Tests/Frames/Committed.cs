using System.Globalization;
using System.Text;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>What CalculiX gave when docs/solids.csv was last written, read back.</summary>
public static class Committed
{
    private const string Head = "id,mesh,calculix,bricks,nodes,what,at m,value per N";
    private static readonly Lazy<string[][]> Rows = new(() => [.. System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(','))]);
    private static readonly Lazy<Dictionary<(string Id, string Mesh), Answer>> All = new(Read);
    // one that is solved by two versions at once is no answer
    private static readonly Lazy<Dictionary<(string Id, string Mesh), string>> Versions = new(() => Rows.Value.GroupBy(w => (w[0], w[1])).ToDictionary(g => g.Key, g => g.Select(w => w[2]).Distinct().Single()));

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids.csv");

    /// <summary>Version that solved a study; each has its own, as one may be solved again without the others.</summary>
    public static string Version(Study study, string mesh = "plain") => Versions.Value.TryGetValue((study.Id, mesh), out string? version) ? version : throw Missing(study, mesh);

    /// <summary>All versions that solved any of them.</summary>
    public static IEnumerable<string> AllVersions => Versions.Value.Values.Distinct();

    /// <summary>The answer for a study.</summary>
    public static Answer Of(Study study, string mesh = "plain") =>
        All.Value.TryGetValue((study.Id, mesh), out Answer? answer) ? answer : throw Missing(study, mesh);

    /// <summary>Whether there is one.</summary>
    public static bool Has(Study study, string mesh) => All.Value.ContainsKey((study.Id, mesh));

    /// <summary>Writes the file afresh.</summary>
    public static void Write(IEnumerable<(Study Study, string Mesh, Answer Answer, string Version)> answers) => System.IO.File.WriteAllText(File, Text(answers));

    /// <summary>The file's text.</summary>
    public static string Text(IEnumerable<(Study Study, string Mesh, Answer Answer, string Version)> answers)
    {
        var text = new StringBuilder(Head).Append('\n');
        foreach ((Study study, string mesh, Answer a, string version) in answers)
        {
            void Row(string what, double at, double value) => text.Append(string.Create(CultureInfo.InvariantCulture,
                $"{study.Id},{mesh},{version},{a.Mesh.Bricks},{a.Mesh.Nodes},{what},{at:G6},{value:G6}\n"));
            Row("opening", 0, a.Opening);
            Row("opening of sections", 0, a.Sections);
            Row("turn of dies", 0, a.Turn);
            Row("turn of sections", 0, a.SectionTurn);
            if (a.Roll > 0)
                Row("turn from front to back per N·m", 0, a.Roll);
            foreach (Stress s in a.Stresses)
                Row("stress: " + s.Where.Replace(',', ';'), s.At, s.Value);
        }

        return text.ToString();
    }

    private static InvalidOperationException Missing(Study study, string mesh) => new($"docs/solids.csv has no {study.Id} ({mesh}): renew it with RAMWRIGHT_SOLIDS={study.Id}");

    private static Dictionary<(string, string), Answer> Read()
    {
        var all = new Dictionary<(string, string), Answer>();
        foreach (IGrouping<(string, string), string[]> rows in Rows.Value.GroupBy(w => (w[0], w[1])))
        {
            double Of(string what) => Number(rows.Single(w => w[5] == what)[7]);
            string[] first = rows.First();
            all[rows.Key] = new Answer(Of("opening"), Of("opening of sections"), Of("turn of dies"),
                [.. rows.Where(w => w[5].StartsWith("stress: ", StringComparison.Ordinal)).Select(w => new Stress(w[5][8..].Replace(';', ','), Number(w[6]), Number(w[7])))])
            {
                Roll = rows.Any(w => w[5] == "turn from front to back per N·m") ? Of("turn from front to back per N·m") : 0,
                SectionTurn = Of("turn of sections"),
                Mesh = (int.Parse(first[3], CultureInfo.InvariantCulture), int.Parse(first[4], CultureInfo.InvariantCulture)),
            };
        }

        return all;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
