using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ramwright.Solids;

/// <summary>Three numbers of a node and one that is nothing, worked on at once.</summary>
internal interface ILane<TSelf, TNumber> where TSelf : struct, ILane<TSelf, TNumber> where TNumber : unmanaged
{
    static abstract TSelf Load(ref TNumber from, int at);
    static abstract void Store(TSelf lane, ref TNumber to, int at);
    static abstract TSelf operator +(TSelf a, TSelf b);
    static abstract TSelf operator -(TSelf a, TSelf b);
    static abstract TSelf operator *(TSelf a, TSelf b);

    /// <summary>a b + c.</summary>
    static abstract TSelf MultiplyAdd(TSelf a, TSelf b, TSelf c);

    /// <summary>y, z, x.</summary>
    static abstract TSelf Next(TSelf a);

    /// <summary>z, x, y.</summary>
    static abstract TSelf Before(TSelf a);

    /// <summary>x of the first, y of the second, z of the third.</summary>
    static abstract TSelf Mix(TSelf x, TSelf y, TSelf z);
}

/// <summary>In double precision.</summary>
internal readonly struct DoubleLane(Vector256<double> v) : ILane<DoubleLane, double>
{
    private readonly Vector256<double> _v = v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane Load(ref double from, int at) => new(Vector256.LoadUnsafe(ref from, (nuint)at));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(DoubleLane lane, ref double to, int at) => lane._v.StoreUnsafe(ref to, (nuint)at);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane operator +(DoubleLane a, DoubleLane b) => new(a._v + b._v);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane operator -(DoubleLane a, DoubleLane b) => new(a._v - b._v);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane operator *(DoubleLane a, DoubleLane b) => new(a._v * b._v);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane MultiplyAdd(DoubleLane a, DoubleLane b, DoubleLane c) => new(Vector256.MultiplyAddEstimate(a._v, b._v, c._v));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane Next(DoubleLane a) => new(Vector256.Shuffle(a._v, Vector256.Create(1L, 2, 0, 3)));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane Before(DoubleLane a) => new(Vector256.Shuffle(a._v, Vector256.Create(2L, 0, 1, 3)));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleLane Mix(DoubleLane x, DoubleLane y, DoubleLane z) => new(Vector256.ConditionalSelect(
        Vector256.Create(-1L, 0, 0, 0).AsDouble(), x._v, Vector256.ConditionalSelect(Vector256.Create(0L, -1, 0, 0).AsDouble(), y._v, z._v)));
}

/// <summary>In single precision.</summary>
internal readonly struct SingleLane(Vector128<float> v) : ILane<SingleLane, float>
{
    private readonly Vector128<float> _v = v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Load(ref float from, int at) => new(Vector128.LoadUnsafe(ref from, (nuint)at));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(SingleLane lane, ref float to, int at) => lane._v.StoreUnsafe(ref to, (nuint)at);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator +(SingleLane a, SingleLane b) => new(a._v + b._v);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator -(SingleLane a, SingleLane b) => new(a._v - b._v);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane operator *(SingleLane a, SingleLane b) => new(a._v * b._v);
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane MultiplyAdd(SingleLane a, SingleLane b, SingleLane c) => new(Vector128.MultiplyAddEstimate(a._v, b._v, c._v));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Next(SingleLane a) => new(Vector128.Shuffle(a._v, Vector128.Create(1, 2, 0, 3)));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Before(SingleLane a) => new(Vector128.Shuffle(a._v, Vector128.Create(2, 0, 1, 3)));
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static SingleLane Mix(SingleLane x, SingleLane y, SingleLane z) => new(Vector128.ConditionalSelect(
        Vector128.Create(-1, 0, 0, 0).AsSingle(), x._v, Vector128.ConditionalSelect(Vector128.Create(0, -1, 0, 0).AsSingle(), y._v, z._v)));
}
