namespace Ramwright.Fabrication.Nesting;

/// <summary>Looks for the taste by which parts that touch most fill the sheets best: mostly near what was best so far, else anew.</summary>
internal sealed class TouchSearch(IReadOnlyList<IReadOnlyList<NestShape>> kinds, int[] kindOf, NestTable table, SeededDraw draw)
{
    private static readonly double[] Edges = [1, 0.6, 0.3], Sizes = [0.3, 0.1, 0.6, 0];

    private readonly TouchFill _fill = new(kinds, kindOf, table);
    private (TouchTaste Taste, double Score)? _best;

    /// <summary>Tries a few that often do well.</summary>
    /// <param name="offer">Takes a plan and says its score; less is better.</param>
    public void Begin(Func<Placement?[], double> offer)
    {
        foreach (double size in Sizes)
        {
            foreach (double edge in Edges)
            {
                if (Offer(new TouchTaste(edge, size, 0, 0, new double[kinds.Count]), offer))
                    return;
            }
        }
    }

    /// <summary>Tries one more.</summary>
    /// <inheritdoc cref="Begin"/>
    public void Try(Func<Placement?[], double> offer)
    {
        if (_best is not { Taste: { } best } || draw.Below(4) == 0)
        {
            Offer(new TouchTaste(0.2 + draw.Share(), 0.7 * draw.Share(), draw.Below(3) == 0 ? 0 : 0.1 * draw.Share(), draw.Draw(), [.. kinds.Select(_ => draw.Below(3) == 0 ? 0.4 * (draw.Share() - 0.5) : 0)]), offer);
            return;
        }

        double[] liking = [.. best.Liking];
        int changes = 1 + draw.Below(2);
        TouchTaste next = best with { Liking = liking };
        for (int i = 0; i < changes; i++)
        {
            switch (draw.Below(6))
            {
                case 0:
                    next = next with { Edge = Math.Clamp(next.Edge + 0.3 * (draw.Share() - 0.5), 0, 1.5) };
                    break;
                case 1:
                    next = next with { Size = Math.Clamp(next.Size + 0.2 * (draw.Share() - 0.5), 0, 1) };
                    break;
                case 2:
                    next = next with { Noise = Math.Clamp(next.Noise + 0.05 * (draw.Share() - 0.4), 0, 0.2), Draw = draw.Draw() };
                    break;
                default:
                    liking[draw.Below(liking.Length)] += 0.3 * (draw.Share() - 0.5);
                    break;
            }
        }

        Offer(next, offer);
    }

    // true where nothing is left to lay
    private bool Offer(TouchTaste taste, Func<Placement?[], double> offer)
    {
        Placement?[] laid = _fill.Run(taste);
        double score = offer(laid);
        if (_best is null || score <= _best.Value.Score)
            _best = (taste, score);
        return Array.TrueForAll(laid, p => p is { Sheet: 0 });
    }
}
