using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>How hard the zone beside a weld becomes, put into one number by its composition. All in per cent.</summary>
public static class CarbonEquivalent
{
    /// <summary>Source of CE.</summary>
    public static readonly Citation IiwSource = new("International Institute of Welding, doc. IIS/IIW-382-71; EN 1011-2:2001", "C.2.1");
    /// <summary>Source of CET.</summary>
    public static readonly Citation CetSource = new("EN 1011-2:2001", "C.3.2.1");
    /// <summary>Source of P_cm.</summary>
    public static readonly Citation PcmSource = new("Ito and Bessyo, 1968; AWS D1.1", "annex on preheat", Standing.FromMemory);
    /// <summary>Source of the start of martensite.</summary>
    public static readonly Citation MartensiteSource = new("Andrews, Journal of the Iron and Steel Institute 203 (1965)", "linear formula", Standing.FromMemory);

    /// <summary>Carbon equivalent CE of the International Institute of Welding, %: for carbon above 0.18 %.</summary>
    /// <param name="s">Composition.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Iiw(Composition s, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        double CE = s.C + s.Mn / 6 + (s.Cr + s.Mo + s.V) / 5 + (s.Ni + s.Cu) / 15;
        w?.Step("CE", "carbon equivalent, %", "C + Mn / 6 + (Cr + Mo + V) / 5 + (Ni + Cu) / 15", CE, Dimension.Number, IiwSource,
            ("C", s.C, Dimension.Number), ("Mn", s.Mn, Dimension.Number), ("Cr", s.Cr, Dimension.Number), ("Mo", s.Mo, Dimension.Number),
            ("V", s.V, Dimension.Number), ("Ni", s.Ni, Dimension.Number), ("Cu", s.Cu, Dimension.Number));
        return CE;
    }

    /// <summary>Carbon equivalent CET of method B, %.</summary>
    /// <param name="s">Composition.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Cet(Composition s, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        double CET = s.C + (s.Mn + s.Mo) / 10 + (s.Cr + s.Cu) / 20 + s.Ni / 40;
        w?.Step("CET", "carbon equivalent of method B, %", "C + (Mn + Mo) / 10 + (Cr + Cu) / 20 + Ni / 40", CET, Dimension.Number, CetSource,
            ("C", s.C, Dimension.Number), ("Mn", s.Mn, Dimension.Number), ("Mo", s.Mo, Dimension.Number), ("Cr", s.Cr, Dimension.Number),
            ("Cu", s.Cu, Dimension.Number), ("Ni", s.Ni, Dimension.Number));
        return CET;
    }

    /// <summary>Cracking parameter P_cm, %: for carbon up to 0.18 %.</summary>
    /// <param name="s">Composition.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Pcm(Composition s, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        double P = s.C + s.Si / 30 + (s.Mn + s.Cu + s.Cr) / 20 + s.Ni / 60 + s.Mo / 15 + s.V / 10 + 5 * s.B;
        w?.Step("P_cm", "cracking parameter, %", "C + Si / 30 + (Mn + Cu + Cr) / 20 + Ni / 60 + Mo / 15 + V / 10 + 5 B", P, Dimension.Number, PcmSource,
            ("C", s.C, Dimension.Number), ("Si", s.Si, Dimension.Number), ("Mn", s.Mn, Dimension.Number), ("Cu", s.Cu, Dimension.Number),
            ("Cr", s.Cr, Dimension.Number), ("Ni", s.Ni, Dimension.Number), ("Mo", s.Mo, Dimension.Number), ("V", s.V, Dimension.Number), ("B", s.B, Dimension.Number));
        return P;
    }

    /// <summary>Temperature at which martensite begins to form, °C: below it what was austenite turns hard.</summary>
    /// <param name="s">Composition; up to 0.6 % of carbon.</param>
    /// <param name="w">Where to write it down.</param>
    public static double MartensiteStart(Composition s, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        double Ms = 539 - 423 * s.C - 30.4 * s.Mn - 17.7 * s.Ni - 12.1 * s.Cr - 7.5 * s.Mo;
        w?.Step("M_s", "martensite begins to form at", "539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr - 7.5 Mo", Ms, Dimension.Temperature, MartensiteSource,
            ("C", s.C, Dimension.Number), ("Mn", s.Mn, Dimension.Number), ("Ni", s.Ni, Dimension.Number), ("Cr", s.Cr, Dimension.Number), ("Mo", s.Mo, Dimension.Number));
        return Ms;
    }
}
