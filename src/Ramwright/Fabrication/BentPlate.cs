using Ramwright.Geometry;

namespace Ramwright.Fabrication;

/// <summary>A strip of plate bent along straight lines across it, by its outside legs.</summary>
/// <param name="Width">Along the bends, m.</param>
/// <param name="Thickness">s, m.</param>
/// <param name="Legs">Outside lengths from bend to bend, m; one more than there are bends.</param>
/// <param name="Angles">How far each bend is bent, rad; below zero bends it down.</param>
/// <param name="Radius">Inside radius of every bend, m.</param>
public sealed record BentPlate(double Width, double Thickness, IReadOnlyList<double> Legs, IReadOnlyList<double> Angles, double Radius)
{
    /// <summary>Sharpest inside radius over thickness that the allowance is reckoned for.</summary>
    public const double Sharpest = 0.1;

    /// <summary>Whether its legs are long enough for its bends, and no bend is too sharp to be reckoned.</summary>
    public bool IsPossible
    {
        get
        {
            if (!(Radius >= Sharpest * Thickness) || Angles.Any(a => !(Math.Abs(a) is > 0 and < Math.PI)))
                return false;
            double left = 0;
            for (int i = 0; i < Legs.Count; i++)
            {
                double right = i < Angles.Count ? BendAllowance.SetBack(Math.Abs(Angles[i]), Radius, Thickness) : 0;
                if (!(Legs[i] > left + right))
                    return false;
                left = right;
            }

            return true;
        }
    }

    /// <summary>Length of the flat pattern, m.</summary>
    public double Flat => BendAllowance.Flat(Legs, Angles, Radius, Thickness);

    /// <summary>The bends on the flat pattern, which lies along y from zero and is centred on z = 0.</summary>
    /// <exception cref="InvalidOperationException">It cannot be bent: see <see cref="IsPossible"/>.</exception>
    public IReadOnlyList<PlateBend> Bends()
    {
        if (!IsPossible)
            throw new InvalidOperationException("The legs are too short for the bends, or a bend is too sharp.");
        var bends = new List<PlateBend>();
        double at = 0, left = 0;
        for (int i = 0; i < Angles.Count; i++)
        {
            double angle = Math.Abs(Angles[i]), arc = BendAllowance.Arc(angle, Radius, Thickness), back = BendAllowance.SetBack(angle, Radius, Thickness);
            double straight = Legs[i] - left - back;
            at += straight;
            bends.Add(new PlateBend(new Corner(at + arc / 2, -Width / 2), new Corner(at + arc / 2, Width / 2), angle, Radius, Angles[i] > 0, arc));
            at += arc;
            left = back;
        }

        return bends;
    }

    /// <summary>The part, its flat pattern as outline.</summary>
    /// <param name="holes">Holes on the flat pattern.</param>
    public PlatePart AsPart(IReadOnlyList<PlateHole> holes) => new()
    {
        Name = "bent plate",
        Of = "",
        Count = 1,
        Thickness = Thickness,
        Blank = new Outline([Loops.Rectangle(0, Flat, -Width / 2, Width / 2)]),
        Holes = holes,
        Bends = Bends(),
        Work = w => BendAllowance.Flat(Legs, [.. Angles.Select(Math.Abs)], Radius, Thickness, w),
    };
}
