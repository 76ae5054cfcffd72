using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>One line at the greatest flow it sees.</summary>
/// <param name="Line">The line.</param>
/// <param name="Flow">Greatest flow in normal use, m³/s.</param>
/// <param name="Velocity">Speed of the oil, m/s.</param>
/// <param name="Reynolds">Reynolds number.</param>
/// <param name="Loss">Pressure lost along it, its fittings and ends included, Pa.</param>
/// <param name="Verdict">Where the speed stands.</param>
/// <param name="Sees">Greatest pressure it may meet in normal use, Pa.</param>
/// <param name="CarriesIt">Whether its rating is enough for that; true where the rating is not known.</param>
public sealed record LineCheck(
    RigLine Line, double Flow, double Velocity, double Reynolds, double Loss, VelocityVerdict Verdict, double Sees, bool CarriesIt)
{
    /// <summary>Checks a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="Q">Greatest flow in it, m³/s, 0 or more.</param>
    /// <param name="sees">Greatest pressure in it, Pa, 0 or more.</param>
    /// <param name="nu">Kinematic viscosity, m²/s, above zero.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LineCheck Of(RigLine line, double Q, double sees, double nu, double rho, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(line);
        double sumK = Fitting.Sum(line.Fittings);
        double u = LineFlow.Velocity(Q, line.Bore), Re = LineFlow.Reynolds(u, line.Bore, nu);
        // Too fast for the formula: it runs a little low there, and the speed has long been reported as far too high.
        double loss = Re <= LineFlow.BlasiusUpTo
            ? LineFlow.Loss(Q, line.Bore, line.Length, nu, rho, sumK, w)
            : (LineFlow.Factor(Re) * line.Length / line.Bore + sumK) * rho * u * u / 2;
        bool carries = line.Duty == LineDuty.Suction || line.Rating is not { } rating || HoseProof.Carries(rating, sees);
        return new LineCheck(line, Q, u, Re, loss, VelocityBand.Of(line.Duty).Judge(u), sees, carries);
    }
}
