using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Files.Tests;

/// <summary>An everyday check on springs that are kept beside the file reads them and solves no solid: <c>bench -- springs</c> times it and fails above 5 ms of the processor.</summary>
[Collection(nameof(Alone))]
public class KeptSpringsTest
{
    /// <summary>A check takes 0.4 to 0.7 MB; the smallest joint as a solid ten times that.</summary>
    private const long MostBytes = 1_500_000;

    private const int Checks = 20;

    [Theory, InlineData("drainage-mill-puller"), InlineData("railing-shop")]
    public void AreReadAndNotSolvedAgain(string example)
    {
        string folder = Directory.CreateTempSubdirectory("ramwright-springs-").FullName, file = Path.Combine(folder, example + PressFile.Ending);
        try
        {
            File.Copy(Path.Combine(Repository.Folder("examples"), Path.GetFileName(file)), file);
            PressCheck byRule = Check();
            var book = new JointBook();
            RigSprings found = book.Of(byRule.Rig)!;
            Assert.Null(JointsFile.Write(JointsFile.PathOf(file), book));

            PressCheck onSprings = Check();
            RigSprings kept = onSprings.Rig.Springs!;
            Near.Relative(found.Upper.Beam, kept.Upper.Beam, 1e-3, "the joint's spring, kept to as many figures as are said");
            // what is kept is what the beams stand on: the ladder is another
            Assert.True(Math.Abs(onSprings.DaylightGrowth / byRule.DaylightGrowth - 1) > 0.01, $"{onSprings.DaylightGrowth} and {byRule.DaylightGrowth}");

            long before = GC.GetAllocatedBytesForCurrentThread();
            Check();
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, MostBytes);
            var time = new CpuTime();
            for (int i = 0; i < Checks; i++)
                Check();
            // five times what an optimised build may take
            time.MustBeBelow(Checks * 0.025);
        }
        finally
        {
            Directory.Delete(folder, true);
        }

        PressCheck Check() => PressCheck.Of(PressOnDisk.Open(file).Rig!);
    }
}
