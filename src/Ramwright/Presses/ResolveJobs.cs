using System.Reflection;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles the jobs of a press; each keeps what was assumed for it to itself.</summary>
internal static class ResolveJobs
{
    /// <summary>The word of a job's kind.</summary>
    public static string KindOf(Job job) => job.GetType().GetCustomAttribute<KindAttribute>()?.Word ?? "job";

    public static IReadOnlyList<RigJob> Of(Press press, RigCylinder cylinder, RigFrame frame, Shelf shelf, Assumptions faults)
    {
        if (press.Jobs is not { } jobs)
            return [];
        var wrong = new List<Fault>();
        JobRules.Check(press, shelf, wrong);
        foreach (Fault fault in wrong)
            faults.Fault(fault.Path, fault.Found, fault.Wanted);
        if (wrong.Count > 0)
            return [];
        var settled = new List<RigJob>();
        for (int i = 0; i < jobs.Count; i++)
        {
            string path = $"jobs.{i}", name = JobRules.NameOf(jobs[i], i);
            var assume = new Assumptions();
            settled.Add(jobs[i] switch
            {
                HotSqueeze hot => ResolveHotSqueeze.Of(hot, Section(hot.Bar, $"{path}.bar", shelf), path, name, frame, assume),
                ClosedDie die => ResolveCrushing.Of(die, path, name, assume),
                VBend bend => ResolveBending.Of(bend, path, name, shelf, assume),
                BarBend bend => ResolveBending.Of(bend, path, name, shelf, assume),
                Straighten straighten => ResolveBending.Of(straighten, path, name, shelf, assume),
                Punch punch => ResolveCutting.Of(punch, path, name, shelf, assume),
                Shear shear => ResolveCutting.Of(shear, path, name, shelf, assume),
                PressFit fit => ResolveFits.Of(fit, path, name, shelf, assume),
                Pull pull => ResolveFits.Of(pull, path, name, cylinder, assume),
                Crush crush => ResolveCrushing.Of(crush, path, name, shelf, assume),
                CrushTimber timber => ResolveCrushing.Of(timber, path, name, assume),
                SplitTimber log => ResolveCrushing.Of(log, path, name, assume),
                CrushConcrete concrete => ResolveCrushing.Of(concrete, path, name, assume),
                _ => throw new ArgumentException($"'{path}' is a kind of job that cannot be settled"),
            });
        }

        return settled;
    }

    /// <summary>A section from stock or by its sizes.</summary>
    internal static Shape Section(string? said, string path, Shelf shelf) =>
        SectionText.TryRead(Resolver.Needed(said, path), shelf, out Shape? shape, out _)
            ? shape
            : throw new ArgumentException($"'{path}' is no section; read the press with its faults first");

    /// <summary>The steel of a piece that is worked cold.</summary>
    internal static WorkSteel Steel(string? said, double thickness, string path, Shelf shelf, Assumptions assume)
    {
        string name = assume.Or(said, path, "S275", "ordinary structural steel");
        if (!shelf.TrySteel(name, out Steel? steel))
            throw new ArgumentException($"'{path}' names a steel that is not in stock: {name}");
        return new WorkSteel(steel.Name, steel.Fy(thickness), steel.Fu(thickness), steel.Source.Standing != Workings.Standing.Practice);
    }
}
