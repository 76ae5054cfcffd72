using System.Reflection;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles the jobs of a press; each keeps what was assumed for it to itself.</summary>
internal static class ResolveJobs
{
    /// <summary>The word of a job's kind.</summary>
    public static string KindOf(Job job) => job.GetType().GetCustomAttribute<KindAttribute>()?.Word ?? "job";

    public static IReadOnlyList<RigJob> Of(Press press, RigFrame frame, Shelf shelf, Assumptions faults)
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
                HotSqueeze hot => ResolveHotSqueeze.Of(hot, Bar(hot.Bar, $"{path}.bar", shelf), path, name, frame, assume),
                _ => throw new ArgumentException($"'{path}' is a kind of job that cannot be settled"),
            });
        }

        return settled;
    }

    private static Shape Bar(string? said, string path, Shelf shelf) =>
        SectionText.TryRead(Resolver.Needed(said, path), shelf, out Shape? shape, out _) && shape is Flat or Round
            ? shape!
            : throw new ArgumentException($"'{path}' is no bar; read the press with its faults first");
}
