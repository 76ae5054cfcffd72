using System.Diagnostics.CodeAnalysis;

namespace Ramwright.Quantities;

/// <summary>Every unit that Ramwright reads and writes, by what it measures.</summary>
/// <remarks>
/// Exact by definition: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s², US gallon 231 in³,
/// UK gallon 4.54609 L. A <c>ton</c>, <c>gal</c> or <c>gpm</c> that does not say whose it is has no entry.
/// Air counted at a reference state (scfm, Nl/min, Nm³/h) has none either: it becomes free air only with the reference
/// and the intake's pressure and temperature, which such a figure does not state.
/// Tables are made when first asked for; all members may be used from many threads.
/// </remarks>
public static class Units
{
    private const double Inch = 0.0254, Foot = 12 * Inch, Thou = 1e-3 * Inch;
    private const double Pound = 0.45359237, UsTon = 2000 * Pound, UkTon = 2240 * Pound;
    private const double Gravity = 9.80665;
    private const double Lbf = Pound * Gravity, Kip = 1000 * Lbf, Psi = Lbf / (Inch * Inch);
    private const double UsGallon = 231 * Inch * Inch * Inch, UkGallon = 4.54609e-3;
    private const double Degree = Math.PI / 180;
    private const double Minute = 60, Hour = 3600;
    private const double Horsepower = 550 * Foot * Lbf, MetricHorsepower = 75 * Gravity;
    private const double Atmosphere = 101325;

    private static readonly UnitTable?[] Tables = new UnitTable?[(int)Dimension.DynamicViscosity + 1];

    /// <summary>The units of a dimension, the commonest first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a dimension.</exception>
    public static IReadOnlyList<Unit> Of(Dimension dimension) => Table(dimension).Units;

    /// <summary>Finds a unit by its symbol or another name people write for it.</summary>
    /// <param name="symbol">As written; blanks, dots and raised digits may be written as people do.</param>
    /// <param name="dimension">What it must measure.</param>
    /// <param name="unit">The unit, when there is exactly one.</param>
    /// <returns>False also where only the case could tell and does not: <c>mn</c> for a force, <c>mPa</c> for a pressure.</returns>
    public static bool TryFind(string symbol, Dimension dimension, [NotNullWhen(true)] out Unit? unit)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        return Table(dimension).Find(UnitSpelling.Key(symbol), out unit, out _) == UnitMatch.Found;
    }

    /// <summary>The units of a dimension with their spellings.</summary>
    internal static UnitTable Table(Dimension dimension)
    {
        if ((uint)dimension >= (uint)Tables.Length)
            throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "not a dimension");
        return Volatile.Read(ref Tables[(int)dimension]) ?? Make(dimension);
    }

    private static UnitTable Make(Dimension dimension)
    {
        var table = new UnitTable(dimension, Rows(dimension));
        // The first to arrive is kept, so that a unit is always the same object.
        return Interlocked.CompareExchange(ref Tables[(int)dimension], table, null) ?? table;
    }

    // One method per dimension: a cold start then pays only for the dimensions that it reads.
    private static UnitRow[] Rows(Dimension dimension) => dimension switch
    {
        Dimension.Number => Numbers(),
        Dimension.Ratio => Ratios(),
        Dimension.Count => Counts(),
        Dimension.Length => Lengths(),
        Dimension.Area => Areas(),
        Dimension.Volume => Volumes(),
        Dimension.SectionModulus => SectionModuli(),
        Dimension.SecondMoment => SecondMoments(),
        Dimension.WarpingConstant => WarpingConstants(),
        Dimension.Angle => Angles(),
        Dimension.Slope => Slopes(),
        Dimension.Mass => Masses(),
        Dimension.MassPerLength => MassesPerLength(),
        Dimension.Density => Densities(),
        Dimension.Time => Times(),
        Dimension.Speed => Speeds(),
        Dimension.Force => Forces(),
        Dimension.ForcePerLength => ForcesPerLength(),
        Dimension.Moment => Moments(),
        Dimension.Stiffness => Stiffnesses(),
        Dimension.RotationalStiffness => RotationalStiffnesses(),
        Dimension.Pressure => Pressures(),
        Dimension.Stress => Stresses(),
        Dimension.Flow => Flows(),
        Dimension.FreeAir => FreeAirs(),
        Dimension.Displacement => Displacements(),
        Dimension.Power => Powers(),
        Dimension.Energy => Energies(),
        Dimension.Temperature => Temperatures(),
        Dimension.RotationalSpeed => RotationalSpeeds(),
        Dimension.Cadence => Cadences(),
        Dimension.KinematicViscosity => KinematicViscosities(),
        Dimension.DynamicViscosity => DynamicViscosities(),
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "not a dimension"),
    };

    private static UnitRow[] Numbers() =>
    [
        new("", 1, ":1, x"),
    ];

    private static UnitRow[] Ratios() =>
    [
        new("%", 0.01, "percent, per cent, pct"), new("", 1),
    ];

    private static UnitRow[] Counts() =>
    [
        new("", 1, "off, pcs, pc, pieces, x"),
    ];

    private static UnitRow[] Lengths() =>
    [
        new("mm", 1e-3, "millimetre, millimetres, millimeter, millimeters"),
        new("m", 1, "metre, metres, meter, meters"),
        new("cm", 1e-2, "centimetre, centimetres, centimeter, centimeters"),
        new("km", 1e3), new("µm", 1e-6, "um, micron, microns"),
        new("in", Inch, "\", inch, inches"),
        new("ft", Foot, "', foot, feet"), new("yd", 3 * Foot, "yard, yards"),
        new("thou", Thou, "mil, mils, thousandths"),
    ];

    private static UnitRow[] Areas() =>
    [
        new("cm2", 1e-4, "sq cm"), new("mm2", 1e-6, "sq mm"), new("m2", 1, "sq m"),
        new("in2", Inch * Inch, "sq in, sq inch, square inch, square inches, sq inches"), new("ft2", Foot * Foot, "sq ft, square feet"),
    ];

    private static UnitRow[] Volumes() =>
    [
        new("L", 1e-3, "litre, litres, liter, liters, ltr, dm3"),
        new("mL", 1e-6, "millilitre, millilitres, milliliters"),
        new("cm3", 1e-6, "cc, ccm, cu cm"), new("mm3", 1e-9, "cu mm"), new("m3", 1, "cu m"),
        new("in3", Inch * Inch * Inch, "cu in, cubic inch, cubic inches"), new("ft3", Foot * Foot * Foot, "cu ft, cubic feet"),
        new("US gal", UsGallon, "US gallon, US gallons, gal US, gallon US, gallons US"),
        new("UK gal", UkGallon, "UK gallon, UK gallons, gal UK, gallons UK, imp gal, imperial gallon, imperial gallons"),
        new("US qt", UsGallon / 4, "US quart, US quarts, qt US"), new("UK qt", UkGallon / 4, "UK quart, UK quarts, imp qt"),
    ];

    private static UnitRow[] SectionModuli() =>
    [
        new("cm3", 1e-6), new("mm3", 1e-9), new("m3", 1), new("in3", Inch * Inch * Inch, "cu in"),
    ];

    private static UnitRow[] SecondMoments() =>
    [
        new("cm4", 1e-8), new("mm4", 1e-12), new("m4", 1), new("in4", Inch * Inch * Inch * Inch),
    ];

    private static UnitRow[] WarpingConstants() =>
    [
        new("cm6", 1e-12), new("mm6", 1e-18), new("m6", 1), new("in6", Inch * Inch * Inch * Inch * Inch * Inch),
    ];

    private static UnitRow[] Angles() =>
    [
        new("°", Degree, "deg, degree, degrees"), new("rad", 1, "radian, radians"), new("mrad", 1e-3),
    ];

    private static UnitRow[] Slopes() =>
    [
        new("mm/m", 1e-3), new("in/ft", 1.0 / 12, "inch/foot, \"/ft, \"/'"), new("thou/in", 1e-3, "mil/in"),
        new("%", 0.01, "percent, per cent"), new("m/m", 1, "mm/mm, in/in"),
    ];

    private static UnitRow[] Masses() =>
    [
        new("kg", 1, "kgs, kilo, kilos, kilogram, kilograms"), new("g", 1e-3, "gram, grams"),
        new("t", 1000, "tonne, tonnes, te, metric ton, metric tons"),
        new("lb", Pound, "lbs, lbm, pound, pounds"),
        new("US ton", UsTon, "US tons, short ton, short tons, US short ton, US short tons, ton US, tons US"),
        new("UK ton", UkTon, "UK tons, long ton, long tons, UK long ton, UK long tons, ton UK, tons UK, imperial ton, imperial tons"),
    ];

    private static UnitRow[] MassesPerLength() =>
    [
        new("kg/m", 1), new("lb/ft", Pound / Foot, "lbs/ft, lb/foot, lbs/foot, lbm/ft, pound/foot, pounds/foot"),
    ];

    private static UnitRow[] Densities() =>
    [
        new("kg/m3", 1), new("g/cm3", 1000, "g/cc, g/mL"), new("kg/L", 1000, "kg/dm3"), new("t/m3", 1000),
        new("lb/ft3", Pound / (Foot * Foot * Foot), "lb/cu ft"), new("lb/in3", Pound / (Inch * Inch * Inch), "lb/cu in"),
    ];

    private static UnitRow[] Times() =>
    [
        new("s", 1, "sec, secs, second, seconds"), new("ms", 1e-3), new("min", Minute, "mins, minute, minutes"),
        new("h", Hour, "hr, hrs, hour, hours"), new("d", 24 * Hour, "day, days"),
    ];

    private static UnitRow[] Speeds() =>
    [
        new("mm/s", 1e-3, "mm/sec, mm/second"), new("m/s", 1, "m/sec"), new("cm/s", 1e-2), new("m/min", 1 / Minute), new("mm/min", 1e-3 / Minute),
        new("in/s", Inch, "in/sec, ips, inch/s, inches/s, \"/s, inches/second"),
        new("in/min", Inch / Minute, "ipm, inches/min, \"/min, inches/minute"), new("ft/s", Foot, "ft/sec"),
        new("ft/min", Foot / Minute, "fpm"),
    ];

    private static UnitRow[] Forces() =>
    [
        new("kN", 1e3, "kilonewton, kilonewtons"), new("N", 1, "newton, newtons"), new("MN", 1e6, "meganewton, meganewtons"),
        new("mN", 1e-3), new("daN", 10),
        new("t", 1000 * Gravity, "tf, tonne, tonnes, te, tonne-force, tonnes-force, metric ton, metric tons, metric tonf"),
        new("kgf", Gravity, "kp"),
        new("lbf", Lbf, "lb, lbs, pound, pounds, pound-force, pounds-force"), new("kip", Kip, "kips, klbf"),
        new("US ton", UsTon * Gravity,
            "US tons, US tonf, short ton, short tons, short tonf, US short ton, US short tons, ton US, tons US, tonf US"),
        new("UK ton", UkTon * Gravity,
            "UK tons, UK tonf, long ton, long tons, long tonf, UK long ton, UK long tons, ton UK, tons UK, tonf UK, "
            + "imperial ton, imperial tons"),
    ];

    private static UnitRow[] ForcesPerLength() =>
    [
        new("N/mm", 1e3), new("kN/m", 1e3), new("N/m", 1), new("kN/mm", 1e6), new("t/m", 1000 * Gravity, "tf/m"),
        new("lbf/in", Lbf / Inch, "lb/in, lbs/in, pli"), new("lbf/ft", Lbf / Foot, "lb/ft, lbs/ft, plf"),
        new("kip/ft", Kip / Foot, "kips/ft"),
    ];

    private static UnitRow[] Moments() =>
    [
        new("kN·m", 1e3), new("N·m", 1), new("N·mm", 1e-3), new("kN·cm", 10), new("kgf·m", Gravity),
        new("lbf·ft", Lbf * Foot, "lb ft, lbs ft, ft lbf, ft lb, ft lbs, foot pound, foot pounds"),
        new("lbf·in", Lbf * Inch, "lb in, lbs in, in lbf, in lb, in lbs, inch pound, inch pounds"),
        new("kip·ft", Kip * Foot, "ft kip, ft kips"), new("kip·in", Kip * Inch, "in kip, in kips"),
    ];

    private static UnitRow[] Stiffnesses() =>
    [
        new("kN/mm", 1e6), new("N/mm", 1e3), new("N/m", 1), new("kN/m", 1e3), new("MN/m", 1e6), new("kgf/mm", 1000 * Gravity),
        new("lbf/in", Lbf / Inch, "lb/in, lbs/in"), new("kip/in", Kip / Inch, "kips/in"),
        new("US ton/in", 2 * Kip / Inch, "short ton/in"),
    ];

    private static UnitRow[] RotationalStiffnesses() =>
    [
        new("kN·m/rad", 1e3), new("N·m/rad", 1), new("N·m/°", 1 / Degree, "Nm/deg"), new("kN·m/°", 1e3 / Degree, "kNm/deg"),
        new("lbf·ft/rad", Lbf * Foot, "lb ft/rad, ft lbf/rad, ft lb/rad"),
        new("lbf·in/rad", Lbf * Inch, "lb in/rad, in lbf/rad, in lb/rad"),
        new("lbf·ft/°", Lbf * Foot / Degree, "lb ft/deg, lbf ft/deg, ft lbf/deg, ft lb/deg"),
    ];

    // Above the atmosphere unless the unit says absolute.
    private static UnitRow[] Pressures() =>
    [
        new("bar", 1e5, "bar g, bar gauge, bars"), new("MPa", 1e6, "MPa g, N/mm2, MN/m2"), new("kPa", 1e3, "kPa g"),
        new("Pa", 1, "N/m2"), new("mbar", 100),
        new("psi", Psi, "psi g, lb/in2, lbf/in2, lb/sq in, lbf/sq in, lbs/sq in"), new("ksi", 1000 * Psi),
        new("kgf/cm2", Gravity * 1e4, "kg/cm2, kp/cm2"),
        new("bar abs", 1e5, "bar a, bar absolute") { Offset = -Atmosphere },
        new("kPa abs", 1e3, "kPa a, kPa absolute") { Offset = -Atmosphere },
        new("MPa abs", 1e6, "MPa a") { Offset = -Atmosphere },
        new("psia", Psi, "psi abs, psi absolute") { Offset = -Atmosphere },
    ];

    private static UnitRow[] Stresses() =>
    [
        new("MPa", 1e6, "MN/m2"), new("N/mm2", 1e6), new("GPa", 1e9), new("kPa", 1e3), new("Pa", 1, "N/m2"),
        new("kN/cm2", 1e7), new("kN/mm2", 1e9), new("kgf/mm2", Gravity * 1e6, "kg/mm2, kp/mm2"),
        new("ksi", 1000 * Psi), new("psi", Psi, "lb/in2, lbf/in2, lb/sq in"),
        new("US ton/in2", 2000 * Psi, "US tons/in2, short ton/in2"), new("UK ton/in2", 2240 * Psi, "UK tons/in2, long ton/in2, UK tsi"),
    ];

    private static UnitRow[] Flows() =>
    [
        new("L/min", 1e-3 / Minute, "lpm, ltr/min, litre/minute, litres/minute, liters/minute, dm3/min"),
        new("L/s", 1e-3), new("L/h", 1e-3 / Hour), new("mL/min", 1e-6 / Minute), new("mL/s", 1e-6),
        new("cm3/s", 1e-6, "cc/s"), new("cm3/min", 1e-6 / Minute, "cc/min"),
        new("m3/h", 1 / Hour, "m3/hr"), new("m3/min", 1 / Minute), new("m3/s", 1),
        new("US gpm", UsGallon / Minute, "gpm US, US gal/min, US gallons/min, US gallons/minute"),
        new("UK gpm", UkGallon / Minute, "gpm UK, UK gal/min, UK gallons/min, imp gpm, imp gal/min, imperial gpm"),
        new("in3/min", Inch * Inch * Inch / Minute, "cu in/min, cubic inches/minute"), new("in3/s", Inch * Inch * Inch, "cu in/s"),
    ];

    private static UnitRow[] FreeAirs() =>
    [
        new("L/min", 1e-3 / Minute, "lpm, ltr/min, litre/minute, litres/minute, liters/minute, dm3/min"), new("L/s", 1e-3),
        new("m3/min", 1 / Minute), new("m3/h", 1 / Hour, "m3/hr"), new("m3/s", 1),
        new("cfm", Foot * Foot * Foot / Minute, "ft3/min, cu ft/min, cubic feet/minute"),
    ];

    private static UnitRow[] Displacements() =>
    [
        new("cm3/rev", 1e-6, "cc/rev, ccm/rev, cm3/r, cc/r, cm3/U, cm3/turn, cc/turn"),
        new("mL/rev", 1e-6, "mL/r, mL/turn"), new("L/rev", 1e-3, "L/r"), new("mm3/rev", 1e-9),
        new("in3/rev", Inch * Inch * Inch, "in3/r, cu in/rev, cu in/r, in3/turn"),
    ];

    private static UnitRow[] Powers() =>
    [
        new("kW", 1e3, "kilowatt, kilowatts"), new("W", 1, "watt, watts"), new("MW", 1e6), new("hp", Horsepower, "horsepower"),
        new("PS", MetricHorsepower, "metric hp, hp metric, metric horsepower, cv, ch"),
    ];

    private static UnitRow[] Energies() =>
    [
        new("J", 1, "joule, joules"), new("kJ", 1e3), new("MJ", 1e6), new("N·m", 1), new("Wh", Hour), new("kWh", 1e3 * Hour),
        new("ft·lbf", Foot * Lbf, "ft lb, ft lbs, lbf ft, lb ft"),
        new("in·lbf", Inch * Lbf, "in lb, in lbs, lbf in, lb in"),
    ];

    private static UnitRow[] Temperatures() =>
    [
        new("°C", 1, "C, deg C, degrees C, Celsius, degrees Celsius"),
        new("°F", 5.0 / 9, "F, deg F, degrees F, Fahrenheit, degrees Fahrenheit") { Offset = -160.0 / 9 },
        new("K", 1, "kelvin, kelvins") { Offset = -273.15 },
    ];

    private static UnitRow[] RotationalSpeeds() =>
    [
        new("rpm", 1 / Minute, "rev/min, r/min, /min, min-1, U/min, turns/min, revs/minute, turns/minute"),
        new("rev/s", 1, "rps, r/s, /s, s-1, turns/s"), new("rad/s", 0.5 / Math.PI),
    ];

    private static UnitRow[] Cadences() =>
    [
        new("/min", 1 / Minute, "/minute, min-1, spm, strokes/min, strokes/minute, stroke/min, cycles/min, squeezes/min"),
        new("/s", 1, "/second, s-1, strokes/s, strokes/second"),
        new("/h", 1 / Hour, "/hour, /hr, strokes/h, squeezes/h"),
    ];

    private static UnitRow[] KinematicViscosities() =>
    [
        new("cSt", 1e-6, "centistokes, centistoke"), new("mm2/s", 1e-6), new("St", 1e-4, "stokes"), new("m2/s", 1),
    ];

    private static UnitRow[] DynamicViscosities() =>
    [
        new("mPa·s", 1e-3), new("cP", 1e-3, "centipoise"), new("Pa·s", 1),
    ];
}
