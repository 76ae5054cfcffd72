using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ramwright.Frame;

/// <summary>The two loops in which the solver spends its time. Same result on every machine: no fused multiply-add.</summary>
internal static class Products
{
    /// <summary>Σ aᵢ bᵢ over the length of <paramref name="a"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        b = b[..a.Length];
        ref double pa = ref MemoryMarshal.GetReference(a);
        ref double pb = ref MemoryMarshal.GetReference(b);
        nint i = 0, n = a.Length;
        double sum = 0;
        if (n >= 4)
        {
            Vector256<double> s = default;
            for (; i <= n - 4; i += 4)
                s += Vector256.LoadUnsafe(ref Unsafe.Add(ref pa, i)) * Vector256.LoadUnsafe(ref Unsafe.Add(ref pb, i));
            sum = Vector256.Sum(s);
        }
        for (; i < n; i++)
            sum += Unsafe.Add(ref pa, i) * Unsafe.Add(ref pb, i);
        return sum;
    }

    /// <summary>yᵢ ← yᵢ − s aᵢ over the length of <paramref name="a"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Subtract(double s, ReadOnlySpan<double> a, Span<double> y)
    {
        y = y[..a.Length];
        ref double pa = ref MemoryMarshal.GetReference(a);
        ref double py = ref MemoryMarshal.GetReference(y);
        nint i = 0, n = a.Length;
        Vector256<double> vs = Vector256.Create(s);
        for (; i <= n - 4; i += 4)
            (Vector256.LoadUnsafe(ref Unsafe.Add(ref py, i)) - vs * Vector256.LoadUnsafe(ref Unsafe.Add(ref pa, i)))
                .StoreUnsafe(ref Unsafe.Add(ref py, i));
        for (; i < n; i++)
            Unsafe.Add(ref py, i) -= s * Unsafe.Add(ref pa, i);
    }
}
