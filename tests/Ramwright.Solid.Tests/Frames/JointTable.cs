using System.Globalization;
using System.Text;
using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Beams on springs from local solids against the full solid, both as the engine draws them: docs/solids-joints.csv.</summary>
public static class JointTable
{
    private const string Head = "id,full solid per N,grid error,beams by rule per N,beams on local springs per N";

    /// <summary>One frame, per newton at the ram.</summary>
    public sealed record Row(string Id, double Solid, double GridError, double Rule, double Local);

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids-joints.csv");

    /// <summary>The frames whose joints are found this way.</summary>
    public static IReadOnlyList<Study> Studied { get; } = [.. Studies.All.Where(s => s.Joining == Joining.Whole && s.Frame is (RigClosedFrame or RigOpenFrontFrame))];

    /// <summary>What was committed.</summary>
    public static IReadOnlyList<Row> Committed { get; } = [.. System.IO.File.Exists(File) ? System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(','))
        .Select(w => new Row(w[0], Number(w[1]), Number(w[2]), Number(w[3]), Number(w[4]))) : []];

    /// <summary>Solves one.</summary>
    public static Row Of(Study study, JointBook book, double? cell = null)
    {
        Rig rig = Rigs.With(study.Frame);
        SolidCheck solid = SolidCheck.Of(rig, cell, book: book);
        return new Row(study.Id, solid.Centred.Opening, solid.Centred.GridError!.Value, solid.Beams.DaylightGrowth,
            solid.BeamsOnSprings?.DaylightGrowth ?? throw new InvalidOperationException($"{study.Id}: {solid.SpringsMissing}"));
    }

    /// <summary>Solves all again and writes the file.</summary>
    public static void Renew()
    {
        var book = new JointBook();
        var text = new StringBuilder(Head).Append('\n');
        foreach (Row r in Studied.Select(s => Of(s, book)))
            text.Append(CultureInfo.InvariantCulture, $"{r.Id},{r.Solid:G6},{r.GridError:G3},{r.Rule:G6},{r.Local:G6}\n");
        System.IO.File.WriteAllText(File, text.ToString());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
