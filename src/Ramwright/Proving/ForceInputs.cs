using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>The inputs of the true force, and how it comes from them.</summary>
/// <remarks>
/// The gauge's error is one input that stands in every pressure read from that gauge: so it counts in full in the pressure at the top and falls out of the
/// difference that friction is found from. That is how the correlation of pressures from one gauge is counted.
/// </remarks>
internal sealed class ForceInputs
{
    private readonly List<UncertainInput> _inputs = [];
    private readonly List<Correlation> _correlations = [];
    private readonly List<string> _taken = [];
    private readonly RigCylinder _cylinder;
    private readonly ReadingBook _book;
    private readonly Action<Working> _step;

    public ForceInputs(PressCheck check, ReadingBook book)
    {
        (_cylinder, _book) = (check.Rig.Cylinder, book);
        Instrument gauge = book.For(ReadingKind.TopPressure);
        IReadOnlyList<double> top = book.Values(ReadingKind.TopPressure);
        Estimate mean = gauge.Mean(top);
        if (top.Count < 4)
            _taken.Add($"pressure at the top was read {(top.Count == 1 ? "once" : top.Count == 2 ? "twice" : "three times")}: five readings or more tell its scatter");
        Say(gauge);
        int p = Add("p", top.Count > 1 ? $"pressure at the top, mean of {top.Count}" : "pressure at the top, one reading", Dimension.Pressure, mean, "repeating the pressure reading");
        if (Cell(mean.Value) is { } cell)
        {
            int a = Add("a", "load cell against gauge: intercept", Dimension.Force, cell.InterceptEstimate, "scatter of load cell against gauge");
            int b = Add("b", "load cell against gauge: slope", Dimension.Area, cell.SlopeEstimate, "scatter of load cell against gauge");
            _correlations.Add(new Correlation(a, b, cell.R));
            Instrument measured = book.For(ReadingKind.Load);
            Say(measured);
            int error = Add("δF", "error of the load cell", Dimension.Force, measured.Error, measured.Name);
            _taken.Add("the gauge's own error falls out: it was the same when the load cell was read");
            Model = x => x[a] + x[b] * x[p] + x[error];
            _step = w => Shown(w, "a + b p", false, "a", "b", "p");
            From = FrictionFrom.LoadCell;
            return;
        }

        int gaugeError = Add("δp", "error of the gauge", Dimension.Pressure, gauge.Error, gauge.Name);
        int step = Add("δr", "reading the gauge to its nearest step", Dimension.Pressure, gauge.Reading, gauge.Name);
        (int D, int d, int tube) = Diameters();
        int S = Spring();
        IReadOnlyList<FrictionPair> pairs = FrictionPair.Of(book);
        if (FrictionPair.Line(pairs) is { } line)
        {
            int f0 = Add("f_0", "seal friction at no pressure", Dimension.Pressure, line.InterceptEstimate, "scatter of creeping out and back");
            int m = Add("m", "seal friction for each pressure", Dimension.Ratio, line.SlopeEstimate, "scatter of creeping out and back");
            _correlations.Add(new Correlation(f0, m, line.R));
            Model = x => Area(x, D, d, tube) * (x[p] + x[gaugeError] + x[step] - Math.Max(0, x[f0] + x[m] * x[p])) - At(x, S);
            _step = w => Shown(w, "A (p − max(0, f_0 + m p))", true, "p", "f_0", "m");
            From = FrictionFrom.SeveralLoads;
            return;
        }

        double mu = _cylinder.SealFriction;
        int share = Add("μ", "seal friction that grows with pressure", Dimension.Ratio, Estimate.Within(mu, mu), "seal friction as the press file has it");
        if (pairs.Count == 0)
        {
            _taken.Add($"seal friction was not measured: anywhere from nothing to {Readout.Text(2 * mu, Dimension.Ratio)}. Creep out and back under a load to find it.");
            Model = x => Area(x, D, d, tube) * (x[p] + x[gaugeError] + x[step]) * (1 - x[share]) - At(x, S);
            _step = w => Shown(w, "A p (1 − μ)", true, "p", "μ");
            From = FrictionFrom.File;
            return;
        }

        FrictionPair pair = pairs[^1];
        _taken.Add("seal friction was measured under one load; how it grows from there is as the press file has it");
        int p1 = Add("p_1", "creeping out", Dimension.Pressure, Creep(ReadingKind.SlowOut, pair.Out), "repeating the creep readings");
        int p2 = Add("p_2", "creeping back", Dimension.Pressure, Creep(ReadingKind.SlowBack, pair.Back), "repeating the creep readings");
        Model = x => Area(x, D, d, tube) * (x[p] + x[gaugeError] + x[step] - (x[p1] - x[p2]) / 2 - x[share] * (x[p] - (x[p1] + x[p2]) / 2)) - At(x, S);
        _step = w => Shown(w, "A (p − (p_1 − p_2)/2 − μ (p − (p_1 + p_2)/2))", true, "p", "p_1", "p_2", "μ");
        From = FrictionFrom.OneLoad;
    }

    public IReadOnlyList<UncertainInput> All => _inputs;
    public IReadOnlyList<Correlation> Correlations => _correlations;
    public IReadOnlyList<string> Taken => _taken;
    public MeasurementModel Model { get; }
    public FrictionFrom From { get; }

    /// <summary>Writes how the force came about, then its uncertainty.</summary>
    public void Work(Working w)
    {
        _step(w);
        Uncertainty.Of(Model, _inputs, _correlations, w: w, dimension: Dimension.Force);
    }

    private void Shown(Working w, string formula, bool byArea, params string[] symbols)
    {
        double[] x = [.. _inputs.Select(i => i.Estimate.Value)];
        double Of(string symbol) => _inputs.FirstOrDefault(i => i.Symbol == symbol)?.Estimate.Value ?? 0;
        var givens = new List<Given>();
        if (byArea)
            givens.Add(("A", AreaShown(w, Of), Dimension.Area));
        givens.AddRange(_inputs.Where(i => symbols.Contains(i.Symbol)).Select(i => new Given(i.Symbol, i.Estimate.Value, i.Dimension)));
        bool spring = byArea && _inputs.Any(i => i.Symbol == "S");
        if (spring)
            givens.Add(("S", Of("S"), Dimension.Force));
        w.Step("F", "force at the ram", formula + (spring ? " − S" : ""), Model(x), Dimension.Force, Power.RamForce.PressureOnArea, [.. givens]);
    }

    private double AreaShown(Working w, Func<string, double> of)
    {
        int n = _cylinder.Count;
        double D = of("D"), d = of("d"), tube = of("d_t"), A = OilToRam.AreaOf(_cylinder, D, d, tube);
        if (d > 0)
            w.Step("A", "area that makes the force, oil on both sides", "n π d²/4", A, Dimension.Area, Power.CylinderAreas.Geometry, ("n", n, Dimension.Count), ("d", d, Dimension.Length));
        else if (tube > 0)
            w.Step("A", "area that pushes", "n π (D² − d_t²)/4", A, Dimension.Area, Power.CylinderAreas.Geometry, ("n", n, Dimension.Count), ("D", D, Dimension.Length), ("d_t", tube, Dimension.Length));
        else
            w.Step("A", "area that pushes", "n π D²/4", A, Dimension.Area, Power.CylinderAreas.Geometry, ("n", n, Dimension.Count), ("D", D, Dimension.Length));
        return A;
    }

    private static double At(ReadOnlySpan<double> x, int i) => i < 0 ? 0 : x[i];

    private double Area(ReadOnlySpan<double> x, int D, int d, int tube) =>
        OilToRam.AreaOf(_cylinder, At(x, D), At(x, d), At(x, tube));

    /// <summary>The line of load cell against gauge, if it reaches near enough to the top.</summary>
    private LineFit? Cell(double top)
    {
        Reading[] read = [.. _book.Of(ReadingKind.Load).Where(r => r.Way != Way.Down && r.Pressure is not null)];
        if (read.Length < 3 || read.Max(r => r.Pressure!.Value) - read.Min(r => r.Pressure!.Value) < 0.1 * top)
            return null;
        if (read.Max(r => r.Pressure!.Value) < 0.8 * top)
        {
            _taken.Add("the load cell was not read near the top: it is left out of the force there");
            return null;
        }

        return LineFit.Of([.. read.Select(r => r.Pressure!.Value)], [.. read.Select(r => r.Value)]);
    }

    private (int D, int D2, int Tube) Diameters()
    {
        bool regenerates = _cylinder.PullsByOil && _cylinder.Regeneration == Regeneration.Always;
        if (regenerates)
            return (-1, Diameter("d", "rod", ReadingKind.Rod, _cylinder.Rod), -1);
        return (Diameter("D", "bore", ReadingKind.Bore, _cylinder.Bore), -1,
            _cylinder.CentreTube > 0 ? Diameter("d_t", "centre tube", ReadingKind.CentreTube, _cylinder.CentreTube) : -1);
    }

    private int Diameter(string symbol, string what, ReadingKind kind, double stated)
    {
        IReadOnlyList<double> read = _book.Values(kind);
        if (read.Count == 0)
        {
            _taken.Add($"the {what} was not measured: {Readout.Text(stated, Dimension.Length, _book.Units, 4)} as the press file has it");
            return Add(symbol, $"{what}, not measured", Dimension.Length, Estimate.Within(stated, OilToRam.UnmeasuredDiameter(stated)), $"{what} taken from the press file");
        }

        Instrument by = _book.For(kind);
        Say(by);
        // scatter, step and the instrument's own error in one line: nobody improves them apart
        Estimate mean = Instrument.With(by.MeanRead(read), by.Error.U);
        return Add(symbol, $"{what}, measured", Dimension.Length, mean, $"{by.Name} on the {what}");
    }

    private int Spring() => OilToRam.SpringOf(_cylinder) is { Value: > 0 } spring
        ? Add("S", "return spring, by how far the ram is out", Dimension.Force, spring, "where the ram stood: the return spring")
        : -1;

    private Estimate Creep(ReadingKind kind, IReadOnlyList<double> read) => _book.For(kind).MeanRead(read);

    private int Add(string symbol, string meaning, Dimension dimension, Estimate estimate, string from)
    {
        _inputs.Add(new UncertainInput(symbol, meaning, dimension, estimate, from));
        return _inputs.Count - 1;
    }

    private void Say(Instrument instrument)
    {
        if (instrument.Assumed)
            _taken.Add($"nothing is said of the {instrument.Name}: taken as {instrument.Why.Text(_book.Units)}");
    }
}
