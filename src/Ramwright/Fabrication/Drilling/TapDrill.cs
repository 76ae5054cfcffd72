using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Drilling;

/// <summary>The drill before a tap.</summary>
public static class TapDrill
{
    /// <summary>Where the sizes come from.</summary>
    public static readonly Citation Source = new("ISO 2306:1972", "drills for use prior to tapping: major diameter less pitch", Standing.FromMemory);
    /// <summary>Limits of the minor diameter of an internal thread 6H.</summary>
    public static readonly Citation LimitSource = new("ISO 965-1:2013", "tolerance of the minor diameter, grade 6", Standing.FromMemory);

    /// <summary>Diameter, m: d − P, to the next size that drills come in; for an inch thread in an inch workshop sixty-fourths of an inch.</summary>
    /// <param name="thread">Thread, metric or inch.</param>
    /// <param name="units">Whose drills.</param>
    public static double Of(ScrewThread thread, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(thread);
        const double sixtyFourth = 0.0254 / 64;
        if (units == UnitSystem.Imperial && thread.Form == ThreadForm.Unified)
            return Math.Round((thread.D - thread.P) / sixtyFourth) * sixtyFourth;
        double mm = (thread.D - thread.P) * 1000;
        // drills: tenths up to 14 mm, quarters up to 32 mm, halves above. Halfway goes to the even tenth, as the standard's own 6.8 and 10.2 do
        double step = mm < 14 ? 0.1 : mm < 32 ? 0.25 : 0.5;
        return Math.Round(Math.Round(mm / step, 6), MidpointRounding.ToEven) * step / 1000;
    }

    /// <summary>Least and most minor diameter of the tapped thread, m: d₁, and d₁ and the tolerance of grade 6.</summary>
    /// <param name="thread">Metric thread with a pitch of 1 mm or more.</param>
    public static (double Least, double Most) Minor(ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double P = thread.P * 1000, tolerance = P >= 1 ? 230 * Math.Pow(P, 0.7) : 433 * P - 190 * Math.Pow(P, 1.22);
        return (thread.D1, thread.D1 + tolerance * 1e-6);
    }
}
