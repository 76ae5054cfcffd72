using Ramwright.Frame;
using Ramwright.Ladders;

namespace Ramwright.Proving;

/// <summary>One explanation of why a press is softer than its model, fitted to the dials.</summary>
/// <param name="Name">What would be otherwise.</param>
/// <param name="Says">What that means.</param>
/// <param name="Look">Where to look.</param>
/// <param name="Factor">What is left of it: 1 as said, 0.4 two fifths.</param>
/// <param name="Misfit">χ²: squares of what the dials show less what this explains, over their uncertainties; as many as there are dials is good.</param>
/// <param name="Weight">Share of belief among the explanations tried, by misfit and by how far off such things usually are.</param>
/// <param name="Shown">For each place: what the dial shows for a newton, and what this explanation would have it show, m/N.</param>
public sealed record Explanation(
    string Name, string Says, string Look, double Factor, double Misfit, double Weight, IReadOnlyList<(string Place, double Measured, double Explained)> Shown);

/// <summary>Why measured is softer than predicted: one thing of the model changed at a time, the frame solved anew for each, the best explanation first.</summary>
public sealed record Diagnosis
{
    /// <summary>The explanations, the likeliest first.</summary>
    public required IReadOnlyList<Explanation> Explanations { get; init; }
    /// <summary>Places that were measured.</summary>
    public required int Places { get; init; }
    /// <summary>χ² of the model as it is.</summary>
    public required double MisfitAsSaid { get; init; }

    /// <summary>What the ranking cannot tell.</summary>
    public string Warning => Places < 2
        ? "One dial alone cannot tell these apart: they are ranked by how far off such things usually are. Set dials at crown, bed and opening and test again."
        : Explanations.Count > 1 && Explanations[0].Weight < 2 * Explanations[1].Weight
            ? $"The first two explain the dials nearly alike: look at both.{(JointPlaces.Count > 0 ? $" A dial across the joint ({string.Join(", ", JointPlaces)}) tells slip from a light section." : "")}"
            : "";

    /// <summary>Places across joints where no dial stood yet.</summary>
    public IReadOnlyList<string> JointPlaces { get; init; } = [];

    /// <summary>Ranks the explanations; null where nothing was measured.</summary>
    /// <param name="check">The press.</param>
    /// <param name="measured">Stiffness at the places where dials stood.</param>
    public static Diagnosis? Of(PressCheck check, IReadOnlyList<Stiffness> measured)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(measured);
        Dial[] dials = [.. measured.Where(m => m.Measured is not null).Select(Dial.Of)];
        if (dials.Length == 0)
            return null;
        FrameResponse response = check.Response;
        List<(Explanation Of, double Score)> tried =
        [
            .. ModelChange.Of(response).Select(change => Fit(dials, change.Name, change.Says, change.Look, change.Least, change.Usual, f => Shown(response, change.On(f)))),
            // all dials off alike: not the frame but the force
            Fit(dials, "the force itself", "more force than the gauge tells, or less friction than was taken", "compare the gauge, measure the bore, creep out and back for the friction",
                0.6, 0.08, f => Shown(response, 1 / f)),
        ];
        double best = tried.Min(t => t.Score), all = tried.Sum(t => Math.Exp(-(t.Score - best) / 2));
        return new Diagnosis
        {
            Places = dials.Length,
            JointPlaces = [.. DialPoint.Joints(response).Select(p => p.Name).Where(n => !dials.Any(d => d.Place == n))],
            MisfitAsSaid = Misfit(dials, Shown(response, 1)),
            Explanations = [.. tried.Select(t => t.Of with { Weight = Math.Exp(-(t.Score - best) / 2) / all }).OrderByDescending(e => e.Weight)],
        };
    }

    private static (Explanation, double) Fit(
        Dial[] dials, string name, string says, string look, double least, double usual, Func<double, Dictionary<string, double>> shown)
    {
        double Score(double log) => Misfit(dials, shown(Math.Exp(log))) + log * log / (usual * usual);
        double at = Smallest(Score, Math.Log(least), 0);
        Dictionary<string, double> explained = shown(Math.Exp(at));
        return (new Explanation(name, says, look, Math.Exp(at), Misfit(dials, explained), 0,
            [.. dials.Select(d => (d.Place, d.Slope, explained.GetValueOrDefault(d.Place)))]), Score(at));
    }

    /// <summary>What each dial would show for a newton on a changed frame.</summary>
    private static Dictionary<string, double> Shown(FrameResponse response, FrameModel model)
    {
        FramePlan plan = response.Plan;
        var changed = ReferenceEquals(model, plan.Model) ? response : FrameResponse.Of(plan with { Model = model, Cases = [plan.Cases[0]] });
        return All(changed).ToDictionary(p => p.Name, p => p.PerNewton);
    }

    private static Dictionary<string, double> Shown(FrameResponse response, double times) => All(response).ToDictionary(p => p.Name, p => times * p.PerNewton);

    private static IEnumerable<DialPoint> All(FrameResponse response) => DialPoint.Of(response).Concat(DialPoint.Joints(response));

    private static double Misfit(Dial[] dials, Dictionary<string, double> shown) =>
        dials.Sum(d => Math.Pow((d.Slope - shown.GetValueOrDefault(d.Place)) / d.U, 2));

    /// <summary>The place of the smallest value: a coarse walk, then the golden section about its best.</summary>
    private static double Smallest(Func<double, double> f, double from, double to)
    {
        const int Steps = 24;
        const double Golden = 0.6180339887498949;
        double best = to, least = f(to);
        for (int i = 0; i < Steps; i++)
        {
            double x = from + (to - from) * i / Steps, y = f(x);
            if (y < least)
                (best, least) = (x, y);
        }

        double step = (to - from) / Steps, a = Math.Max(from, best - step), b = Math.Min(to, best + step);
        double c = b - Golden * (b - a), d = a + Golden * (b - a), fc = f(c), fd = f(d);
        for (int i = 0; i < 22; i++)
        {
            if (fc < fd)
                (b, d, fd, c) = (d, c, fc, 0);
            else
                (a, c, fc, d) = (c, d, fd, 0);
            if (c == 0)
                fc = f(c = b - Golden * (b - a));
            else
                fd = f(d = a + Golden * (b - a));
        }

        double found = (a + b) / 2;
        return f(found) <= least ? found : best;
    }

    private sealed record Dial(string Place, double Slope, double U)
    {
        /// <summary>What readings cannot tell and what beams cannot tell, together; the model's own error counted a third of its band.</summary>
        public static Dial Of(Stiffness s)
        {
            double k = s.Measured!.Value, u = s.Measured.Combined / (k * k), model = Stiffness.ModelBand / 3 * Math.Max(s.Point.PerNewton, s.Notable);
            return new Dial(s.Point.Name, 1 / k, Math.Sqrt(u * u + model * model));
        }
    }
}
