namespace Ramwright.Frame;

/// <summary>
/// A uniform Timoshenko beam bent in one plane between end springs. Displacement v, rotation θ of the section, with
/// θ′ = M/EI, v′ = θ + V/GAs, M′ = −V, V′ = −q. Seen from its outer ends; all exact.
/// </summary>
/// <remarks>
/// The give of the beam is written for the end moments m1, m2 on a span held at both ends (turn of each end against the
/// chord), where springs and shear only add to it: turning springs x, y on the diagonal, sideways springs z everywhere.
/// Inverted, with all springs rigid, this is Przemieniecki's stiffness with Φ = 12EI/(GAs L²):
/// K11 = EI(4 + Φ)/(L(1 + Φ)), K12 = EI(2 − Φ)/(L(1 + Φ)).
/// Przemieniecki, Theory of Matrix Structural Analysis (1968), ch. 5, from memory; the inverse is derived here.
/// </remarks>
internal readonly struct BendingPlane
{
    private readonly double _L, _EI, _shearGive;
    private readonly Give _v1, _t1, _v2, _t2;
    private readonly double _halfGive, _det, _c1, _c2;

    /// <summary>Moment at an end per turn against the chord, N·m/rad: first end, cross, second end.</summary>
    public readonly double K11, K12, K22;

    public BendingPlane(double L, double EI, double GAs, double v1, double t1, double v2, double t2)
    {
        (_L, _EI, _shearGive) = (L, EI, 1 / GAs);
        (_v1, _t1, _v2, _t2) = (Give.Of(v1), Give.Of(t1), Give.Of(v2), Give.Of(t2));
        double g = _shearGive / L;
        double a = L / (3 * EI) + g, b = -L / (6 * EI) + g;     // own and cross give of the beam
        (double xn, double xd) = (_t1.Num, _t1.Den);
        (double yn, double yd) = (_t2.Num, _t2.Den);
        // z = zn/zd: both sideways springs, as a turn of the chord.
        double zd = _v1.Den * _v2.Den;
        _c1 = _v1.Num * _v2.Den;
        _c2 = _v2.Num * _v1.Den;
        double zn = (_c1 + _c2) / (L * L);
        _halfGive = L / (2 * EI);                               // a − b
        double sum = L / (6 * EI) + 2 * g;                      // a + b
        // (a + x + z)(a + y + z) − (b + z)², times all denominators, arranged so that every term is positive.
        _det = zd * (_halfGive * sum * xd * yd + a * (xn * yd + yn * xd) + xn * yn)
            + zn * (2 * _halfGive * xd * yd + xn * yd + yn * xd);
        K11 = xd * (zd * (a * yd + yn) + zn * yd) / _det;
        K22 = yd * (zd * (a * xd + xn) + zn * xd) / _det;
        K12 = -(b * zd + zn) * xd * yd / _det;
    }

    /// <summary>Forces and moments that hold the outer ends still under a uniform load q over [a, b].</summary>
    public (double V1, double M1, double V2, double M2) FixedEnds(double q, double a, double b)
    {
        double L = _L, c = b - a, p = L - a, r = L - b;
        double R1 = -q * c * (p + r) / (2 * L), R2 = -q * c * (a + b) / (2 * L);       // span on two supports
        double t1 = q * c * (p + r) * (2 * L * L - p * p - r * r) / (24 * _EI * L);    // turns of its ends
        double t2 = -q * c * (a + b) * (2 * L * L - a * a - b * b) / (24 * _EI * L);
        double chord = (R1 * _c1 - R2 * _c2) / L;                                      // turn of its chord, times zd
        double m1 = -(K11 * t1 + K12 * t2 + _t1.Den * (_halfGive * _t2.Den + _t2.Num) * chord / _det);
        double m2 = -(K12 * t1 + K22 * t2 + _t2.Den * (_halfGive * _t1.Den + _t1.Num) * chord / _det);
        double pair = (m1 + m2) / L;
        return (R1 + pair, m1, R2 - pair, m2);
    }

    /// <summary>Rotation and displacement at x relative to the beam's first end, from the force and moment there alone.</summary>
    public (double v, double t) Along(double V1, double M1, double x) =>
        (x * x * (V1 * x / 6 - M1 / 2) / _EI - V1 * x * _shearGive, x * (V1 * x / 2 - M1) / _EI);

    /// <summary>What a load q over [a, b] adds to <see cref="Along"/>.</summary>
    public (double v, double t) LoadAlong(double q, double a, double b, double x) =>
        (q * (Ramp.Power4(x, a) - Ramp.Power4(x, b)) / (24 * _EI) - q * (Ramp.Power2(x, a) - Ramp.Power2(x, b)) / 2 * _shearGive,
         q * (Ramp.Power3(x, a) - Ramp.Power3(x, b)) / (6 * _EI));

    /// <summary>
    /// Where the beam's own first end is, behind its springs, from outer ends (v, t) and end forces (V, M);
    /// <paramref name="bend"/> is the second end relative to the first from bending and shear.
    /// </summary>
    public (double v, double t) Start(
        (double v, double t) outer1, (double v, double t) outer2,
        (double V, double M) force1, (double V, double M) force2, (double v, double t) bend)
    {
        // Two of the four springs place the beam; soft ones would magnify the rounding of the forces in them.
        bool firstHolds = _v1.IsStifferThan(_v2), firstTurnsLess = _t1.IsStifferThan(_t2);
        Give soft = firstHolds ? _v2 : _v1, turn = firstTurnsLess ? _t1 : _t2;
        if (soft.Num * turn.Den <= (turn.Num + turn.Den * 2 * _halfGive) * soft.Den * _L * _L)
        {
            double v = outer1.v - _v1.Under(force1.V);
            return (v, (outer2.v - _v2.Under(force2.V) - v - bend.v) / _L);
        }
        double t = firstTurnsLess ? outer1.t - _t1.Under(force1.M) : outer2.t - _t2.Under(force2.M) - bend.t;
        return firstHolds
            ? (outer1.v - _v1.Under(force1.V), t)
            : (outer2.v - _v2.Under(force2.V) - t * _L - bend.v, t);
    }
}
