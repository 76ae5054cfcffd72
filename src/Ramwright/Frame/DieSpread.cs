using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>A stretch of a beam part along the width of the press.</summary>
/// <param name="Beams">Numbers of its beams, one a strand.</param>
/// <param name="From">Where it starts, m from the ram's centre line.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct Stretch(int[] Beams, double From, double To);

/// <summary>Spreads the force of a die over its width.</summary>
/// <param name="Half">Half the length of the part, m.</param>
/// <param name="Width">Width of the die, m; 0 is a point.</param>
internal readonly record struct DieSpread(double Half, double Width)
{
    /// <summary>Lays force and moment on a part.</summary>
    /// <param name="force">N.</param>
    /// <param name="moment">N·m, always on the node.</param>
    /// <param name="centre">Middle of the die, m from the ram's centre line.</param>
    /// <param name="node">The node there.</param>
    /// <param name="stretches">The part.</param>
    /// <param name="onNodes">Where loads on nodes go.</param>
    /// <param name="onBeams">Where loads on beams go.</param>
    public void Lay(
        Vector force, Vector moment, double centre, int node, ReadOnlySpan<Stretch> stretches,
        List<NodalLoad> onNodes, List<MemberLoad> onBeams)
    {
        // the part of a die that would hang over the end is left out, so that the whole force stays on the part
        double reach = Math.Min(Width / 2, Half - Math.Abs(centre));
        if (!(reach > 0))
        {
            onNodes.Add(new NodalLoad(node, force, moment));
            return;
        }

        double a = centre - reach, b = centre + reach;
        foreach (Stretch stretch in stretches)
        {
            double start = Math.Max(a, stretch.From), end = Math.Min(b, stretch.To);
            if (!(end > start))
                continue;
            Vector perMetre = force / (b - a) / stretch.Beams.Length;
            foreach (int beam in stretch.Beams)
                onBeams.Add(new MemberLoad(beam, perMetre, start - stretch.From, end - stretch.From));
        }

        onNodes.Add(new NodalLoad(node, Vector.Zero, moment));
    }
}
