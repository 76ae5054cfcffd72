using System.Globalization;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Proving;

namespace Ramwright.Tests.Proving;

/// <summary>Readings of a press whose true behaviour is known, with noise of its instruments: for finding that behaviour again.</summary>
internal sealed class MadeUpReadings(PressCheck check, ulong seed)
{
    private readonly SeededDraws _draws = new(seed);

    public double Even(double from, double to) => from + (to - from) * _draws.Even();

    public double Normal(double sigma) => sigma * _draws.Normal();

    /// <summary>A dial at every place over a test, on a frame that gives so much per newton.</summary>
    /// <param name="perNewton">True movement at each place, m/N.</param>
    /// <param name="scatter">Standard deviation of a single dial reading, m.</param>
    /// <param name="gaugeError">Error of the gauge, the same at all readings, Pa.</param>
    /// <param name="set">What stays, m.</param>
    /// <param name="loop">Share of the greatest movement that coming down lags.</param>
    public IEnumerable<string> Dials(IReadOnlyDictionary<string, double> perNewton, double scatter, double gaugeError = 0, double set = 0, double loop = 0)
    {
        var scale = OilToRam.Of(check, new ReadingBook(check, []));
        TestPlan plan = TestPlan.Of(check);
        double most = plan.Steps.Max(s => scale.Force(s.Pressure));
        foreach ((string place, double give) in perNewton)
        {
            double seated = 0;
            foreach (PlanStep step in plan.Steps.Where(s => s.Number >= 2))
            {
                bool up = step.Way == Way.Up;
                double force = scale.Force(step.Pressure, step.Way), x = give * force;
                if (!up && step.Pressure > 0)
                    x += loop * give * most;
                if (!up && step.Pressure == 0 && step.Number > 2)
                    seated = set;
                double read = x + seated + Normal(scatter);
                string way = step.Number == 2 ? "up" : up ? "up" : "down";
                yield return string.Create(CultureInfo.InvariantCulture, $"dial {read * 1e3:0.######} mm at={place} pressure={(step.Pressure > 0 ? step.Pressure + gaugeError : 0) / 1e5:0.######} bar way={way} step={step.Number}");
            }
        }
    }

    /// <summary>What dials would show on a frame with one thing changed.</summary>
    /// <param name="check">The press as said.</param>
    /// <param name="change">What is changed.</param>
    /// <param name="factor">By how much.</param>
    /// <param name="joints">Whether dials stand across the joints too.</param>
    public static IReadOnlyDictionary<string, double> Changed(PressCheck check, string change, double factor, bool joints = false)
    {
        ModelChange one = ModelChange.Of(check.Response).Single(c => c.Name == change);
        FrameResponse response = FrameResponse.Of(check.Response.Plan with { Model = one.On(factor) });
        return DialPoint.Of(response).Concat(joints ? DialPoint.Joints(response) : []).ToDictionary(p => p.Name, p => p.PerNewton);
    }

    public static IReadOnlyDictionary<string, double> AsSaid(PressCheck check) => DialPoint.Of(check.Response).ToDictionary(p => p.Name, p => p.PerNewton);
}
