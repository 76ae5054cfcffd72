using System.Globalization;
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

    /// <summary>The frames whose joints are found this way: those that are solved by CalculiX too, and others made up at random.</summary>
    public static IReadOnlyList<(string Id, string Words, RigFrame Frame)> Studied { get; } =
    [
        .. Studies.All.Where(s => s.Joining == Joining.Whole && s.Frame is RigClosedFrame or RigOpenFrontFrame or RigTieRodFrame).Select(s => (s.Id, s.Words, s.Frame)),
        .. AnyFrame.All.Select(f => (f.Name, f.Name, f.Frame)),
    ];

    /// <summary>One of them.</summary>
    public static RigFrame Named(string id) => Studied.Single(s => s.Id == id).Frame;

    /// <summary>How near the tool says that the beams by rule come, as a share of what they show; null where it says that no rule is known.</summary>
    public static double? ByRule(string id) => FramePlan.Of(Rigs.With(Named(id))).Within;

    /// <summary>What was committed.</summary>
    public static IReadOnlyList<Row> Committed { get; } = [.. System.IO.File.Exists(File) ? System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(','))
        .Select(w => new Row(w[0], Number(w[1]), Number(w[2]), Number(w[3]), Number(w[4]))) : []];

    /// <summary>Solves one.</summary>
    public static Row Of(string id, JointBook book, double? cell = null)
    {
        Rig rig = Rigs.With(Named(id));
        SolidCheck solid = SolidCheck.Of(rig, cell, book: book);
        return new Row(id, solid.Centred.Opening, solid.Centred.GridError!.Value, solid.Beams.DaylightGrowth,
            solid.BeamsOnSprings?.DaylightGrowth ?? throw new InvalidOperationException($"{id}: {solid.SpringsMissing}"));
    }

    /// <summary>Solves again what is asked for and writes the file.</summary>
    /// <param name="whole">Frames that are solved again whole; those that are not there yet are too.</param>
    /// <param name="joints">Frames whose joints alone are solved again, on the full solid that is committed.</param>
    public static void Renew(Predicate<string> whole, Predicate<string> joints)
    {
        var book = new JointBook();
        Row[] before = [.. Committed];
        using var text = new StreamWriter(File) { NewLine = "\n", AutoFlush = true };
        text.WriteLine(Head);
        foreach ((string id, _, _) in Studied)
        {
            Row r = whole(id) || before.SingleOrDefault(b => b.Id == id) is not { } solved ? Of(id, book) : joints(id) ? OnSolid(solved, book) : solved;
            text.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{r.Id},{r.Solid:G6},{r.GridError:G3},{r.Rule:G6},{r.Local:G6}"));
        }
    }

    private static Row OnSolid(Row solved, JointBook book)
    {
        Rig rig = Rigs.With(Named(solved.Id));
        return solved with { Rule = FrameResponse.Of(FramePlan.Of(rig)).DaylightGrowth, Local = FrameResponse.Of(FramePlan.Of(rig with { Springs = book.Of(rig) })).DaylightGrowth };
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
