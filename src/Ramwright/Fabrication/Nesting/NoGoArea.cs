namespace Ramwright.Fabrication.Nesting;

/// <summary>Where the origin of a part may not come because of another, as convex pieces that overlap, and those of their edges that are not buried in a single other piece.</summary>
internal sealed class NoGoArea
{
    public NoGoArea(IReadOnlyList<ConvexPiece> standing, IReadOnlyList<ConvexPiece> moving, double hair)
    {
        Pieces = [.. from a in standing from b in moving select a.NoGo(b)];
        var edges = new List<(int, Spot, Spot)>();
        for (int i = 0; i < Pieces.Length; i++)
        {
            Spot[] c = Pieces[i].Corners;
            for (int k = 0; k < c.Length; k++)
            {
                Spot from = c[k], to = c[k + 1 == c.Length ? 0 : k + 1];
                if (!IsBuried(i, from, to, hair))
                    edges.Add((i, from, to));
            }
        }

        Edges = [.. edges];
        Room = Pieces.Length == 0 ? default : Room.Of([.. Pieces.SelectMany(p => p.Corners)]);
    }

    /// <summary>The rectangle round all of it.</summary>
    public Room Room { get; }

    /// <summary>How deep a place lies in the piece that it lies deepest in, m; <paramref name="least"/> where it lies no deeper than that in any.</summary>
    public double Depth(Spot p, double least)
    {
        if (Pieces.Length == 0 || p.X - Room.Left <= least || Room.Right - p.X <= least || p.Y - Room.Bottom <= least || Room.Top - p.Y <= least)
            return least;
        foreach (ConvexPiece piece in Pieces)
            least = piece.Depth(p, least);
        return least;
    }

    public ConvexPiece[] Pieces { get; }

    public (int Piece, Spot From, Spot To)[] Edges { get; }

    // both ends within one convex piece: all of the edge is
    private bool IsBuried(int piece, Spot from, Spot to, double hair)
    {
        for (int j = 0; j < Pieces.Length; j++)
        {
            if (j != piece && Pieces[j].Holds(default, from, hair) && Pieces[j].Holds(default, to, hair))
                return true;
        }

        return false;
    }
}
