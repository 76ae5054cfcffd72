using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>
/// The same frames by another road: the textbook's 12 × 12 matrix, springs as further unknowns, transformation by full
/// matrices, and a dense solve by a library.
/// </summary>
public class DenseSolveTest
{
    [Fact]
    public void SparseAndDenseAgree() => RandomFrame.Gen.Sample(f =>
    {
        LoadCase load = f.First with { OnMembers = [] };
        FrameSolution s = FrameSolver.Solve(f.Model, [load])[0];
        (Matrix<double> K, Vector<double> F) = Dense(f.Model, load);
        Vector<double> expected = Solve(K, F);

        Vector<double> d = Vector<double>.Build.Dense(F.Count);
        for (int i = 0; i < f.Model.Nodes.Count; i++)
        {
            Vector u = s.Displacement(i), t = s.Rotation(i);
            d.SetSubVector(6 * i, 6, Vector<double>.Build.Dense([u.X, u.Y, u.Z, t.X, t.Y, t.Z]));
        }
        double size = Math.Max(expected.AbsoluteMaximum(), 1e-12);      // a load on a held node moves nothing
        Near.Absolute(0, (d - expected).AbsoluteMaximum() / size, 1e-9, "largest difference, share of the largest movement");
        // What the other road's equations leave over does not depend on how near the frame is to being loose.
        Vector<double> left = K * d - F, terms = K.PointwiseAbs() * d.PointwiseAbs();
        for (int i = 0; i < F.Count; i++)
            Near.Absolute(0, left[i] / Math.Max(terms[i], 1e-6), 1e-10, $"equation {i}, left over, share of its terms");
        return true;
    }, iter: 200, threads: 1);

    private static (Matrix<double> K, Vector<double> F) Dense(FrameModel model, LoadCase load)
    {
        int n = 6 * model.Nodes.Count;
        Matrix<double> K = Matrix<double>.Build.Dense(n, n);
        for (int i = 0; i < model.Members.Count; i++)
        {
            FrameMember m = model.Members[i];
            MemberAxes axes = MemberAxes.Of(model, i);
            Matrix<double> T = Transformation(m, axes);
            Matrix<double> k = T.TransposeThisAndMultiply(WithSprings(Przemieniecki(m, axes.Length), m)) * T;
            int[] at = [.. Enumerable.Range(6 * m.From, 6), .. Enumerable.Range(6 * m.To, 6)];
            for (int r = 0; r < 12; r++)
                for (int c = 0; c < 12; c++)
                    K[at[r], at[c]] += k[r, c];
        }
        Vector<double> F = Vector<double>.Build.Dense(n);
        foreach (NodalLoad p in load.OnNodes)
        {
            double[] six = [p.Force.X, p.Force.Y, p.Force.Z, p.Moment.X, p.Moment.Y, p.Moment.Z];
            for (int k = 0; k < 6; k++)
                F[6 * p.Node + k] += six[k];
        }
        foreach (Support s in model.Supports)
        {
            bool[] held = [s.Ux, s.Uy, s.Uz, s.Rx, s.Ry, s.Rz];
            for (int k = 0; k < 6; k++)
                if (held[k])
                {
                    int at = 6 * s.Node + k;
                    K.ClearRow(at);
                    K.ClearColumn(at);
                    K[at, at] = 1e9;
                    F[at] = 0;
                }
        }
        return (K, F);
    }

    private static Vector<double> Solve(Matrix<double> K, Vector<double> F)
    {
        // Rotations are scaled by 0.1 m so that the general elimination pivots sensibly.
        Matrix<double> D = Matrix<double>.Build.DenseOfDiagonalVector(Vector<double>.Build.Dense(F.Count, i => i % 6 < 3 ? 1 : 10));
        return D * (D * K * D).LU().Solve(D * F);
    }

    /// <summary>Przemieniecki, Theory of Matrix Structural Analysis (1968), eq. 5.116, from memory.</summary>
    private static Matrix<double> Przemieniecki(FrameMember m, double L)
    {
        SectionProperties s = m.Section;
        double E = m.E, G = m.G;
        double Py = 12 * E * s.Iz / (G * s.Asy * L * L), Pz = 12 * E * s.Iy / (G * s.Asz * L * L);
        var k = Matrix<double>.Build.Dense(12, 12);
        void Set(int r, int c, double v) => k[r - 1, c - 1] = k[c - 1, r - 1] = v;
        Set(1, 1, E * s.A / L);
        Set(7, 7, E * s.A / L);
        Set(7, 1, -E * s.A / L);
        Set(4, 4, G * s.It / L);
        Set(10, 10, G * s.It / L);
        Set(10, 4, -G * s.It / L);
        double z3 = 12 * E * s.Iz / (L * L * L * (1 + Py)), z2 = 6 * E * s.Iz / (L * L * (1 + Py));
        Set(2, 2, z3);
        Set(8, 8, z3);
        Set(8, 2, -z3);
        Set(6, 2, z2);
        Set(12, 2, z2);
        Set(8, 6, -z2);
        Set(12, 8, -z2);
        Set(6, 6, (4 + Py) * E * s.Iz / (L * (1 + Py)));
        Set(12, 12, (4 + Py) * E * s.Iz / (L * (1 + Py)));
        Set(12, 6, (2 - Py) * E * s.Iz / (L * (1 + Py)));
        double y3 = 12 * E * s.Iy / (L * L * L * (1 + Pz)), y2 = 6 * E * s.Iy / (L * L * (1 + Pz));
        Set(3, 3, y3);
        Set(9, 9, y3);
        Set(9, 3, -y3);
        Set(5, 3, -y2);
        Set(11, 3, -y2);
        Set(9, 5, y2);
        Set(11, 9, y2);
        Set(5, 5, (4 + Pz) * E * s.Iy / (L * (1 + Pz)));
        Set(11, 11, (4 + Pz) * E * s.Iy / (L * (1 + Pz)));
        Set(11, 5, (2 - Pz) * E * s.Iy / (L * (1 + Pz)));
        return k;
    }

    /// <summary>Puts every spring in series, the beam's own end as a further unknown that is condensed out.</summary>
    private static Matrix<double> WithSprings(Matrix<double> k, FrameMember m)
    {
        EndFixity a = m.FixityFrom, b = m.FixityTo;
        double[] spring = [a.N, a.Vy, a.Vz, a.T, a.My, a.Mz, b.N, b.Vy, b.Vz, b.T, b.My, b.Mz];
        for (int i = 0; i < 12; i++)
        {
            if (double.IsPositiveInfinity(spring[i]))
                continue;
            Vector<double> column = k.Column(i);
            double pivot = column[i] + spring[i];
            k -= column.OuterProduct(column) / pivot;
            for (int j = 0; j < 12; j++)
                k[i, j] = k[j, i] = spring[i] * (j == i ? column[i] : column[j]) / pivot;
        }
        return k;
    }

    private static Matrix<double> Transformation(FrameMember m, MemberAxes axes)
    {
        var T = Matrix<double>.Build.Dense(12, 12);
        foreach ((int at, Vector r) in new[] { (0, m.ArmFrom), (6, m.ArmTo) })
        {
            Matrix<double> R = Matrix<double>.Build.DenseOfRowArrays(
                [axes.X.X, axes.X.Y, axes.X.Z], [axes.Y.X, axes.Y.Y, axes.Y.Z], [axes.Z.X, axes.Z.Y, axes.Z.Z]);
            // θ × r as a matrix on θ.
            Matrix<double> arm = Matrix<double>.Build.DenseOfRowArrays([0, r.Z, -r.Y], [-r.Z, 0, r.X], [r.Y, -r.X, 0]);
            T.SetSubMatrix(at, at, R);
            T.SetSubMatrix(at, at + 3, R * arm);
            T.SetSubMatrix(at + 3, at + 3, R);
        }
        return T;
    }
}
