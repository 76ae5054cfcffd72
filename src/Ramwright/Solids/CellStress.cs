using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>Strains of a cell as sums of 1, ξ, η, ζ and their products, from the movements of its corners; what the incompatible modes relieve is taken out, as in <see cref="CellStiffness"/>.</summary>
internal static class CellStress
{
    /// <summary>Stress at a point of a cell, each coordinate from −1 to 1.</summary>
    public static StressState At(in CellKind kind, ReadOnlySpan<Vector> corners, double xi, double eta, double zeta)
    {
        Span<double> X = stackalloc double[8], Y = stackalloc double[8], Z = stackalloc double[8];
        for (int term = 0; term < 8; term++)
            for (int n = 0; n < 8; n++)
            {
                double s = CellStiffness.Sign(term, n) / 8.0;
                X[term] += s * corners[n].X;
                Y[term] += s * corners[n].Y;
                Z[term] += s * corners[n].Z;
            }

        (double gx, double gy, double gz, double nu) = (2 / kind.X, 2 / kind.Y, 2 / kind.Z, kind.Nu);
        double relief = -nu / (1 - nu);
        double xx = gx * (X[1] + X[3] * eta + X[5] * zeta + X[7] * eta * zeta) + relief * xi * (gy * Y[3] + gz * Z[5]);
        double yy = gy * (Y[2] + Y[3] * xi + Y[6] * zeta + Y[7] * xi * zeta) + relief * eta * (gx * X[3] + gz * Z[6]);
        double zz = gz * (Z[4] + Z[5] * xi + Z[6] * eta + Z[7] * xi * eta) + relief * zeta * (gx * X[5] + gy * Y[6]);
        double xy = gy * X[2] + gx * Y[1] + (gy * X[6] + gx * Y[5]) * zeta + gy * X[7] * xi * zeta + gx * Y[7] * eta * zeta;
        double xz = gz * X[4] + gx * Z[1] + (gz * X[6] + gx * Z[3]) * eta + gz * X[7] * xi * eta + gx * Z[7] * eta * zeta;
        double yz = gz * Y[4] + gy * Z[2] + (gz * Y[5] + gy * Z[3]) * xi + gz * Y[7] * xi * eta + gy * Z[7] * xi * zeta;

        double G = kind.E / (2 * (1 + nu)), lambda = kind.E * nu / ((1 + nu) * (1 - 2 * nu)) * (xx + yy + zz);
        return new StressState(lambda + 2 * G * xx, lambda + 2 * G * yy, lambda + 2 * G * zz, G * xy, G * xz, G * yz);
    }
}
