using System.Numerics;

namespace Ramwright.Solids;

/// <summary>What the iteration came to.</summary>
/// <param name="Iterations">Turns taken.</param>
/// <param name="Error">Estimate of the error in energy, as a share: the square root of the strain energy of the error over that of the answer.</param>
/// <param name="Energy">f · u, twice the strain energy, J.</param>
/// <param name="Residual">What is left of the forces, as a share.</param>
public sealed record Convergence(int Iterations, double Error, double Energy, double Residual);

/// <summary>
/// Conjugate gradients with a hierarchy before them. They stop on the error in energy, which is also that of the opening under the force: each turn lowers the energy of the error
/// by α (r·z), so what the last few turns gained bounds from below what was missing before them.
/// </summary>
/// <remarks>Z. Strakoš and P. Tichý, On error estimation in the conjugate gradient method and why it works in finite precision computations, ETNA 13 (2002); from memory.</remarks>
internal static class ConjugateGradients
{
    private const int Delay = 4, Most = 1500;

    /// <summary>Solves.</summary>
    /// <param name="apply">The matrix.</param>
    /// <param name="nearly">The hierarchy.</param>
    /// <param name="force">Right-hand side; it is used up.</param>
    /// <param name="movement">Gets the answer.</param>
    /// <param name="wanted">Error in energy, as a share.</param>
    /// <param name="advance">Told after each turn how far the error has come.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>Null where the hierarchy runs off, or does not come near in many turns.</returns>
    public static Convergence? Solve(
        Action<double[], double[]> apply, Action<float[], float[]> nearly, double[] force, double[] movement, double wanted,
        Action<double>? advance, CancellationToken stop)
    {
        int n = force.Length;
        double[] r = force, p = new double[n], q = new double[n];
        float[] rest = new float[n], z = new float[n];
        Array.Clear(movement);
        double first = Math.Sqrt(Dot(r, r)), energy = 0, rz = 0, alpha = 0, error = 1;
        if (first == 0)
            return new Convergence(0, 0, 0, 0);
        var gains = new List<double>();
        for (int turn = 1; ; turn++)
        {
            stop.ThrowIfCancellationRequested();
            Narrow(r, rest);
            nearly(rest, z);
            // z · (r − r before) in place of z · r: what single precision loses in the hierarchy does not build up
            double kept = turn == 1 ? 0 : -alpha * Dot(q, z) / rz;
            rz = Dot(r, z);
            if (!(rz > 0))
                return null;
            Combine(kept, p, z);
            apply(p, q);
            alpha = rz / Dot(p, q);
            if (!(alpha > 0))
                return null;
            Add(alpha, p, movement);
            Add(-alpha, q, r);
            gains.Add(alpha * rz);
            energy += alpha * rz;
            if (gains.Count <= Delay)
                continue;
            error = Math.Sqrt(gains.TakeLast(Delay).Sum() / energy);
            advance?.Invoke(error);
            if (error <= wanted)
                return new Convergence(turn, error, energy, Math.Sqrt(Dot(r, r)) / first);
            if (turn >= Most)
                return null;
        }
    }

    private static double Dot(double[] a, double[] b) => Shares.Sum(a.Length, a.Length, (from, to) =>
    {
        int width = Vector<double>.Count, i = from;
        Vector<double> sum = Vector<double>.Zero;
        for (; i + width <= to; i += width)
            sum += new Vector<double>(a, i) * new Vector<double>(b, i);
        double all = Vector.Sum(sum);
        for (; i < to; i++)
            all += a[i] * b[i];
        return all;
    });

    private static double Dot(double[] a, float[] b) => Shares.Sum(a.Length, a.Length, (from, to) =>
    {
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0;
        int i = from;
        for (; i + 4 <= to; i += 4)
            (s0, s1, s2, s3) = (s0 + a[i] * b[i], s1 + a[i + 1] * b[i + 1], s2 + a[i + 2] * b[i + 2], s3 + a[i + 3] * b[i + 3]);
        for (; i < to; i++)
            s0 += a[i] * b[i];
        return s0 + s1 + s2 + s3;
    });

    /// <summary>to += by × a.</summary>
    private static void Add(double by, double[] a, double[] to) => Shares.Run(a.Length, a.Length, (from, end) =>
    {
        int width = Vector<double>.Count, i = from;
        for (; i + width <= end; i += width)
            (new Vector<double>(to, i) + by * new Vector<double>(a, i)).CopyTo(to, i);
        for (; i < end; i++)
            to[i] += by * a[i];
    });

    /// <summary>p = z + kept × p.</summary>
    private static void Combine(double kept, double[] p, float[] z) => Shares.Run(p.Length, p.Length, (from, end) =>
    {
        for (int i = from; i < end; i++)
            p[i] = z[i] + kept * p[i];
    });

    private static void Narrow(double[] from, float[] to) => Shares.Run(to.Length, to.Length, (start, end) =>
    {
        for (int i = start; i < end; i++)
            to[i] = (float)from[i];
    });
}
