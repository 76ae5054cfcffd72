using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Hot steel into an impression.</summary>
public static class ClosedDieDemand
{
    /// <summary>Force from a multiplier.</summary>
    public static readonly Citation Source = Impression.Kalpakjian;

    /// <summary>The demand.</summary>
    /// <param name="job">The job.</param>
    /// <param name="speedAt">Speed of the ram at a force, m/s.</param>
    /// <param name="w">Where to write it down.</param>
    public static Demand Of(RigClosedDie job, Func<double, double> speedAt, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(speedAt);
        var law = new ShidaFlow(job.Steel.Carbon, job.Steel.Alloy);
        Band K = Impression.Multiplier(job.Shape);
        double A = job.Area + job.Outline * job.FlashLand;
        bool flash = job.FlashLand > 0;
        double ε = Math.Log(job.Blank / job.Height), T = job.Heat;
        var work = new Filling(law, job.Area, A, job.Blank, job.Height, K.Likely);
        IReadOnlyList<ForceAt> curve = Demand.Sampled(work, speedAt, T);
        double peak = curve[^1].Force, v = speedAt(peak);
        if (w is not null)
        {
            w.Step("ε", "true strain, by the mean heights", "ln(h_0 / h_1)", ε, Dimension.Number, HotBite.VolumeSource, ("h_0", job.Blank, Dimension.Length), ("h_1", job.Height, Dimension.Length));
            double rate = w.Step("v_ε", "strain rate, per second", "v / h_1", v / job.Height, Dimension.Number, HotBite.VolumeSource, ("v", v, Dimension.Speed), ("h_1", job.Height, Dimension.Length));
            double Y = law.Held(ε, rate, T, w);
            w.Step("A", flash ? "area with flash" : "area", "A_0 + u b", A, Dimension.Area, Impression.FlashSource, ("A_0", job.Area, Dimension.Area), ("u", job.Outline, Dimension.Length), ("b", job.FlashLand, Dimension.Length));
            w.Take("K", "pressure over flow stress, middle of its range", K.Likely, Dimension.Number, Source);
            w.Step("F", "force as the dies close", "K Y A", K.Likely * Y * A, Dimension.Force, Source, ("K", K.Likely, Dimension.Number), ("Y", Y, Dimension.Stress), ("A", A, Dimension.Area));
        }

        var flags = law.Range.Outside(ε, v > 0 ? v / job.Height : law.Range.Slowest, T)
            .Select(outside => outside with { Words = $"{law.Name}'s formula for the flow stress: {outside.Words}; its value at that end is taken" }).ToList();
        flags.Add(HotSqueezeDemand.Standing(job.Steel, law, T));
        flags.Add(new Remark("the multiplier for the shape is a range that differs from book to book: expect 30 % either way beyond it"));
        return new Demand
        {
            Resistance = work,
            Temperature = T,
            WorkHeight = job.Blank,
            Curve = curve,
            Peak = new Band(peak * K.Low / K.Likely * 0.85, peak, peak * K.High / K.Likely * 1.15),
            Spread = "how hard the shape is to fill",
            Flags = flags,
            Facts =
            [
                new(flash ? "area with flash" : "area", A, Dimension.Area),
                new("pressure over flow stress", K.Likely, Dimension.Number, $"{K.Low:0.#} to {K.High:0.#} for such a shape"),
            ],
            Cautions =
            [
                "Hot work: nothing that burns near the press, hoses shielded, eyes and hands covered.",
                "When the dies close, the pump sets the force, not the job: die and frame must stand the most the pump can give.",
                "Flash and scale squirt out sideways as the dies close: shield the front and stand aside.",
            ],
            Doing = job.Shape == ImpressionShape.Coin ? "strike this mark" : "fill this impression",
        };
    }

    /// <summary>From a simple upset at the touch to the full multiplier as the dies close.</summary>
    private sealed record Filling(FlowStress Law, double Area, double Whole, double Blank, double Height, double K) : IResistance
    {
        public double Travel => Blank - Height;

        public double Force(double travel, double speed, double temperature)
        {
            double x = Math.Clamp(travel / Travel, 0, 1), h = Blank - x * Travel;
            double Y = Law.Held(Math.Log(Blank / h), speed / h, temperature);
            // spreads first, fills in the last third: area by volume, then pressure
            double A = Math.Min(Whole, Area * Height / h), full = Math.Max(0, (x - 2.0 / 3) * 3);
            return Y * (A + (Whole - A) * full) * (1.2 + (K - 1.2) * full * full);
        }
    }
}
