using Ramwright.Quantities;
using Ramwright.Squeeze;
using Ramwright.Web.Forms;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Tests;

/// <summary>A job that is added on the bench is whole at once.</summary>
public sealed class NewJobTest : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string, UnitSystem> Kinds()
    {
        var kinds = new TheoryData<string, UnitSystem>();
        foreach ((string word, _) in NewRecord.JobKinds)
        {
            kinds.Add(word, UnitSystem.Metric);
            kinds.Add(word, UnitSystem.Imperial);
        }

        return kinds;
    }

    [Theory, MemberData(nameof(Kinds))]
    public void ANewJobOfEveryKindReadsAndIsAnswered(string kind, UnitSystem tape)
    {
        int answered = 0;
        foreach (string example in new[] { "wherry-yard", "railing-shop", "drainage-mill-puller" })
        {
            File.WriteAllText(_folder.Path(example), Example.Text(example));
            var press = new OpenPress(_folder.Path(example));
            int before = press.Now.Check!.Rig.Jobs.Count;

            PressNow now = press.Set(NewRecord.Job(kind, before, tape));

            // an example may be too big for this press, which is then rightly said
            string[] tooBig = [$"jobs.{before}.span", $"jobs.{before}.length", $"jobs.{before}.height"];
            Assert.Empty(now.Read.Faults.Where(f => !tooBig.Contains(f.Path)).Select(f => f.Line + " " + f.Path + ": " + f.Found + "; " + f.Wanted));
            if (now.Read.Faults.Count > 0)
                continue;
            Assert.Equal(before + 1, now.Check!.Rig.Jobs.Count);
            Assert.Equal(kind, now.Check.Rig.Jobs[^1].Kind);
            Assert.NotEmpty(JobAnswer.Of(now.Check, now.Check.Rig.Jobs[^1]).Saying());
            Assert.Equal(Example.Text(example), press.Undo().Text);
            answered++;
        }

        Assert.True(answered > 0, "no press takes the example");
    }
}
