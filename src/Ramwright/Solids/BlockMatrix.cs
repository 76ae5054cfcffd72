using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ramwright.Solids;

/// <summary>What a level of the hierarchy does with a vector.</summary>
internal interface ILevelMatrix
{
    /// <summary>Forces of movements.</summary>
    void Apply(float[] movement, float[] force);
}

/// <summary>The mesh itself as a level.</summary>
internal sealed class CellMatrix(CellOperator<SingleLane, float> cells) : ILevelMatrix
{
    public void Apply(float[] movement, float[] force) => cells.Apply(movement, force);
}

/// <summary>A matrix of blocks of six by six in single precision, block by block in columns of eight.</summary>
internal sealed class BlockMatrix : ILevelMatrix
{
    private readonly int[] _start, _columns;
    private readonly float[] _blocks;

    public BlockMatrix(BlockRows rows)
    {
        (_start, _columns) = (rows.Start, rows.Columns);
        _blocks = new float[rows.Blocks.Length];
        // the block of the mirrored place, read by rows, is this one read by columns
        Shares.Run(_columns.Length, _blocks.Length, (from, to) =>
        {
            for (int e = from; e < to; e++)
                for (int i = 0; i < 6; i++)
                    for (int j = 0; j < 6; j++)
                        _blocks[e * BlockRows.Block + j * Eight.Width + i] = (float)rows.Blocks[e * BlockRows.Block + i * Eight.Width + j];
        });
    }

    public void Apply(float[] movement, float[] force) =>
        Shares.Run(_start.Length - 1, _blocks.Length / 8, (from, to) => Rows(movement, force, from, to));

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Rows(float[] movement, float[] force, int from, int to)
    {
        ref float u = ref MemoryMarshal.GetArrayDataReference(movement);
        ref float f = ref MemoryMarshal.GetArrayDataReference(force);
        ref float blocks = ref MemoryMarshal.GetArrayDataReference(_blocks);
        for (int i = from; i < to; i++)
        {
            Vector256<float> even = Vector256<float>.Zero, odd = Vector256<float>.Zero;
            for (int e = _start[i]; e < _start[i + 1]; e++)
            {
                ref float x = ref Unsafe.Add(ref u, _columns[e] * Eight.Width);
                ref float k = ref Unsafe.Add(ref blocks, e * BlockRows.Block);
                even = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref k), Vector256.Create(x), even);
                odd = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref k, 8), Vector256.Create(Unsafe.Add(ref x, 1)), odd);
                even = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref k, 16), Vector256.Create(Unsafe.Add(ref x, 2)), even);
                odd = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref k, 24), Vector256.Create(Unsafe.Add(ref x, 3)), odd);
                even = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref k, 32), Vector256.Create(Unsafe.Add(ref x, 4)), even);
                odd = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref k, 40), Vector256.Create(Unsafe.Add(ref x, 5)), odd);
            }

            (even + odd).StoreUnsafe(ref f, (nuint)(i * Eight.Width));
        }
    }
}
