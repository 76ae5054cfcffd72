using Ramwright.Jobs;
using Ramwright.Power;

namespace Ramwright.Squeeze;

/// <summary>
/// Ram, oil, frame, air and the heat of the bar as one set of rates. The unknowns: the cells of the bar and its dies (hot work), the way of
/// the tool, its speed, the pressure in the cylinder, the air in the receiver and its heat; after them the sums that the balances need.
/// </summary>
/// <remarks>
/// <para>Hot work: it flows so slowly that the ram's mass counts for nothing; the tool goes as fast as F − p_b a drives the steel, the law of
/// flow stress turned round. Below the slowest rate at which the law was measured the force is held but for a fiftieth root of the rate.
/// Cold work pushes back by its way alone.</para>
/// <para>The force of hot work is the mean over the cells, each at its own heat: as if every layer were pressed alike.</para>
/// </remarks>
internal sealed class SqueezeSystem : StiffSystem
{
    public const int PumpWork = 0, ReliefLoss = 1, LineLoss = 2, SealLoss = 3, BackLoss = 4, WorkDone = 5, LetOffLoss = 6, OilIn = 7, OilOut = 8,
        AirTaken = 9, AirMade = 10, Radiated = 11, Convected = 12, IntoDies = 13, Damped = 14;

    private const int HowMany = 15, Mechanical = SqueezeMachine.Size, S = SqueezeMachine.S, V = SqueezeMachine.V, P = SqueezeMachine.P,
        N = SqueezeMachine.N, E = SqueezeMachine.E;

    private readonly SqueezePress _press;
    private readonly SqueezeWork _work;
    private readonly HotBite? _bite;
    private readonly SqueezeMachine _machine;
    private readonly int _cells;
    private readonly Tridiagonal? _cold;
    private readonly Dense _j = new(Mechanical);
    private readonly double[] _byHeat;
    private readonly double[] _base = new double[Mechanical];
    private readonly double[] _moved = new double[Mechanical];
    private readonly double[] _bySpeed = new double[Mechanical];
    private readonly double[] _movedRates = new double[Mechanical];

    public SqueezeSystem(SqueezePress press, SqueezeWork work)
    {
        (_press, _work) = (press, work);
        _machine = new SqueezeMachine(press, work.OutAtTouch - work.Gap, isHot: work.Hot is not null);
        _bite = work.Resistance as HotBite;
        if (work.Hot is { } hot)
        {
            if (_bite is null)
                throw new ArgumentException("hot work needs a bite with a height", nameof(work));
            double height = _bite.Height, volume = _bite.Volume;
            Column = new HeatColumn(hot.Surface, height, volume / height);
            _cells = HeatColumn.Cells;
            _cold = new Tridiagonal(_cells);
        }

        _byHeat = new double[_cells];
    }

    /// <summary>What the ram is doing.</summary>
    public SqueezePhase Phase { get => _machine.Phase; set => _machine.Phase = value; }
    /// <summary>Whether the pump's large stage is unloaded.</summary>
    public bool Unloaded { get => _machine.Unloaded; set => _machine.Unloaded = value; }
    /// <summary>Whether the compressor runs.</summary>
    public bool Compressing { get => _machine.Compressing; set => _machine.Compressing = value; }
    /// <summary>Whether the ring's oil joins the pump's.</summary>
    public bool Regenerates { get => _machine.Regenerates; set => _machine.Regenerates = value; }
    /// <summary>Area that the pump fills, m².</summary>
    public double Fill => _machine.Fill;
    /// <summary>The bar and its dies; null for cold work.</summary>
    public HeatColumn? Column { get; }

    public override int Size => _cells + Mechanical;

    public override int Sums => HowMany;

    public int At(int mechanical) => _cells + mechanical;
    public int Way => _cells + S;
    public int Speed => _cells + V;
    public int Pressure => _cells + P;
    public int Air => _cells + N;
    public int AirHeat => _cells + E;
    public int Sum(int which) => _cells + Mechanical + which;

    /// <summary>Way since the touch, m; negative before it.</summary>
    public double Travel(ReadOnlySpan<double> y) => y[Way] - _work.Gap;

    /// <summary>How far the rod is out, m.</summary>
    public double Out(ReadOnlySpan<double> y) => _machine.Rod(y[Way], Math.Max(0, y[Pressure]));

    /// <summary>Flow into the cylinder and what else belongs to it.</summary>
    public (double Flow, double Relieved, double PumpPressure) Flow(ReadOnlySpan<double> y) => _machine.Flow(Math.Max(0, y[Pressure]), y[AirHeat]);

    /// <summary>Pressure of the air at the pump, Pa, for the heat that the receiver holds.</summary>
    public double AirAtPump(double E) => _machine.AirAtPump(E);

    /// <summary>Pressure that just holds the ram against its spring, Pa.</summary>
    public double PressureAtRest(double s) => _machine.PressureAtRest(s);

    /// <summary>Force of the work on the ram, N.</summary>
    public double Force(ReadOnlySpan<double> y)
    {
        if (Phase == SqueezePhase.LetOff || _machine.Flows)
            return Math.Max(0, _machine.InFrame(y[Way], Math.Max(0, y[Pressure])));
        return Resists(y[Way]);
    }

    /// <summary>Energy of the moving ram, J.</summary>
    public double InMotion(double v) => _machine.InMotion(v);

    /// <summary>Energy held by oil, frame, spring and motion, J.</summary>
    public double Held(ReadOnlySpan<double> y) => _machine.Held(y.Slice(_cells, Mechanical));

    /// <summary>Oil in cylinder and hoses, m³ at no pressure.</summary>
    public double OilHeld(ReadOnlySpan<double> y) => _machine.OilHeld(y[Way], y[Pressure]);

    public override void Rates(ReadOnlySpan<double> y, Span<double> f)
    {
        double s = y[Way];
        if (Column is { } column)
        {
            SetColumn(column, s);
            column.Chain.Rates(y[.._cells], f[.._cells]);
        }

        ReadOnlySpan<double> at = y.Slice(_cells, Mechanical);
        Span<double> sums = f[(_cells + Mechanical)..];
        double v = _machine.Flows ? Yields(Stiff(s), at) : at[V];
        _machine.Rates(at, v, Resists(s), f.Slice(_cells, Mechanical), sums);
        sums[Radiated] = sums[Convected] = sums[IntoDies] = 0;
        if (Column is { } bar)
        {
            double warms = sums[WorkDone] * Math.Max(0, v) * _work.Hot!.WorkIntoHeat / bar.Mass;
            for (int i = 0; i < HeatColumn.BarCells; i++)
                f[HeatColumn.DieCells + i] += warms;
            sums[Radiated] = bar.Chain.Radiated;
            sums[Convected] = bar.Chain.Convected;
            sums[IntoDies] = bar.IntoDies;
        }
    }

    public override void SumRates(ReadOnlySpan<double> k, Span<double> sums)
    {
        double ds = k[_cells + S], dp = k[_cells + P];
        sums[WorkDone] *= ds;
        sums[BackLoss] *= ds;
        sums[Damped] *= ds;
        sums[SealLoss] *= _machine.RodGoes(ds, dp);
    }

    public override void Linearise(ReadOnlySpan<double> y, ReadOnlySpan<double> f)
    {
        ReadOnlySpan<double> at = y.Slice(_cells, Mechanical);
        double s = at[S];
        if (Column is { } column)
        {
            SetColumn(column, s);
            Span<double> spare = stackalloc double[_cells];
            column.Chain.Rates(y[.._cells], spare);
            column.Chain.Linearise(_cold!.Below, _cold.On, _cold.Above);
        }

        bool flows = _machine.Flows;
        Hardness hard = flows ? Stiff(s) : default;
        double F_w = Resists(s), v = flows ? Yields(hard, at) : at[V];
        Span<double> sums = stackalloc double[HowMany];
        _machine.Rates(at, v, F_w, _base, sums);
        at.CopyTo(_moved);
        for (int k = 0; k < Mechanical; k++)
        {
            double d = k switch { S => 1e-7, V => 1e-6 + 1e-5 * Math.Abs(v), P => 10 + 1e-6 * Math.Abs(at[P]), _ => 1e-7 * Math.Max(1e-3, at[k]) };
            _moved[k] = at[k] + d;
            _machine.Rates(_moved, k == V ? v + d : v, F_w, _movedRates, sums);
            _moved[k] = at[k];
            for (int i = 0; i < Mechanical; i++)
                _j[i, k] = (_movedRates[i] - _base[i]) / d;
        }

        _byHeat.AsSpan().Clear();
        if (flows)
        {
            ByYielding(hard, at, v);
            return;
        }

        if (Column is null && Phase is not (SqueezePhase.LetOff or SqueezePhase.Return) && s > _work.Gap)
            _j[V, S] -= (Resists(s + 1e-7) - F_w) / 1e-7 / _machine.Mass;
    }

    /// <summary>The speed is no unknown of its own: what hangs on it hangs on way, pressure and heat.</summary>
    private void ByYielding(Hardness hard, ReadOnlySpan<double> at, double v)
    {
        const double ds = 1e-7;
        double dp = 10 + 1e-6 * Math.Abs(at[P]);
        at.CopyTo(_moved);
        _moved[P] += dp;
        double byPressure = (Yields(hard, _moved) - v) / dp;
        _moved[P] = at[P];
        _moved[S] += ds;
        double byWay = (Yields(Stiff(at[S] + ds), _moved) - v) / ds;
        for (int i = 0; i < Mechanical; i++)
        {
            double bySpeed = _j[i, V];
            _bySpeed[i] = bySpeed;
            _j[i, S] += bySpeed * byWay;
            _j[i, P] += bySpeed * byPressure;
            _j[i, V] = 0;
        }

        if (!(v > 0))
            return;
        // v goes with the inverse of the hardness, to the power that holds there
        HeatColumn column = Column!;
        BiteShape shape = _bite!.At(at[S] - _work.Gap);
        double[] T = column.Chain.Temperature;
        for (int i = 0; i < HeatColumn.BarCells; i++)
        {
            int cell = HeatColumn.DieCells + i;
            double slope = _bite.Law.Held(shape.Strain, hard.Rate, T[cell] + 0.5) - _bite.Law.Held(shape.Strain, hard.Rate, T[cell] - 0.5);
            _byHeat[cell] = -v * hard.Power(v) * HeatColumn.ShareOf(i) * slope / (hard.Stress * column.Chain.SpecificHeat(cell));
        }
    }

    public override void Factor(double a)
    {
        _cold?.Factor(a);
        // the order way, speed, pressure, air keeps the pivots of one sign
        _j.Factor(a);
    }

    public override void Solve(Span<double> x)
    {
        Span<double> y = x.Slice(_cells, Mechanical);
        if (_cold is not null)
        {
            _cold.Solve(x[.._cells]);
            double v = 0;
            for (int i = 0; i < _cells; i++)
                v += _byHeat[i] * x[i];
            for (int i = 0; i < Mechanical; i++)
                y[i] += _bySpeed[i] * v;
        }

        _j.Solve(y);
    }

    public override double Small(int i)
    {
        if (i < _cells)
            return 650 * 0.02;
        return (i - _cells) switch
        {
            S => 1e-7,
            V => 2e-5,
            P => 2e3,
            N or E => 1e-6,
            int z => (z - Mechanical) switch { OilIn or OilOut => 1e-8, AirTaken or AirMade => 1e-6, _ => 0.05 },
        };
    }

    /// <summary>Force of cold work; hot work has none of its own but what drives it.</summary>
    private double Resists(double s)
    {
        double travel = s - _work.Gap;
        if (!(travel > 0) || Column is not null || Phase is SqueezePhase.LetOff or SqueezePhase.Return)
            return 0;
        return _work.Resistance.Force(Math.Min(travel, _work.Resistance.Travel), 0, 20);
    }

    private Hardness Stiff(double s) => Hardness.Of(_bite!, Column!.Chain.Temperature, Math.Max(1e-9, s - _work.Gap));

    /// <summary>Speed at which hot work yields to the oil's force.</summary>
    private double Yields(Hardness hard, ReadOnlySpan<double> y) => hard.SpeedAt(_machine.ForceOn(y));

    private void SetColumn(HeatColumn column, double s)
    {
        HotWork hot = _work.Hot!;
        double travel = Math.Clamp(s - _work.Gap, 0, _bite!.Travel);
        BiteShape at = _bite.At(travel);
        double whole = _bite.Volume / at.Height, touches = Math.Min(1, _bite.ContactArea(at) / whole);
        bool pressed = Phase is SqueezePhase.Pressing or SqueezePhase.Dwell or SqueezePhase.LetOff;
        double rests = Math.Max(touches, 0.05);       // a round bar lies on a line
        column.Above = pressed ? hot.UnderLoad * touches : 0;
        column.Below = pressed ? hot.UnderLoad * touches : hot.Resting * rests;
        double sides = _bite.IsDisc ? Math.PI * at.Width : _bite.Whole ? 2 * (at.Width + at.ContactLength) : 2 * _bite.Bite;
        column.SetHeight(at.Height, sides, at.Width, top: pressed ? 1 - touches : 1, bottom: 1 - (pressed ? touches : rests));
    }
}
