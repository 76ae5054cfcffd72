namespace Ramwright.Squeeze;

/// <summary>
/// Carries a stiff system through time by a linearly implicit Runge-Kutta method of order 3 with its error by a second of order 2. Each
/// step solves four linear systems with one factored matrix and no iteration. It damps what is fast without limit, and
/// keeps its order where the Jacobian is only near.
/// </summary>
/// <remarks>
/// Method and coefficients: J. Rang, L. Angermann, New Rosenbrock W-methods of order 3 for partial differential algebraic equations of
/// index 1, BIT 45 (2005) 761, ROS34PW2 (from memory; a test measures the order). Written as in E. Hairer, G. Wanner,
/// Solving Ordinary Differential Equations II, IV.7, with U = Γ K.
/// </remarks>
internal sealed class Rosenbrock
{
    private const int Stages = 4;
    private const double gamma = 0.43586652150845900;

    private static readonly double[,] alpha =
    {
        { 0, 0, 0, 0 },
        { 0.87173304301691801, 0, 0, 0 },
        { 0.84457060015369423, -0.11299064236484185, 0, 0 },
        { 0, 0, 1, 0 },
    };

    private static readonly double[,] Gamma =
    {
        { gamma, 0, 0, 0 },
        { -0.87173304301691801, gamma, 0, 0 },
        { -0.90338057013044082, 0.054180672388095326, gamma, 0 },
        { 0.24212380706095346, -1.2232505839045147, 0.54526025533510214, gamma },
    };

    private static readonly double[] b = [0.24212380706095346, -1.2232505839045147, 1.5452602553351020, 0.43586652150845900];
    private static readonly double[] bHat = [0.37810903145819369, -0.096042292212423178, 0.5, 0.21793326075422950];

    // Transformed: A = α Γ⁻¹, C = diag(1/γ) − Γ⁻¹, m = b Γ⁻¹.
    private static readonly double[,] A = new double[Stages, Stages];
    private static readonly double[,] Inverse = new double[Stages, Stages];
    private static readonly double[,] C = new double[Stages, Stages];
    private static readonly double[] m = new double[Stages];
    private static readonly double[] mError = new double[Stages];

    private readonly StiffSystem _system;
    private readonly double _tolerance;
    private readonly double[][] _u;
    private readonly double[] _f;
    private readonly double[] _stage;
    private readonly double[] _f0;
    private readonly double[] _k;
    private readonly double[][] _g;

    static Rosenbrock()
    {
        double[,] inverse = Inverse;
        for (int j = 0; j < Stages; j++)
        {
            for (int i = j; i < Stages; i++)
            {
                double s = i == j ? 1 : 0;
                for (int k = j; k < i; k++)
                    s -= Gamma[i, k] * inverse[k, j];
                inverse[i, j] = s / gamma;
            }
        }

        for (int i = 0; i < Stages; i++)
        {
            for (int j = 0; j < Stages; j++)
            {
                for (int k = 0; k < Stages; k++)
                    A[i, j] += alpha[i, k] * inverse[k, j];
                C[i, j] = (i == j ? 1 / gamma : 0) - inverse[i, j];
            }

            for (int k = 0; k < Stages; k++)
            {
                m[i] += b[k] * inverse[k, i];
                mError[i] += (b[k] - bHat[k]) * inverse[k, i];
            }
        }
    }

    /// <summary>Takes on a system.</summary>
    /// <param name="system">The system.</param>
    /// <param name="tolerance">Error allowed in a step relative to each unknown, above zero.</param>
    public Rosenbrock(StiffSystem system, double tolerance)
    {
        _system = system;
        _tolerance = tolerance;
        int n = system.Size, all = n + system.Sums;
        _u = [new double[n], new double[n], new double[n], new double[n]];
        _g = [new double[system.Sums], new double[system.Sums], new double[system.Sums], new double[system.Sums]];
        _f = new double[all];
        _f0 = new double[all];
        _stage = new double[all];
        _k = new double[n];
    }

    /// <summary>How many steps were tried, those thrown away counted.</summary>
    public int Tried { get; private set; }

    /// <summary>Makes ready to step from a state.</summary>
    public void From(ReadOnlySpan<double> y)
    {
        _system.Rates(y, _f0);
        _system.Linearise(y, _f0);
    }

    /// <summary>One step from the state of <see cref="From"/>.</summary>
    /// <param name="y">That state.</param>
    /// <param name="h">Step, s.</param>
    /// <param name="to">Where the new state goes.</param>
    /// <returns>Its error over what is allowed; NaN where it could not be made.</returns>
    public double Step(ReadOnlySpan<double> y, double h, Span<double> to)
    {
        Tried++;
        int n = _system.Size, sums = _system.Sums;
        _system.Factor(1 / (gamma * h));
        for (int i = 0; i < Stages; i++)
        {
            double[] u = _u[i];
            if (i == 0)
            {
                _f0.AsSpan(0, n).CopyTo(u);
                _f0.AsSpan(n).CopyTo(_g[0]);
            }
            else
            {
                for (int k = 0; k < n; k++)
                {
                    double at = y[k];
                    for (int j = 0; j < i; j++)
                        at += A[i, j] * _u[j][k];
                    _stage[k] = at;
                }

                _system.Rates(_stage, _f);
                for (int k = 0; k < n; k++)
                {
                    double right = _f[k];
                    for (int j = 0; j < i; j++)
                        right += C[i, j] / h * _u[j][k];
                    u[k] = right;
                }

                _f.AsSpan(n).CopyTo(_g[i]);
            }

            _system.Solve(u);
            if (sums > 0)
            {
                for (int k = 0; k < n; k++)
                {
                    double rate = 0;
                    for (int j = 0; j <= i; j++)
                        rate += Inverse[i, j] * _u[j][k];
                    _k[k] = rate / h;
                }

                _system.SumRates(_k, _g[i]);
            }
        }

        double sum = 0;
        for (int k = 0; k < n + sums; k++)
        {
            double d = 0, e = 0;
            for (int j = 0; j < Stages; j++)
            {
                d += k < n ? m[j] * _u[j][k] : b[j] * h * _g[j][k - n];
                e += k < n ? mError[j] * _u[j][k] : (b[j] - bHat[j]) * h * _g[j][k - n];
            }

            to[k] = y[k] + d;
            double allowed = _system.Small(k) + _tolerance * Math.Max(Math.Abs(y[k]), Math.Abs(to[k]));
            sum += e / allowed * (e / allowed);
        }

        return Math.Sqrt(sum / (n + sums));
    }

    /// <summary>How long the next step may be after an error, as a multiple of this one.</summary>
    public static double Next(double error) =>
        double.IsFinite(error) ? Math.Clamp(0.9 / Math.Cbrt(Math.Max(error, 1e-9)), 0.2, 4) : 0.1;
}
