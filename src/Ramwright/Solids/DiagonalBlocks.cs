using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ramwright.Solids;

/// <summary>The inverses of the blocks on the diagonal, one for each bundle of nodes, in columns; a way that meets no stiffness is left alone.</summary>
internal sealed class DiagonalBlocks
{
    private const double Nothing = 1e-7;
    private readonly int _size, _stride;
    private readonly int[] _many, _at;
    private readonly float[] _large;

    /// <summary>Blocks in columns, each of <see cref="_stride"/> places.</summary>
    private readonly float[] _inverse;

    /// <summary>Makes room.</summary>
    /// <param name="size">Movements of a node.</param>
    /// <param name="nodes">Nodes.</param>
    /// <param name="bundles">Which nodes stand together in a block; single ones keep their places in one array, and are worked on fast.</param>
    public DiagonalBlocks(int size, int nodes, Bundles bundles)
    {
        (_size, _stride, Bundles) = (size, size == 3 ? 4 : Eight.Width, bundles);
        _inverse = new float[nodes * size * _stride];
        _many = [.. Enumerable.Range(0, bundles.Count).Where(b => bundles.Nodes(b).Length > 1)];
        _at = new int[bundles.Count];
        int next = 0;
        foreach (int b in _many)
        {
            _at[b] = next;
            next = checked(next + bundles.Nodes(b).Length * bundles.Nodes(b).Length * size * _stride);
        }

        _large = new float[next];
    }

    /// <summary>Which nodes stand together.</summary>
    public Bundles Bundles { get; }

    /// <summary>Movements of the largest bundle.</summary>
    public const int Room = 6 * Bundles.Most;

    /// <summary>Takes in the block of a bundle: square, as many rows as its nodes have movements; it is used up.</summary>
    public void Set(int bundle, Span<double> block)
    {
        int n = Bundles.Nodes(bundle).Length, all = n * _size;
        Span<double> inverse = new double[all * all];
        Invert(all, block, inverse);
        Span<float> to = n == 1 ? _inverse.AsSpan(Bundles.Nodes(bundle)[0] * _size * _stride, _size * _stride) : _large.AsSpan(_at[bundle], all * n * _stride);
        for (int i = 0; i < all; i++)
            for (int j = 0; j < all; j++)
                to[j * n * _stride + i / _size * _stride + i % _size] = (float)inverse[i * all + j];
    }

    /// <summary>The same in double precision, for a row of blocks of each node of a bundle: rows = −by × inverse × rows. Nodes follow one another, each with so many blocks.</summary>
    public void Smooth(int bundle, double by, double[] rows, int count)
    {
        int n = Bundles.Nodes(bundle).Length, all = n * _size, long1 = count * _size * Eight.Width;
        Span<double> column = stackalloc double[Room], x = stackalloc double[Room];
        ReadOnlySpan<float> d = n == 1 ? _inverse.AsSpan(Bundles.Nodes(bundle)[0] * _size * _stride, _size * _stride) : _large.AsSpan(_at[bundle], all * n * _stride);
        for (int e = 0; e < count; e++)
            for (int c = 0; c < 6; c++)
            {
                column.Clear();
                for (int j = 0; j < all; j++)
                {
                    double y = rows[j / _size * long1 + (e * _size + j % _size) * Eight.Width + c];
                    if (y == 0)
                        continue;
                    ReadOnlySpan<float> from = d.Slice(j * n * _stride, n * _stride);
                    for (int m = 0, i = 0; m < n; m++)
                        for (int k = 0; k < _size; k++, i++)
                            column[i] += from[m * _stride + k] * y;
                }

                for (int i = 0; i < all; i++)
                    rows[i / _size * long1 + (e * _size + i % _size) * Eight.Width + c] = -by * column[i];
            }
    }

    /// <summary>to = a × to + b × inverse × force; and adds that to the sum, where there is one.</summary>
    public void Step(float a, float b, float[] force, float[] to, float[]? sum)
    {
        // nodes of bundles have nothing on their own places, so that they get a × to only
        Shares.Run(to.Length / _stride, to.Length, (from, end) =>
        {
            if (_size == 3)
                Threes(a, b, force, to, sum, from, end);
            else
                Sixes(a, b, force, to, sum, from, end);
        });
        if (_many.Length > 0)
            Shares.Run(_many.Length, _large.Length, (from, end) => Many(b, force, to, sum, from, end));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Many(float b, float[] force, float[] to, float[]? sum, int from, int end)
    {
        Span<Vector128<float>> got = stackalloc Vector128<float>[2 * Bundles.Most];
        int quarters = _stride / 4;
        for (int m = from; m < end; m++)
        {
            ReadOnlySpan<int> nodes = Bundles.Nodes(_many[m]);
            int width = nodes.Length * quarters, at = _at[_many[m]];
            got[..width].Clear();
            ref float column = ref _large[at];
            foreach (int node in nodes)
                for (int c = 0; c < _size; c++)
                {
                    var by = Vector128.Create(force[node * _stride + c]);
                    for (int q = 0; q < width; q++)
                        got[q] = Vector128.MultiplyAddEstimate(Vector128.LoadUnsafe(ref column, (nuint)(4 * q)), by, got[q]);
                    column = ref Unsafe.Add(ref column, 4 * width);
                }

            for (int i = 0; i < nodes.Length; i++)
                for (int q = 0; q < quarters; q++)
                {
                    int place = nodes[i] * _stride + 4 * q;
                    Vector128<float> add = Vector128.Create(b) * got[i * quarters + q];
                    (Vector128.LoadUnsafe(ref to[place]) + add).StoreUnsafe(ref to[place]);
                    if (sum is not null)
                        (Vector128.LoadUnsafe(ref sum[place]) + add).StoreUnsafe(ref sum[place]);
                }
        }
    }

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
        Span<bool> dead = stackalloc bool[Room];
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
