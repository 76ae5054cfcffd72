using Ramwright.Jobs;
using Ramwright.Power;

namespace Ramwright.Squeeze;

/// <summary>
/// Ram, oil, frame, air and the heat of the bar as one set of rates. The unknowns: the cells of the bar and its dies (hot work), the way of
/// the tool, its speed, the pressure in the cylinder, the air in the receiver and its heat; after them the sums that the balances need.
/// </summary>
/// <remarks>
/// <para>Ram: m dv/dt = F − p_b a − F_w, F = p A (1 − μ) − S. Frame: it springs by c F, so that the rod goes x = x_0 + s + c F. Oil: what
/// flows in makes room, d(V (1 + p/K))/dt = Q, V = V_0 + A x. Its weight is left out, as in the rest of the power's reckoning.</para>
/// <para>Hot work: it flows so slowly that the ram's mass counts for nothing; the tool goes as fast as F − p_b a drives the steel, the law of
/// flow stress turned round. Below the slowest rate at which the law was measured the force is held but for a fiftieth root of the rate.
/// Cold work pushes back by its way alone, and a little damping, a twentieth of the critical, quiets the ram on its oil. While the oil is let
/// off the tool stands on the work.</para>
/// <para>The force of hot work is the mean over the cells, each at its own heat: as if every layer were pressed alike.</para>
/// <para>A pressure below zero stands for room the oil has not filled; the oil pushes with nothing then.</para>
/// </remarks>
internal sealed class SqueezeSystem : StiffSystem
{
    /// <summary>Damping of cold work, share of the critical.</summary>
    public const double Damping = 0.05;

    public const int PumpWork = 0, ReliefLoss = 1, LineLoss = 2, SealLoss = 3, BackLoss = 4, WorkDone = 5, LetOffLoss = 6, OilIn = 7, OilOut = 8,
        AirTaken = 9, AirMade = 10, Radiated = 11, Convected = 12, IntoDies = 13, Damped = 14;

    private const int HowMany = 15, Mechanical = 5, S = 0, V = 1, P = 2, N = 3, E = 4;

    private readonly SqueezePress _press;
    private readonly SqueezeWork _work;
    private readonly HotBite? _bite;
    private readonly double _A, _a, _mu, _K, _c, _k, _x0, _m;
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
        (_A, _a, _mu, _K, _c) = (press.Push, press.Ring, press.Seals, press.K, press.Compliance);
        _k = press.Rig.Cylinder.SpringRate;
        _m = press.MovingMass;
        _x0 = work.OutAtTouch - work.Gap;
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
    public SqueezePhase Phase { get; set; }
    /// <summary>Whether the pump's large stage is unloaded.</summary>
    public bool Unloaded { get; set; }
    /// <summary>Whether the compressor runs.</summary>
    public bool Compressing { get; set; }
    /// <summary>Whether the ring's oil joins the pump's.</summary>
    public bool Regenerates { get; set; }
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
    public double Out(ReadOnlySpan<double> y) => Rod(y[Way], Math.Max(0, y[Pressure]));

    /// <summary>Flow into the cylinder and what else belongs to it.</summary>
    public (double Flow, double Relieved, double PumpPressure) Flow(ReadOnlySpan<double> y) =>
        _press.Flow.Into(Math.Max(0, y[Pressure]), AirAtPump(y[AirHeat]), Unloaded);

    public double AirAtPump(double E) => _press.Air is { } air ? air.AtPump(E) : 0;

    /// <summary>Force of the work on the ram, N.</summary>
    public double Force(ReadOnlySpan<double> y)
    {
        if (Phase == SqueezePhase.LetOff)
            return Math.Max(0, InFrame(y[Way], Math.Max(0, y[Pressure])));
        if (Column is not null)
            return Phase is SqueezePhase.Pressing or SqueezePhase.Dwell ? Math.Max(0, InFrame(y[Way], Math.Max(0, y[Pressure]))) : 0;
        return Resists(y[Way]);
    }

    /// <summary>Force in the frame, N.</summary>
    public double InFrame(double s, double p) => NetForce(Rod(s, p), p);

    /// <summary>Energy of the moving ram, J.</summary>
    public double InMotion(double v) => _m * v * v / 2;

    /// <summary>Energy held by oil, frame, spring and motion, J.</summary>
    public double Held(ReadOnlySpan<double> y)
    {
        double p = Math.Max(0, y[Pressure]), x = Rod(y[Way], p), F = NetForce(x, p), v = Phase == SqueezePhase.Return ? 0 : y[Speed];
        return OilColumn.Stored(p, _K) * OilHeld(y) + _c * F * F / 2 + _press.Rig.Cylinder.SpringPreload * x + _k * x * x / 2 + _m * v * v / 2;
    }

    /// <summary>Oil in cylinder and hoses, m³ at no pressure.</summary>
    public double OilHeld(ReadOnlySpan<double> y)
    {
        double p = y[Pressure];
        return (_press.DeadOil + Fill * Rod(y[Way], Math.Max(0, p))) * (1 + p / _K);
    }

    /// <summary>Pressure that just holds the ram against its spring, Pa.</summary>
    public double PressureAtRest(double s) => (_press.Rig.Cylinder.SpringPreload + _k * (_x0 + s)) / (Fill * (1 - _mu));

    /// <summary>Area that the pump fills, m².</summary>
    public double Fill => Regenerates ? _A - _a : _A;

    /// <summary>Whether hot steel is under the tool, and the tool goes as it yields.</summary>
    private bool Flows => Column is not null && (Phase == SqueezePhase.Pressing || Phase == SqueezePhase.Dwell);

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
        double v = Flows ? Yields(Stiff(s), at) : at[V];
        Machine(at, v, Resists(s), f.Slice(_cells, Mechanical), sums);
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
        sums[SealLoss] *= (ds + _c * Fill * (1 - _mu) * dp) / (1 + _c * _k);
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

        bool flows = Flows;
        Hardness hard = flows ? Stiff(s) : default;
        double F_w = Resists(s), v = flows ? Yields(hard, at) : at[V];
        Span<double> sums = stackalloc double[HowMany];
        Machine(at, v, F_w, _base, sums);
        at.CopyTo(_moved);
        for (int k = 0; k < Mechanical; k++)
        {
            double d = k switch { S => 1e-7, V => 1e-6 + 1e-5 * Math.Abs(v), P => 10 + 1e-6 * Math.Abs(at[P]), _ => 1e-7 * Math.Max(1e-3, at[k]) };
            _moved[k] = at[k] + d;
            Machine(_moved, k == V ? v + d : v, F_w, _movedRates, sums);
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
            _j[V, S] -= (Resists(s + 1e-7) - F_w) / 1e-7 / _m;
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

    private double Rod(double s, double p)
    {
        // x = x_0 + s + c F, F = p A (1 − μ) − S_0 − k x; the spring of the frame itself once the oil pushes
        double F0 = p * Fill * (1 - _mu) - _press.Rig.Cylinder.SpringPreload;
        return (_x0 + s + _c * F0) / (1 + _c * _k);
    }

    private double NetForce(double x, double p) => p * Fill * (1 - _mu) - _press.Rig.Cylinder.SpringPreload - _k * x;

    /// <summary>Ram, oil and air at a force of the work.</summary>
    private void Machine(ReadOnlySpan<double> y, double v, double F_w, Span<double> f, Span<double> sums)
    {
        double s = y[S], p = Math.Max(0, y[P]), fill = Fill, air = AirAtPump(y[E]);
        sums.Clear();
        double takes = 0;
        if (Phase == SqueezePhase.Return)
        {
            (f[S], f[V], f[P]) = (-_press.ReturnSpeed, 0, 0);
            if (_a > 0)
                takes = _press.Air?.Takes(_press.ReturnSpeed * _a, air) ?? 0;
        }
        else
        {
            double x = Rod(s, p), F = NetForce(x, p);
            double Q = 0, over = 0, at = p, outflow = 0;
            if (Phase == SqueezePhase.LetOff)
                outflow = Leaves(p);
            else if (Phase != SqueezePhase.Dwell)
                (Q, over, at) = _press.Flow.Into(p, air, Unloaded);
            bool held = Phase == SqueezePhase.LetOff, flows = Flows;       // held: the tool stands on the work until the oil lets go
            double dp_b = _a > 0 ? Behind(flows ? Q / fill : v, Q) : 0, damps = 0;
            if (Column is null && (Phase == SqueezePhase.Pressing || Phase == SqueezePhase.Dwell))
                damps = 2 * Damping * fill * Math.Sqrt(_K / (_press.DeadOil + fill * x) * _m) * v;
            if (flows)
                F_w = F - dp_b * _a;
            double z = 1 + y[P] / _K, room = _press.DeadOil + fill * x, spring = 1 + _c * _k;
            double pushes = y[P] > 0 ? _c * fill * (1 - _mu) / spring : 0;
            double rise = (Q - outflow - fill * z * v / spring) / (room / _K + fill * z * pushes);
            f[S] = v;
            f[V] = held || flows ? 0 : (F - dp_b * _a - F_w - damps) / _m;
            f[P] = rise;
            takes = _press.Air?.Takes(Q + over, air) ?? 0;
            double carried = OilColumn.Carried(at, _K), inside = OilColumn.Carried(p, _K);
            sums[PumpWork] = carried * (Q + over);
            sums[ReliefLoss] = carried * over;
            sums[LineLoss] = (carried - inside) * Q;
            // forces, to be multiplied by the way
            sums[SealLoss] = _mu * p * fill;
            sums[BackLoss] = dp_b * _a;
            sums[Damped] = damps;
            sums[WorkDone] = F_w;
            sums[LetOffLoss] = inside * outflow;
            sums[OilIn] = Q;
            sums[OilOut] = outflow;
        }

        (f[N], f[E]) = (0, 0);
        if (_press.Air is { } side)
        {
            (f[N], f[E]) = side.Rates(y[N], y[E], takes, Compressing);
            sums[AirTaken] = takes;
            sums[AirMade] = Compressing ? side.Delivered : 0;
        }
    }

    /// <summary>Oil that the opened valve lets out, m³/s: lines and valve lose the pressure.</summary>
    private double Leaves(double p)
    {
        if (!(p > 0))
            return 0;
        LineSet lines = _press.Back.IsEmpty ? _press.Supply : _press.Back;
        double free = _press.Flow.FreeFlow, lo = 0, hi = free * Math.Sqrt(p / SqueezePress.ValveLoss);
        for (int i = 0; i < 50 && hi - lo > 1e-12 * free; i++)
        {
            double Q = 0.5 * (lo + hi);
            if (lines.Loss(Q) + SqueezePress.ValveLoss * (Q / free) * (Q / free) > p)
                hi = Q;
            else
                lo = Q;
        }

        return 0.5 * (lo + hi);
    }

    /// <summary>Pressure in the ring, Pa, with the sign of the speed; with a regenerative circuit what its way round costs.</summary>
    private double Behind(double v, double Q)
    {
        double loss = _press.Back.Loss(Math.Abs(v) * _a);
        if (Regenerates)
            loss += _press.Supply.Loss(Math.Abs(v) * _A) - _press.Supply.Loss(Q);
        return Math.Sign(v) * Math.Max(0, loss);
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
    private double Yields(Hardness hard, ReadOnlySpan<double> y)
    {
        double p = Math.Max(0, y[P]), F = NetForce(Rod(y[S], p), p);
        if (_a > 0)
        {
            double Q = Phase == SqueezePhase.Pressing ? _press.Flow.Into(p, AirAtPump(y[E]), Unloaded).Flow : 0;
            F -= Behind(Q / Fill, Q) * _a;
        }

        return hard.SpeedAt(F);
    }

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
