namespace Ramwright.Fabrication.Nesting;

/// <summary>What a plan is worth.</summary>
/// <param name="table">The sheets.</param>
/// <param name="area">Area of all parts, m².</param>
internal sealed class NestScore(NestTable table, double area)
{
    /// <summary>What weighs how much while a plan is followed; the best plan is the one that places most, whatever else.</summary>
    private const double Closeness = 0.5, Missing = 3;

    /// <summary>Less is better, in this order: what finds no room, what must be bought, what is opened, how unevenly the sheets are filled.</summary>
    public double Of(Placement?[] laid)
    {
        (double left, double bought, double finer) = Weighed(laid);
        return 1e4 * left + 1e2 * bought + finer;
    }

    /// <summary>The same, and how close the parts lie; and another by which a plan may be followed for a while that places less.</summary>
    /// <param name="laid">The plan.</param>
    /// <param name="ways">The direction in which each sheet is filled, one long.</param>
    public (double Score, double Soft) Of(Placement?[] laid, Spot[] ways)
    {
        (double left, double bought, double finer) = Weighed(laid);
        double loose = 0;
        foreach (Placement? p in laid)
        {
            if (p is not { } at)
                continue;
            Spot way = ways[at.Sheet];
            Room room = table.Sheets[at.Sheet].Room;
            double x = at.At.X + (at.Shape.Room.Left + at.Shape.Room.Right) / 2 - (room.Left + room.Right) / 2, y = at.At.Y + (at.Shape.Room.Bottom + at.Shape.Room.Top) / 2 - (room.Bottom + room.Top) / 2;
            loose += at.Shape.Area * (x * way.X + y * way.Y) / (room.Width + room.Height);
        }

        finer += Closeness * loose;
        return (1e4 * left + 1e2 * bought + finer, Missing * left + bought + finer);
    }

    private (double Left, double Bought, double Finer) Weighed(Placement?[] laid)
    {
        double placed = 0, bought = 0, opened = 0, uneven = 0;
        var filled = new double[table.Sheets.Count];
        foreach (Placement? p in laid)
        {
            if (p is not { } at)
                continue;
            placed += at.Shape.Area;
            filled[at.Sheet] += at.Shape.Area;
        }

        for (int s = 0; s < filled.Length; s++)
        {
            if (filled[s] == 0)
                continue;
            NestSheet sheet = table.Sheets[s];
            if (sheet.Buy)
                bought += sheet.Area;
            opened += sheet.Area;
            uneven += filled[s] * filled[s] / sheet.Area;
        }

        return (area - placed, bought, opened - uneven);
    }
}
