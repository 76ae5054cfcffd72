namespace Ramwright.Solids;

/// <summary>A level of the hierarchy: its matrix, how it is smoothed, and the way to the next.</summary>
internal sealed class Level
{
    /// <summary>Steps of smoothing before and after.</summary>
    private const int Steps = 3;

    /// <summary>The smoother works on the stiffest part of what the level can move in: down to the stiffest over this.</summary>
    private const double Reach = 20;

    private const int Lanczos = 16;
    private const double Margin = 1.1;

    private readonly ILevelMatrix _matrix;
    private readonly DiagonalBlocks _inverse;
    private readonly float[] _step, _rest, _other;
    private float[]? _left, _part;

    public Level(ILevelMatrix matrix, DiagonalBlocks inverse, int length)
    {
        (_matrix, _inverse) = (matrix, inverse);
        (_step, _rest, _other) = (new float[length], new float[length], new float[length]);
        Stiffest = Margin * Greatest(length);
        Omega = 4.0 / 3 / Stiffest;
    }

    /// <summary>Greatest eigenvalue of D⁻¹ A, a little over: what lies beyond it the smoother would drive up.</summary>
    public double Stiffest { get; private set; }

    /// <summary>Weight of the one step by which the way to the next level is made smooth.</summary>
    public double Omega { get; }

    /// <summary>Takes the greatest eigenvalue to be larger, where it turns out to have been found too small.</summary>
    public void Stiffen() => Stiffest *= 1.4;

    /// <summary>The way to the next level.</summary>
    public Transfer? Transfer { get; set; }

    /// <summary>Length of a vector.</summary>
    public int Length => _step.Length;

    /// <summary>Some turns in a row, each on what the last has left: as good as one, and better.</summary>
    public void Turns(int count, float[] force, float[] movement, Action<float[], float[]> next, float[] above, float[] below)
    {
        (float[] left, float[] part) = (_left ??= new float[Length], _part ??= new float[Length]);
        Array.Clear(movement);
        Copy(force, left);
        for (int turn = 0; turn < count; turn++)
        {
            Turn(left, part, next, above, below);
            for (int i = 0; i < movement.Length; i++)
                movement[i] += part[i];
            if (turn == count - 1)
                return;
            _matrix.Apply(part, _other);
            Subtract(left, _other, left);
        }
    }

    /// <summary>One turn down and up: movements that nearly answer forces.</summary>
    public void Turn(float[] force, float[] movement, Action<float[], float[]> next, float[] above, float[] below)
    {
        Array.Clear(movement);
        Copy(force, _rest);
        Smooth(movement, keepRest: true);

        // (1 − A ω D⁻¹) of what is left goes down; what comes back is smoothed the same way
        _inverse.Step(0, (float)Omega, _rest, _step, null);
        _matrix.Apply(_step, _other);
        Subtract(_rest, _other, _other);
        Transfer!.Up(_other, above);
        next(above, below);
        Transfer.Down(below, _step);
        _matrix.Apply(_step, _other);
        _inverse.Step(1, -(float)Omega, _other, _step, movement);

        _matrix.Apply(_step, _other);
        Subtract(_rest, _other, _rest);
        Smooth(movement, keepRest: false);
    }

    // Chebyshev's polynomial in D⁻¹ A; the rest of the forces is kept up to date but for the last step, unless asked for
    private void Smooth(float[] movement, bool keepRest)
    {
        double most = Stiffest, least = Stiffest / Reach, middle = (most + least) / 2, half = (most - least) / 2, sigma = middle / half, rho = 1 / sigma;
        _inverse.Step(0, (float)(1 / middle), _rest, _step, movement);
        for (int k = 1; k < Steps; k++)
        {
            _matrix.Apply(_step, _other);
            Subtract(_rest, _other, _rest);
            double next = 1 / (2 * sigma - rho);
            _inverse.Step((float)(next * rho), (float)(2 * next / half), _rest, _step, movement);
            rho = next;
        }

        if (!keepRest)
            return;
        _matrix.Apply(_step, _other);
        Subtract(_rest, _other, _rest);
    }

    // Lanczos by way of conjugate gradients with D before them: the eigenvalues of the tridiagonal matrix of their steps run to those of D⁻¹ A from within, the greatest first
    private double Greatest(int length)
    {
        (float[] r, float[] z, float[] q, float[] p) = (_rest, _step, _other, new float[length]);
        uint seed = 12345;
        for (int i = 0; i < length; i++)
        {
            seed = seed * 1664525 + 1013904223;
            p[i] = (seed >> 8) / (float)(1 << 24) - 0.5f;
        }

        // forces of some movement, so that they balance on free bodies
        _matrix.Apply(p, r);
        Array.Clear(p);
        var tri = new double[Lanczos * Lanczos];
        double rz = 0, alpha = 0, beta = 0;
        int steps = 0;
        for (int k = 0; k < Lanczos; k++)
        {
            _inverse.Step(0, 1, r, z, null);
            double was = rz, alphaWas = alpha;
            rz = Dot(r, z);
            if (!(rz > 0))
                break;
            beta = k == 0 ? 0 : rz / was;
            Shares.Run(length, length, (from, to) =>
            {
                for (int i = from; i < to; i++)
                    p[i] = z[i] + (float)beta * p[i];
            });
            _matrix.Apply(p, q);
            double pq = Dot(p, q);
            if (!(pq > 0))
                break;
            alpha = rz / pq;
            tri[k * Lanczos + k] = 1 / alpha + (k == 0 ? 0 : beta / alphaWas);
            if (k > 0)
                tri[k * Lanczos + k - 1] = tri[(k - 1) * Lanczos + k] = Math.Sqrt(beta) / alphaWas;
            steps = k + 1;
            Shares.Run(length, length, (from, to) =>
            {
                for (int i = from; i < to; i++)
                    r[i] -= (float)alpha * q[i];
            });
        }

        return steps == 0 ? 1 : SmallEigen.Of(tri, Lanczos).Values.Max();
    }

    private static void Copy(float[] from, float[] to) => Shares.Run(from.Length, from.Length, (a, b) => from.AsSpan(a, b - a).CopyTo(to.AsSpan(a)));

    private static void Subtract(float[] a, float[] b, float[] to) => Shares.Run(a.Length, a.Length, (from, end) =>
    {
        int width = System.Numerics.Vector<float>.Count, i = from;
        for (; i + width <= end; i += width)
            (new System.Numerics.Vector<float>(a, i) - new System.Numerics.Vector<float>(b, i)).CopyTo(to, i);
        for (; i < end; i++)
            to[i] = a[i] - b[i];
    });

    private static double Dot(float[] a, float[] b) => Shares.Sum(a.Length, a.Length, (from, to) =>
    {
        double sum = 0;
        for (int i = from; i < to; i++)
            sum += (double)a[i] * b[i];
        return sum;
    });
}
