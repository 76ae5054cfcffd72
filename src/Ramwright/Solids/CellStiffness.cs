using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>
/// Stiffness of a right-angled cell of eight nodes with incompatible modes, condensed. A movement is written as a sum of 1, ξ, η, ζ, ξη, ... ξηζ; a right-angled cell
/// looks the same mirrored in each of its three middle planes, so that these 24 amounts fall into eight families of three that know nothing of each other.
/// </summary>
/// <remarks>
/// What linear strains would cost falsely, the nine incompatible modes 1 − ξ², 1 − η², 1 − ζ² relieve: stress along ξ that grows with ξ, and shear that grows with one of its own
/// two ways, come out as nothing. That leaves plane stress, E/(1 − ν²), for each of the linear terms, so that a cell bends as a beam does.
/// All integrals are exact, and what two points of Gauss along each edge give.
/// </remarks>
internal static class CellStiffness
{
    public static readonly Citation Source = new("R. L. Taylor, P. J. Beresford and E. L. Wilson, A non-conforming element for stress analysis, Int. J. Numer. Meth. Engng 10 (1976)",
        "incompatible modes; here in closed form for right-angled bricks", Standing.FromMemory);

    /// <summary>Numbers kept for each kind of cell: for each family the diagonal, then the neighbours one on and two on, each of three with one left empty.</summary>
    public const int Numbers = 8 * 3 * 4;

    /// <summary>The eight families of a kind.</summary>
    public static void Fill(CellKind kind, Span<double> to)
    {
        to.Clear();
        (double E, double nu) = (kind.E, kind.Nu);
        double G = E / (2 * (1 + nu)), lambda = E * nu / ((1 + nu) * (1 - 2 * nu)), M = lambda + 2 * G, plane = E / (1 - nu * nu);
        ReadOnlySpan<double> g = [2 / kind.X, 2 / kind.Y, 2 / kind.Z];
        double share = kind.X * kind.Y * kind.Z / 64;

        Span<double> block = stackalloc double[9];
        for (int family = 0; family < 8; family++)
        {
            block.Clear();
            for (int i = 0; i < 3; i++)
            {
                (int j, int k) = ((i + 1) % 3, (i + 2) % 3);
                int bi = 1 << i, bj = 1 << j;
                // even stretching: all three
                if (family == 0)
                    Add(block, i, i, M * g[i] * g[i], i, j, lambda * g[i] * g[j]);
                // even shear of i against j, and the twist-free bulge of the third way
                if (family == (bi | bj))
                {
                    Add(block, i, i, G * g[j] * g[j], i, j, G * g[i] * g[j]);
                    Add(block, j, j, G * g[i] * g[i]);
                    Add(block, k, k, (M * g[k] * g[k] + G * (g[i] * g[i] + g[j] * g[j])) / 9);
                }

                // bending: stretching of j and k that grows along i
                if (family == bi)
                {
                    Add(block, j, j, plane / 3 * g[j] * g[j], j, k, plane / 3 * nu * g[j] * g[k]);
                    Add(block, k, k, plane / 3 * g[k] * g[k]);
                }

                // twisting
                if (family == 7)
                    Add(block, i, i, G / 3 * (g[j] * g[j] + g[k] * g[k]), i, j, G / 3 * g[i] * g[j]);
            }

            for (int i = 0; i < 3; i++)
            {
                to[family * 12 + i] = share * block[3 * i + i];
                to[family * 12 + 4 + i] = share * block[3 * i + (i + 1) % 3];
                to[family * 12 + 8 + i] = share * block[3 * i + (i + 2) % 3];
            }
        }
    }

    private static void Add(Span<double> block, int i, int j, double value, int k = -1, int l = -1, double other = 0)
    {
        block[3 * i + j] += value;
        if (k < 0)
            return;
        block[3 * k + l] += other;
        block[3 * l + k] += other;
    }

    /// <summary>The full matrix of a kind from its families: three by three for each pair of nodes.</summary>
    public static void Unfold(ReadOnlySpan<double> families, Span<double> full)
    {
        for (int a = 0; a < 8; a++)
            for (int b = 0; b < 8; b++)
                for (int i = 0; i < 3; i++)
                    for (int j = 0; j < 3; j++)
                    {
                        double sum = 0;
                        for (int q = 0; q < 8; q++)
                        {
                            double k = families[q * 12 + (j - i + 3) % 3 * 4 + i];
                            sum += Sign(q ^ (1 << i), a) * Sign(q ^ (1 << j), b) * k;
                        }

                        full[(a * 8 + b) * 9 + 3 * i + j] = sum;
                    }
    }

    /// <summary>Value of a term at a corner: minus one for each way that it grows along and the corner is at the near end of.</summary>
    public static int Sign(int term, int corner) => (System.Numerics.BitOperations.PopCount((uint)(term & ~corner)) & 1) == 0 ? 1 : -1;
}
