using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ramwright.Solids;

/// <summary>The inverses of the blocks on the diagonal, in columns; a way that meets no stiffness is left alone.</summary>
internal sealed class DiagonalBlocks
{
    private const double Nothing = 1e-7;
    private readonly int _size, _stride;

    /// <summary>Blocks in columns, each of <see cref="_stride"/> places.</summary>
    private readonly float[] _inverse;

    public DiagonalBlocks(int size, int nodes)
    {
        (_size, _stride) = (size, size == 3 ? 4 : Eight.Width);
        _inverse = new float[nodes * size * _stride];
    }

    /// <summary>Takes in the block of a node: rows of eight.</summary>
    public void Set(int node, ReadOnlySpan<double> block)
    {
        Span<double> a = stackalloc double[36], inverse = stackalloc double[36];
        for (int i = 0; i < _size; i++)
            for (int j = 0; j < _size; j++)
                a[i * _size + j] = block[i * Eight.Width + j];
        Invert(_size, a, inverse);
        Span<float> to = _inverse.AsSpan(node * _size * _stride, _size * _stride);
        for (int i = 0; i < _size; i++)
            for (int j = 0; j < _size; j++)
                to[j * _stride + i] = (float)inverse[i * _size + j];
    }

    /// <summary>The same in double precision, for a row of blocks: to = −by × inverse × rows.</summary>
    public void Smooth(int node, double by, double[] rows, int count)
    {
        Span<double> column = stackalloc double[6];
        ReadOnlySpan<float> d = _inverse.AsSpan(node * _size * _stride, _size * _stride);
        for (int e = 0; e < count; e++)
            for (int c = 0; c < 6; c++)
            {
                column.Clear();
                for (int j = 0; j < _size; j++)
                {
                    double x = rows[(e * _size + j) * Eight.Width + c];
                    for (int i = 0; i < _size; i++)
                        column[i] += d[j * _stride + i] * x;
                }

                for (int i = 0; i < _size; i++)
                    rows[(e * _size + i) * Eight.Width + c] = -by * column[i];
            }
    }

    /// <summary>to = a × to + b × inverse × force; and adds that to the sum, where there is one.</summary>
    public void Step(float a, float b, float[] force, float[] to, float[]? sum) => Shares.Run(to.Length / _stride, to.Length, (from, end) =>
    {
        if (_size == 3)
            Threes(a, b, force, to, sum, from, end);
        else
            Sixes(a, b, force, to, sum, from, end);
    });

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Threes(float a, float b, float[] force, float[] to, float[]? sum, int from, int end)
    {
        ref float d = ref MemoryMarshal.GetArrayDataReference(_inverse);
        ref float f = ref MemoryMarshal.GetArrayDataReference(force);
        ref float t = ref MemoryMarshal.GetArrayDataReference(to);
        Vector128<float> va = Vector128.Create(a), vb = Vector128.Create(b);
        for (int i = from; i < end; i++)
        {
            ref float fi = ref Unsafe.Add(ref f, 4 * i);
            nuint at = (nuint)(12 * i);
            Vector128<float> r = Vector128.LoadUnsafe(ref d, at) * Vector128.Create(fi);
            r = Vector128.MultiplyAddEstimate(Vector128.LoadUnsafe(ref d, at + 4), Vector128.Create(Unsafe.Add(ref fi, 1)), r);
            r = Vector128.MultiplyAddEstimate(Vector128.LoadUnsafe(ref d, at + 8), Vector128.Create(Unsafe.Add(ref fi, 2)), r);
            r = a == 0 ? vb * r : Vector128.MultiplyAddEstimate(va, Vector128.LoadUnsafe(ref t, (nuint)(4 * i)), vb * r);
            r.StoreUnsafe(ref t, (nuint)(4 * i));
            if (sum is not null)
            {
                ref float s = ref sum[4 * i];
                (Vector128.LoadUnsafe(ref s) + r).StoreUnsafe(ref s);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Sixes(float a, float b, float[] force, float[] to, float[]? sum, int from, int end)
    {
        ref float d = ref MemoryMarshal.GetArrayDataReference(_inverse);
        ref float f = ref MemoryMarshal.GetArrayDataReference(force);
        ref float t = ref MemoryMarshal.GetArrayDataReference(to);
        Vector256<float> va = Vector256.Create(a), vb = Vector256.Create(b);
        for (int i = from; i < end; i++)
        {
            ref float fi = ref Unsafe.Add(ref f, 8 * i);
            Vector256<float> r = Vector256<float>.Zero;
            for (int j = 0; j < 6; j++)
                r = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref d, (nuint)(48 * i + 8 * j)), Vector256.Create(Unsafe.Add(ref fi, j)), r);
            r = a == 0 ? vb * r : Vector256.MultiplyAddEstimate(va, Vector256.LoadUnsafe(ref t, (nuint)(8 * i)), vb * r);
            r.StoreUnsafe(ref t, (nuint)(8 * i));
            if (sum is not null)
            {
                ref float s = ref sum[8 * i];
                (Vector256.LoadUnsafe(ref s) + r).StoreUnsafe(ref s);
            }
        }
    }

    /// <summary>Inverse of a symmetric block, zero in rows and columns that meet no stiffness of their own.</summary>
    public static void Invert(int n, Span<double> a, Span<double> inverse)
    {
        Span<bool> dead = stackalloc bool[6];
        double stiffest = 0;
        inverse.Clear();
        for (int i = 0; i < n; i++)
            (stiffest, inverse[i * n + i]) = (Math.Max(stiffest, a[i * n + i]), 1);
        for (int p = 0; p < n; p++)
        {
            double pivot = a[p * n + p];
            if (!(pivot > Nothing * stiffest))
            {
                dead[p] = true;
                continue;
            }

            for (int j = 0; j < n; j++)
                (a[p * n + j], inverse[p * n + j]) = (a[p * n + j] / pivot, inverse[p * n + j] / pivot);
            for (int i = 0; i < n; i++)
            {
                double by = a[i * n + p];
                if (i == p || by == 0)
                    continue;
                for (int j = 0; j < n; j++)
                {
                    a[i * n + j] -= by * a[p * n + j];
                    inverse[i * n + j] -= by * inverse[p * n + j];
                }
            }
        }

        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++)
                if (dead[i] || dead[j])
                    inverse[i * n + j] = 0;
    }
}
