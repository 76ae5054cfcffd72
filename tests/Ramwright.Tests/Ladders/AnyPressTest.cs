using CsCheck;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Squeeze;
using Ramwright.Stock;

namespace Ramwright.Tests.Ladders;

/// <summary>
/// Whole presses made up from the records' own bounds, whatever records and keys there are: each is refused in words, or checked to
/// numbers that are finite and not below zero.
/// </summary>
public class AnyPressTest
{
    private static readonly Shelf Shelf = StockTables.Built;

    [Fact]
    public void NoValidPressGivesNaNInfinityOrANegativeForce()
    {
        int checkedInFull = 0;
        var refusals = new System.Collections.Concurrent.ConcurrentDictionary<string, int>();
        void Refused(string why) => refusals.AddOrUpdate(why, 1, (_, n) => n + 1);
        Gen.UInt.Sample(seed =>
        {
            Press press = new MadeUpPress(seed, Shelf).ThatCouldBe();
            if (PressRules.Of(press, Shelf).FirstOrDefault() is { } clash)
            {
                Refused(clash.Found.Text());
                return;
            }

            PressCheck check;
            try
            {
                check = PressCheck.Of(Resolver.Resolve(press, Shelf));
            }
            catch (PressFaultsException refused)
            {
                Assert.All(refused.Faults, f => Assert.True(f.Found.Text().Length > 0 && f.Wanted.Text().Length > 0));
                Refused(refused.Faults[0].Found.Text());
                return;
            }
            catch (FrameMovesException moves)
            {
                Refused(moves.Message);
                return;
            }
            catch (ArgumentException refused) when (IsInWords(refused))
            {
                Refused(refused.Message.Split(" (Parameter", 2)[0]);
                return;
            }

            Interlocked.Increment(ref checkedInFull);
            Sound(check);
        }, iter: 3000);

        // a generator that is always refused would show nothing
        Assert.True(checkedInFull > 600, $"{checkedInFull} of 3000 were checked in full\n"
            + string.Join("\n", refusals.OrderByDescending(r => r.Value).Take(25).Select(r => $"{r.Value,5} {r.Key}")));
        Assert.True(_jobs > 20, $"only {_jobs} jobs were among them");
    }

    private static int _jobs;

    private static bool IsInWords(ArgumentException refused) => refused is not ArgumentNullException && refused.Message.Length > 10;

    private static void Sound(PressCheck check)
    {
        foreach (Rung rung in check.Ladder.Rungs)
        {
            Assert.True(double.IsFinite(rung.SafeTo) && rung.SafeTo >= 0, $"{rung.Id}: safe to {rung.SafeTo}");
            Assert.True(double.IsFinite(rung.GivesAt) && rung.GivesAt >= rung.SafeTo * (1 - 1e-9), $"{rung.Id}: gives at {rung.GivesAt}");
        }

        double[] others =
        [
            check.DaylightGrowth, check.Opening, check.Power.TrueForce, check.Power.MostPossibleForce, check.Power.ApproachSpeed,
            check.Power.Times.FullStroke, check.Power.OilEnergy, .. check.Power.Speeds.Select(s => s.Speed), check.Power.ReturnSpeed ?? 0,
        ];
        Assert.All(others, x => Assert.True(double.IsFinite(x), x.ToString("R", System.Globalization.CultureInfo.InvariantCulture)));
        foreach (JobCheck job in JobCheck.All(check))
        {
            Interlocked.Increment(ref _jobs);
            string text = JobJson.Text(new JobAnswer(job, null));
            Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
            Assert.True(job.Demand.Peak.Likely >= 0 && job.Demand.Energy >= 0 && !(job.Time < 0), $"{job.Job.Kind}: {job.Demand.Peak}, {job.Demand.Energy} J, {job.Time} s");
        }

        string json = CheckJson.Text(check);
        Assert.DoesNotContain("NaN", json, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", json, StringComparison.Ordinal);
    }
}
