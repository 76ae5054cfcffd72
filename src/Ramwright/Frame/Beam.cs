using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>
/// The beam element: its axes, arms, and the four ways it deforms independently: stretch, twist, and bending in its
/// x-y and x-z planes. In the x-z plane the rotation that goes with w is −θy, and the moment −My.
/// </summary>
internal readonly struct Beam
{
    /// <summary>Independent deformations: stretch, twist, turn against the chord in x-y at each end, in x-z at each end.</summary>
    public const int Modes = 6;
    /// <summary>Movements of its two nodes: ux uy uz rx ry rz of the first, then of the second.</summary>
    public const int Moves = 12;

    public readonly int From, To;
    public readonly MemberAxes Axes;
    public readonly Vector ArmFrom, ArmTo;
    public readonly Bar Stretch, Twist;
    public readonly BendingPlane XY, XZ;

    public Beam(FrameMember m, MemberAxes axes)
    {
        (From, To, Axes, ArmFrom, ArmTo) = (m.From, m.To, axes, m.ArmFrom, m.ArmTo);
        EndFixity f = m.FixityFrom, t = m.FixityTo;
        double L = axes.Length;
        Stretch = new Bar(L, m.E * m.Section.A, f.N, t.N);
        Twist = new Bar(L, m.G * m.Section.It, f.T, t.T);
        XY = new BendingPlane(L, m.E * m.Section.Iz, m.G * m.Section.Asy, f.Vy, f.Mz, t.Vy, t.Mz);
        XZ = new BendingPlane(L, m.E * m.Section.Iy, m.G * m.Section.Asz, f.Vz, f.My, t.Vz, t.My);
    }

    /// <summary>Fills B, 6 × 12 row by row: deformations from the movements of the nodes, global axes.</summary>
    /// <remarks>An arm r moves the beam's end by u + θ × r, so a part p·u brings (r × p)·θ with it.</remarks>
    public void Compatibility(Span<double> B)
    {
        (Vector x, Vector y, Vector z, double L) = (Axes.X, Axes.Y, Axes.Z, Axes.Length);
        Row(B, 0, -x, default, x, default);
        Row(B, 1, default, -x, default, x);
        Vector yL = y / L, zL = z / L;
        Row(B, 2, yL, z, -yL, default);
        Row(B, 3, yL, default, -yL, z);
        Row(B, 4, zL, -y, -zL, default);
        Row(B, 5, zL, default, -zL, -y);
    }

    private void Row(Span<double> B, int row, Vector u1, Vector t1, Vector u2, Vector t2)
    {
        Span<double> b = B.Slice(row * Moves, Moves);
        t1 += ArmFrom.Cross(u1);
        t2 += ArmTo.Cross(u2);
        (b[0], b[1], b[2], b[3], b[4], b[5]) = (u1.X, u1.Y, u1.Z, t1.X, t1.Y, t1.Z);
        (b[6], b[7], b[8], b[9], b[10], b[11]) = (u2.X, u2.Y, u2.Z, t2.X, t2.Y, t2.Z);
    }

    /// <summary>Forces of the six modes, s = K e; both 6 long and not the same.</summary>
    public void Resist(ReadOnlySpan<double> e, Span<double> s)
    {
        s[0] = Stretch.K * e[0];
        s[1] = Twist.K * e[1];
        s[2] = XY.K11 * e[2] + XY.K12 * e[3];
        s[3] = XY.K12 * e[2] + XY.K22 * e[3];
        s[4] = XZ.K11 * e[4] + XZ.K12 * e[5];
        s[5] = XZ.K12 * e[4] + XZ.K22 * e[5];
    }

    /// <summary>Stiffness Bᵀ K B, 12 × 12 row by row, lower triangle only; <paramref name="scratch"/> is 72 long.</summary>
    public void Stiffness(ReadOnlySpan<double> B, Span<double> k, Span<double> scratch)
    {
        Span<double> e = stackalloc double[Modes], s = stackalloc double[Modes];
        for (int j = 0; j < Moves; j++)
        {
            for (int r = 0; r < Modes; r++)
                e[r] = B[r * Moves + j];
            Resist(e, s);
            s.CopyTo(scratch[(j * Modes)..]);
        }
        for (int i = 0; i < Moves; i++)
        {
            double b0 = B[i], b1 = B[Moves + i], b2 = B[2 * Moves + i];
            double b3 = B[3 * Moves + i], b4 = B[4 * Moves + i], b5 = B[5 * Moves + i];
            for (int j = 0; j <= i; j++)
            {
                ReadOnlySpan<double> c = scratch.Slice(j * Modes, Modes);
                k[i * Moves + j] = b0 * c[0] + b1 * c[1] + b2 * c[2] + b3 * c[3] + b4 * c[4] + b5 * c[5];
            }
        }
    }

    /// <summary>Adds the forces by which still nodes hold the beam under a load, own axes, six for each end.</summary>
    public void AddFixedEnds(in BeamLoad q, Span<double> f)
    {
        (double N1, double N2) = Stretch.FixedEnds(q.X, q.From, q.To);
        (double Y1, double Mz1, double Y2, double Mz2) = XY.FixedEnds(q.Y, q.From, q.To);
        (double Z1, double My1, double Z2, double My2) = XZ.FixedEnds(q.Z, q.From, q.To);
        f[0] += N1;
        f[1] += Y1;
        f[2] += Z1;
        f[4] -= My1;
        f[5] += Mz1;
        f[6] += N2;
        f[7] += Y2;
        f[8] += Z2;
        f[10] -= My2;
        f[11] += Mz2;
    }

    /// <summary>The six forces on the beam's first end, own axes, from the forces of its modes.</summary>
    public void FirstEnd(ReadOnlySpan<double> s, Span<double> f)
    {
        double L = Axes.Length;
        f[0] = -s[0];
        f[1] = (s[2] + s[3]) / L;
        f[2] = (s[4] + s[5]) / L;
        f[3] = -s[1];
        f[4] = -s[4];
        f[5] = s[2];
    }

    /// <summary>Takes end forces in own axes from what acts on the two nodes, global axes, six numbers each.</summary>
    public void TakeFromNodes(ReadOnlySpan<double> f, Span<double> onFrom, Span<double> onTo)
    {
        Take(f[..6], ArmFrom, onFrom);
        Take(f[6..], ArmTo, onTo);
    }

    private void Take(ReadOnlySpan<double> f, Vector arm, Span<double> on)
    {
        Vector F = Axes.ToGlobal(f[0], f[1], f[2]);
        Vector M = Axes.ToGlobal(f[3], f[4], f[5]) + arm.Cross(F);
        on[0] -= F.X;
        on[1] -= F.Y;
        on[2] -= F.Z;
        on[3] -= M.X;
        on[4] -= M.Y;
        on[5] -= M.Z;
    }
}
