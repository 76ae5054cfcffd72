using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ramwright.Solids;

/// <summary>Rows of six numbers kept in eight places, so that they are worked on at once.</summary>
internal static class Eight
{
    /// <summary>Places of a row.</summary>
    public const int Width = 8;

    /// <summary>Adds a multiple of a row of doubles to another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Add(double by, ref double row, ref double to)
    {
        var b = Vector256.Create(by);
        Vector256.MultiplyAddEstimate(b, Vector256.LoadUnsafe(ref row), Vector256.LoadUnsafe(ref to)).StoreUnsafe(ref to);
        Vector256.MultiplyAddEstimate(b, Vector256.LoadUnsafe(ref row, 4), Vector256.LoadUnsafe(ref to, 4)).StoreUnsafe(ref to, 4);
    }

    /// <summary>out += block × rows: a block of r by r numbers, each of its rows in eight places, on r rows of eight.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Multiply(int r, double[] block, int at, float[] rows, int rowsAt, double[] to, int toAt)
    {
        ref double a = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(block), at);
        ref float p = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(rows), rowsAt);
        ref double o = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(to), toAt);
        for (int i = 0; i < r; i++)
        {
            ref double oi = ref Unsafe.Add(ref o, i * Width);
            Vector256<double> low = Vector256.LoadUnsafe(ref oi), high = Vector256.LoadUnsafe(ref oi, 4);
            for (int k = 0; k < r; k++)
            {
                var by = Vector256.Create(Unsafe.Add(ref a, i * Width + k));
                (Vector256<double> l, Vector256<double> h) = Vector256.Widen(Vector256.LoadUnsafe(ref p, (nuint)(k * Width)));
                low = Vector256.MultiplyAddEstimate(by, l, low);
                high = Vector256.MultiplyAddEstimate(by, h, high);
            }

            low.StoreUnsafe(ref oi);
            high.StoreUnsafe(ref oi, 4);
        }
    }

    /// <summary>out += left' × right: r rows of eight each way give a block of six rows of eight.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void MultiplyTurned(int r, float[] left, int leftAt, double[] right, int rightAt, double[] to, int toAt)
    {
        ref float p = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(left), leftAt);
        ref double q = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(right), rightAt);
        ref double o = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(to), toAt);
        for (int m = 0; m < 6; m++)
        {
            ref double om = ref Unsafe.Add(ref o, m * Width);
            Vector256<double> low = Vector256.LoadUnsafe(ref om), high = Vector256.LoadUnsafe(ref om, 4);
            for (int k = 0; k < r; k++)
            {
                var by = Vector256.Create((double)Unsafe.Add(ref p, k * Width + m));
                low = Vector256.MultiplyAddEstimate(by, Vector256.LoadUnsafe(ref q, (nuint)(k * Width)), low);
                high = Vector256.MultiplyAddEstimate(by, Vector256.LoadUnsafe(ref q, (nuint)(k * Width + 4)), high);
            }

            low.StoreUnsafe(ref om);
            high.StoreUnsafe(ref om, 4);
        }
    }
}
