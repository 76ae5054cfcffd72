using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>What stands in a job's way is marked, and speaks of the same force as the answer.</summary>
public sealed class JobLimitsSaidTest
{
    private static PressCheck Press(string example, string old = "", string now = "")
    {
        string path = Path.Combine(Repository.Folder("examples"), example + PressFile.Ending), text = File.ReadAllText(path);
        if (old.Length > 0)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, now, StringComparison.Ordinal);
        }

        var press = CheckedPress.Of(PressOnDisk.Read(text, path, example));
        Assert.Empty(press.Faults);
        return press.Check!;
    }

    [Theory]
    [InlineData("railing-shop")]
    [InlineData("wherry-yard")]
    [InlineData("salvage")]
    [InlineData("drainage-mill-puller")]
    public void TheWorstLimitIsAsBadAsTheVerdict(string example) =>
        Assert.All(JobAnswer.All(Press(example)), answer => Assert.Equal(answer.Verdict, answer.Limits.Max(l => l.Verdict)));

    [Fact]
    public void ThereIsOneForceAndTheGaugeBelongsToIt()
    {
        PressCheck press = Press("railing-shop");
        Assert.Contains(press.Rig.Jobs, j => j is RigHotSqueeze);
        foreach (JobAnswer answer in JobAnswer.All(press).Where(a => a.AsItCools is not null))
        {
            SaidFact[] facts = [.. JobFacts.Forces(answer, UnitSystem.Metric)];
            string force = Readout.Text(answer.Likely, Dimension.Force);
            Assert.StartsWith(force, facts.First(f => f.What == "force").Value, StringComparison.Ordinal);
            SaidFact gauge = facts.First(f => f.What == "gauge shows");
            if (answer.Likely <= press.Power.TrueForce)
            {
                Assert.Equal(Readout.Text(answer.Likely / press.Power.TrueForce * press.Power.TruePressure, Dimension.Pressure), gauge.Value);
                Assert.Contains(force, gauge.Remark, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void TheHeightOfToolsThatIsAssumedCanBeWrittenInItsPlace()
    {
        PressCheck open = Press("wherry-yard");
        RigJob job = open.Rig.Jobs.First(j => j is RigVBend && j.Tools is null);
        JobAnswer answer = JobAnswer.Of(open, job);
        var tools = Assert.IsType<AssumedMeasure>(Assert.Single(answer.Assumed, a => a.What == job.Path + ".tools"));
        string said = FormattableString.Invariant($"{tools.Si * 1e3:0.######} mm");
        PressCheck told = Press("wherry-yard", $"name: {job.Name}", $"name: {job.Name}\n    tools: {said}");
        JobAnswer same = JobAnswer.Of(told, told.Rig.Jobs.First(j => j.Name == job.Name));
        Assert.DoesNotContain(same.Assumed, a => a.What.EndsWith(".tools", StringComparison.Ordinal));
        Assert.Equal(answer.Time!.First.PeakForce, same.Time!.First.PeakForce, 1);
        Assert.DoesNotContain("tools of", answer.Limits.First(l => l.Id == "daylight").Why.Text(), StringComparison.Ordinal);
        Assert.Contains("work and tools of", same.Limits.First(l => l.Id == "daylight").Why.Text(), StringComparison.Ordinal);
    }
}
