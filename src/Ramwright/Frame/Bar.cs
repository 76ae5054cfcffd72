namespace Ramwright.Frame;

/// <summary>A uniform bar that is stretched (stiffness EA) or twisted (GIt), between two end springs.</summary>
internal readonly struct Bar
{
    private readonly double _L, _EA, _give;
    private readonly Give _first, _second;

    /// <summary>Force by which the ends resist being pulled one metre (or turned one radian) apart.</summary>
    public readonly double K;

    public Bar(double L, double EA, double firstSpring, double secondSpring)
    {
        (_L, _EA) = (L, EA);
        _first = Give.Of(firstSpring);
        _second = Give.Of(secondSpring);
        // The gives of beam and springs in series, times both denominators.
        _give = L / EA * _first.Den * _second.Den + _first.Num * _second.Den + _second.Num * _first.Den;
        K = _first.Den * _second.Den / _give;
    }

    /// <summary>Forces that hold the outer ends still under a uniform load q over [a, b].</summary>
    public (double First, double Second) FixedEnds(double q, double a, double b)
    {
        double c = b - a, lever = c * (2 * _L - a - b) / 2;
        double first = -q * _first.Den * (lever / _EA * _second.Den + c * _second.Num) / _give;
        return (first, -q * c - first);
    }

    /// <summary>Displacement of the bar's own first end; <paramref name="stretch"/> is how much longer the bar has become.</summary>
    public double Start(double outer1, double outer2, double force1, double force2, double stretch) =>
        _first.IsStifferThan(_second) ? outer1 - _first.Under(force1) : outer2 - _second.Under(force2) - stretch;

    /// <summary>Displacement at x relative to the first end under the first end's force alone.</summary>
    public double Along(double force1, double x) => -force1 * x / _EA;

    /// <summary>What a load q over [a, b] adds to <see cref="Along"/>.</summary>
    public double LoadAlong(double q, double a, double b, double x) => -q * (Ramp.Power2(x, a) - Ramp.Power2(x, b)) / (2 * _EA);
}
