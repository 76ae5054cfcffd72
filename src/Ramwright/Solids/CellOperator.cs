using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Ramwright.Solids;

/// <summary>
/// The stiffness of a mesh, never put together: forces are gathered cell by cell from the eight families of each kind. Four numbers stand for each node, the last is nothing.
/// </summary>
/// <typeparam name="TLane">How a node's numbers are worked on.</typeparam>
/// <typeparam name="TNumber">Their precision.</typeparam>
internal sealed class CellOperator<TLane, TNumber> where TLane : struct, ILane<TLane, TNumber> where TNumber : unmanaged
{
    private readonly int[] _nodes, _kind, _chunks;
    private readonly TNumber[] _families;
    private readonly int[] _held;

    /// <summary>Prepares.</summary>
    /// <param name="mesh">The cells.</param>
    /// <param name="families">Families of all kinds.</param>
    /// <param name="held">Places in a vector that do not move.</param>
    public CellOperator(SolidMesh mesh, TNumber[] families, int[] held)
    {
        (_nodes, _kind, _families, _held) = (mesh.CellNodes, mesh.CellKind, families, held);
        _chunks = Shares.OfLayers(mesh.Layers);
    }

    /// <summary>Forces of movements; what is held takes none.</summary>
    public void Apply(TNumber[] movement, TNumber[] force)
    {
        Shares.Run(force.Length, force.Length, (from, to) => force.AsSpan(from, to - from).Clear());
        // chunks of one turn share no node
        for (int turn = 0; turn < 2; turn++)
        {
            int first = turn;
            int count = (_chunks.Length - 1 - turn + 1) / 2;
            Shares.Each(count, _nodes.Length / 2, i => Cells(movement, force, _chunks[first + 2 * i], _chunks[first + 2 * i + 1]));
        }

        foreach (int at in _held)
            force[at] = default;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Cells(TNumber[] movement, TNumber[] force, int from, int to)
    {
        ref TNumber u = ref MemoryMarshal.GetArrayDataReference(movement);
        ref TNumber f = ref MemoryMarshal.GetArrayDataReference(force);
        ref TNumber families = ref MemoryMarshal.GetArrayDataReference(_families);
        ref int nodes = ref MemoryMarshal.GetArrayDataReference(_nodes);
        ref int kind = ref MemoryMarshal.GetArrayDataReference(_kind);
        for (int c = from; c < to; c++)
        {
            ref int n = ref Unsafe.Add(ref nodes, c * 8);
            int n0 = n * 4, n1 = Unsafe.Add(ref n, 1) * 4, n2 = Unsafe.Add(ref n, 2) * 4, n3 = Unsafe.Add(ref n, 3) * 4;
            int n4 = Unsafe.Add(ref n, 4) * 4, n5 = Unsafe.Add(ref n, 5) * 4, n6 = Unsafe.Add(ref n, 6) * 4, n7 = Unsafe.Add(ref n, 7) * 4;
            TLane v0 = TLane.Load(ref u, n0), v1 = TLane.Load(ref u, n1), v2 = TLane.Load(ref u, n2), v3 = TLane.Load(ref u, n3);
            TLane v4 = TLane.Load(ref u, n4), v5 = TLane.Load(ref u, n5), v6 = TLane.Load(ref u, n6), v7 = TLane.Load(ref u, n7);

            // from corners to terms
            (v0, v1) = (v0 + v1, v1 - v0);
            (v2, v3) = (v2 + v3, v3 - v2);
            (v4, v5) = (v4 + v5, v5 - v4);
            (v6, v7) = (v6 + v7, v7 - v6);
            (v0, v2) = (v0 + v2, v2 - v0);
            (v1, v3) = (v1 + v3, v3 - v1);
            (v4, v6) = (v4 + v6, v6 - v4);
            (v5, v7) = (v5 + v7, v7 - v5);
            (v0, v4) = (v0 + v4, v4 - v0);
            (v1, v5) = (v1 + v5, v5 - v1);
            (v2, v6) = (v2 + v6, v6 - v2);
            (v3, v7) = (v3 + v7, v7 - v3);

            int k = Unsafe.Add(ref kind, c) * CellStiffness.Numbers;
            TLane g0 = Family(TLane.Mix(v1, v2, v4), ref families, k);
            TLane g1 = Family(TLane.Mix(v0, v3, v5), ref families, k + 12);
            TLane g2 = Family(TLane.Mix(v3, v0, v6), ref families, k + 24);
            TLane g3 = Family(TLane.Mix(v2, v1, v7), ref families, k + 36);
            TLane g4 = Family(TLane.Mix(v5, v6, v0), ref families, k + 48);
            TLane g5 = Family(TLane.Mix(v4, v7, v1), ref families, k + 60);
            TLane g6 = Family(TLane.Mix(v7, v4, v2), ref families, k + 72);
            TLane g7 = Family(TLane.Mix(v6, v5, v3), ref families, k + 84);

            v0 = TLane.Mix(g1, g2, g4);
            v1 = TLane.Mix(g0, g3, g5);
            v2 = TLane.Mix(g3, g0, g6);
            v3 = TLane.Mix(g2, g1, g7);
            v4 = TLane.Mix(g5, g6, g0);
            v5 = TLane.Mix(g4, g7, g1);
            v6 = TLane.Mix(g7, g4, g2);
            v7 = TLane.Mix(g6, g5, g3);

            // and back
            (v0, v4) = (v0 - v4, v0 + v4);
            (v1, v5) = (v1 - v5, v1 + v5);
            (v2, v6) = (v2 - v6, v2 + v6);
            (v3, v7) = (v3 - v7, v3 + v7);
            (v0, v2) = (v0 - v2, v0 + v2);
            (v1, v3) = (v1 - v3, v1 + v3);
            (v4, v6) = (v4 - v6, v4 + v6);
            (v5, v7) = (v5 - v7, v5 + v7);
            (v0, v1) = (v0 - v1, v0 + v1);
            (v2, v3) = (v2 - v3, v2 + v3);
            (v4, v5) = (v4 - v5, v4 + v5);
            (v6, v7) = (v6 - v7, v6 + v7);
            TLane.Store(TLane.Load(ref f, n0) + v0, ref f, n0);
            TLane.Store(TLane.Load(ref f, n1) + v1, ref f, n1);
            TLane.Store(TLane.Load(ref f, n2) + v2, ref f, n2);
            TLane.Store(TLane.Load(ref f, n3) + v3, ref f, n3);
            TLane.Store(TLane.Load(ref f, n4) + v4, ref f, n4);
            TLane.Store(TLane.Load(ref f, n5) + v5, ref f, n5);
            TLane.Store(TLane.Load(ref f, n6) + v6, ref f, n6);
            TLane.Store(TLane.Load(ref f, n7) + v7, ref f, n7);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLane Family(TLane a, ref TNumber families, int at) => TLane.MultiplyAdd(TLane.Load(ref families, at), a,
        TLane.MultiplyAdd(TLane.Load(ref families, at + 4), TLane.Next(a), TLane.Load(ref families, at + 8) * TLane.Before(a)));
}
