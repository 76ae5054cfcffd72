namespace Ramwright.Fabrication.Nesting;

/// <summary>A place on a sheet, m.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Up.</param>
internal readonly record struct Spot(double X, double Y)
{
    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);
    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);
    public static Spot operator -(Spot a) => new(-a.X, -a.Y);

    public double Cross(Spot b) => X * b.Y - Y * b.X;
    public double Dot(Spot b) => X * b.X + Y * b.Y;
}

/// <summary>An upright rectangle, m.</summary>
internal readonly record struct Room(double Left, double Right, double Bottom, double Top)
{
    public double Width => Right - Left;
    public double Height => Top - Bottom;

    public static Room Of(ReadOnlySpan<Spot> spots)
    {
        var room = new Room(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
        foreach (Spot s in spots)
            room = new Room(Math.Min(room.Left, s.X), Math.Max(room.Right, s.X), Math.Min(room.Bottom, s.Y), Math.Max(room.Top, s.Y));
        return room;
    }

    public bool Meets(Room other) => Left <= other.Right && other.Left <= Right && Bottom <= other.Top && other.Bottom <= Top;
}
