using Ramwright.Power;

namespace Ramwright.Squeeze;

/// <summary>Ram, oil, frame and air as rates of five unknowns: way of the tool, its speed, pressure in the cylinder, air in the receiver, and its heat.</summary>
/// <remarks>
/// <para>Ram: m dv/dt = F − p_b a − F_w, F = p A (1 − μ) − S. Frame: it springs by c F, so that the rod goes x = x_0 + s + c F. Oil: what
/// flows in makes room, d(V (1 + p/K))/dt = Q, V = V_0 + A x. Its weight is left out, as in the rest of the power's reckoning.</para>
/// <para>A little damping, a twentieth of the critical, quiets the ram on its oil over cold work. While the oil is let off the tool stands on
/// the work.</para>
/// <para>A pressure below zero stands for room the oil has not filled; the oil pushes with nothing then.</para>
/// </remarks>
/// <param name="press">The press.</param>
/// <param name="x_0">How far the rod is out at the start of the way, m.</param>
/// <param name="isHot">Whether the work is hot steel, which sets the speed and not the force.</param>
internal sealed class SqueezeMachine(SqueezePress press, double x_0, bool isHot)
{
    /// <summary>Places of the unknowns.</summary>
    public const int S = 0, V = 1, P = 2, N = 3, E = 4, Size = 5;

    /// <summary>Damping over cold work, share of the critical.</summary>
    public const double Damping = 0.05;

    private readonly double _A = press.Push, _a = press.Ring, _mu = press.Seals, _K = press.K, _c = press.Compliance;
    private readonly double _k = press.Rig.Cylinder.SpringRate, _S = press.Rig.Cylinder.SpringPreload;

    /// <summary>What the ram is doing.</summary>
    public SqueezePhase Phase { get; set; }
    /// <summary>Whether the pump's large stage is unloaded.</summary>
    public bool Unloaded { get; set; }
    /// <summary>Whether the compressor runs.</summary>
    public bool Compressing { get; set; }
    /// <summary>Whether the ring's oil joins the pump's.</summary>
    public bool Regenerates { get; set; }

    /// <summary>Area that the pump fills, m².</summary>
    public double Fill => Regenerates ? _A - _a : _A;

    /// <summary>What moves, kg.</summary>
    public double Mass { get; } = press.MovingMass;

    /// <summary>Whether hot steel is under the tool, and the tool goes as it yields.</summary>
    public bool Flows => isHot && IsOnWork;

    private bool IsOnWork => Phase is SqueezePhase.Pressing or SqueezePhase.Dwell;

    /// <summary>Pressure of the air at the pump, Pa.</summary>
    public double AirAtPump(double E) => press.Air is { } air ? air.AtPump(E) : 0;

    /// <summary>Flow into the cylinder, m³/s, what goes over the relief valve, and the pressure at the pump, Pa.</summary>
    public (double Flow, double Relieved, double PumpPressure) Flow(double p, double E) => press.Flow.Into(p, AirAtPump(E), Unloaded);

    /// <summary>How far the rod is out, m.</summary>
    public double Rod(double s, double p)
    {
        // x = x_0 + s + c F, F = p A (1 − μ) − S_0 − k x; the spring of the frame itself once the oil pushes
        double F0 = p * Fill * (1 - _mu) - _S;
        return (x_0 + s + _c * F0) / (1 + _c * _k);
    }

    /// <summary>How fast the rod goes, m/s, where way and pressure change so fast.</summary>
    public double RodGoes(double ds, double dp) => (ds + _c * Fill * (1 - _mu) * dp) / (1 + _c * _k);

    /// <summary>Force in the frame, N.</summary>
    public double InFrame(double s, double p) => NetForce(Rod(s, p), p);

    /// <summary>Force of the oil on hot work, N, less what the ring takes.</summary>
    public double ForceOn(ReadOnlySpan<double> y)
    {
        double p = Math.Max(0, y[P]), F = InFrame(y[S], p);
        if (!(_a > 0))
            return F;
        double Q = Phase == SqueezePhase.Pressing ? Flow(p, y[E]).Flow : 0;
        return F - Behind(Q / Fill, Q) * _a;
    }

    /// <summary>Pressure that just holds the ram against its spring, Pa.</summary>
    public double PressureAtRest(double s) => (_S + _k * (x_0 + s)) / (Fill * (1 - _mu));

    /// <summary>Energy of the moving ram, J.</summary>
    public double InMotion(double v) => Mass * v * v / 2;

    /// <summary>Energy held by oil, frame, spring and motion, J.</summary>
    public double Held(ReadOnlySpan<double> y)
    {
        double p = Math.Max(0, y[P]), x = Rod(y[S], p), F = NetForce(x, p), v = Phase == SqueezePhase.Return ? 0 : y[V];
        return OilColumn.Stored(p, _K) * OilHeld(y[S], y[P]) + _c * F * F / 2 + _S * x + _k * x * x / 2 + InMotion(v);
    }

    /// <summary>Oil in cylinder and hoses, m³ at no pressure.</summary>
    public double OilHeld(double s, double p) => (press.DeadOil + Fill * Rod(s, Math.Max(0, p))) * (1 + p / _K);

    /// <summary>The rates.</summary>
    /// <param name="y">The unknowns.</param>
    /// <param name="v">Speed of the tool, m/s: what hot work yields at, else the unknown itself.</param>
    /// <param name="F_w">Force of the work, N; hot work has none but what drives it.</param>
    /// <param name="f">Their rates.</param>
    /// <param name="sums">Rates of the sums that the balances need, those that go with the way as forces.</param>
    public void Rates(ReadOnlySpan<double> y, double v, double F_w, Span<double> f, Span<double> sums)
    {
        double p = Math.Max(0, y[P]), fill = Fill, air = AirAtPump(y[E]);
        sums.Clear();
        double takes = 0;
        if (Phase == SqueezePhase.Return)
        {
            (f[S], f[V], f[P]) = (-press.ReturnSpeed, 0, 0);
            if (_a > 0)
                takes = press.Air?.Takes(press.ReturnSpeed * _a, air) ?? 0;
        }
        else
        {
            double x = Rod(y[S], p), F = NetForce(x, p);
            double Q = 0, over = 0, at = p, outflow = 0;
            if (Phase == SqueezePhase.LetOff)
                outflow = Leaves(p);
            else if (Phase != SqueezePhase.Dwell)
                (Q, over, at) = press.Flow.Into(p, air, Unloaded);
            bool held = Phase == SqueezePhase.LetOff, flows = Flows;       // held: the tool stands on the work until the oil lets go
            double dp_b = _a > 0 ? Behind(flows ? Q / fill : v, Q) : 0;
            double damps = IsOnWork && !isHot ? 2 * Damping * fill * Math.Sqrt(_K / (press.DeadOil + fill * x) * Mass) * v : 0;
            if (flows)
                F_w = F - dp_b * _a;
            double z = 1 + y[P] / _K, room = press.DeadOil + fill * x, spring = 1 + _c * _k;
            double pushes = y[P] > 0 ? _c * fill * (1 - _mu) / spring : 0;
            double rise = (Q - outflow - fill * z * v / spring) / (room / _K + fill * z * pushes);
            f[S] = v;
            f[V] = held || flows ? 0 : (F - dp_b * _a - F_w - damps) / Mass;
            f[P] = rise;
            takes = press.Air?.Takes(Q + over, air) ?? 0;
            double carried = OilColumn.Carried(at, _K), inside = OilColumn.Carried(p, _K);
            sums[SqueezeSystem.PumpWork] = carried * (Q + over);
            sums[SqueezeSystem.ReliefLoss] = carried * over;
            sums[SqueezeSystem.LineLoss] = (carried - inside) * Q;
            // forces, to be multiplied by the way
            sums[SqueezeSystem.SealLoss] = _mu * p * fill;
            sums[SqueezeSystem.BackLoss] = dp_b * _a;
            sums[SqueezeSystem.Damped] = damps;
            sums[SqueezeSystem.WorkDone] = F_w;
            sums[SqueezeSystem.LetOffLoss] = inside * outflow;
            sums[SqueezeSystem.OilIn] = Q;
            sums[SqueezeSystem.OilOut] = outflow;
        }

        (f[N], f[E]) = (0, 0);
        if (press.Air is { } side)
        {
            (f[N], f[E]) = side.Rates(y[N], y[E], takes, Compressing);
            sums[SqueezeSystem.AirTaken] = takes;
            sums[SqueezeSystem.AirMade] = Compressing ? side.Delivered : 0;
        }
    }

    private double NetForce(double x, double p) => p * Fill * (1 - _mu) - _S - _k * x;

    /// <summary>Oil that the opened valve lets out, m³/s: lines and valve lose the pressure.</summary>
    private double Leaves(double p)
    {
        if (!(p > 0))
            return 0;
        LineSet lines = press.Back.IsEmpty ? press.Supply : press.Back;
        double free = press.Flow.FreeFlow, lo = 0, hi = free * Math.Sqrt(p / SqueezePress.ValveLoss);
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
        double loss = press.Back.Loss(Math.Abs(v) * _a);
        if (Regenerates)
            loss += press.Supply.Loss(Math.Abs(v) * _A) - press.Supply.Loss(Q);
        return Math.Sign(v) * Math.Max(0, loss);
    }
}
