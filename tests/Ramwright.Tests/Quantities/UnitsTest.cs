using CsCheck;
using Ramwright.Quantities;
using Un = UnitsNet;
using UnitsNet.Units;
using Quantity = Ramwright.Quantities.Quantity;

namespace Ramwright.Tests.Quantities;

/// <summary>Every factor and offset against UnitsNet, an independent open-source table.</summary>
public class UnitsTest
{
    // What UnitsNet does not know as one unit, or holds rounded (hp to 745.69 W, UK gpm to six figures), is put together from its pieces.
    private static double In(double x, Enum unit, Enum si) => (double)Un.Quantity.From(x, unit).As(si);
    private static double Inch => In(1, LengthUnit.Inch, LengthUnit.Meter);
    private static double Foot => In(1, LengthUnit.Foot, LengthUnit.Meter);
    private static double Mil => In(1, LengthUnit.Mil, LengthUnit.Meter);
    private static double Pound => In(1, MassUnit.Pound, MassUnit.Kilogram);
    private static double Lbf => In(1, ForceUnit.PoundForce, ForceUnit.Newton);
    private static double Psi => In(1, PressureUnit.PoundForcePerSquareInch, PressureUnit.Pascal);
    private static double CubicInch => In(1, VolumeUnit.CubicInch, VolumeUnit.CubicMeter);
    private static double Atmosphere => In(1, PressureUnit.Atmosphere, PressureUnit.Pascal);
    private static double LongTonOfForce => In(1, MassUnit.LongTon, MassUnit.Kilogram) * In(1, ForceUnit.KilogramForce, ForceUnit.Newton);

    private static readonly Dictionary<(Dimension, string), Func<double, double>> UnitsNet = Table();

    private static Dictionary<(Dimension, string), Func<double, double>> Table()
    {
        var table = new Dictionary<(Dimension, string), Func<double, double>>();
        void Direct(Dimension dimension, Enum si, params (string Symbol, Enum Unit)[] rows)
        {
            foreach ((string symbol, Enum unit) in rows)
                table.Add((dimension, symbol), x => In(x, unit, si));
        }
        void Pieces(Dimension dimension, params (string Symbol, double Factor)[] rows)
        {
            foreach ((string symbol, double factor) in rows)
                table.Add((dimension, symbol), x => x * factor);
        }

        Pieces(Dimension.Number, ("", 1));
        Pieces(Dimension.Count, ("", 1));
        Direct(Dimension.Ratio, RatioUnit.DecimalFraction, ("%", RatioUnit.Percent), ("", RatioUnit.DecimalFraction));
        Direct(Dimension.Length, LengthUnit.Meter,
            ("mm", LengthUnit.Millimeter), ("m", LengthUnit.Meter), ("cm", LengthUnit.Centimeter), ("km", LengthUnit.Kilometer),
            ("µm", LengthUnit.Micrometer), ("in", LengthUnit.Inch), ("ft", LengthUnit.Foot), ("yd", LengthUnit.Yard), ("thou", LengthUnit.Mil));
        Direct(Dimension.Area, AreaUnit.SquareMeter,
            ("cm2", AreaUnit.SquareCentimeter), ("mm2", AreaUnit.SquareMillimeter), ("m2", AreaUnit.SquareMeter),
            ("in2", AreaUnit.SquareInch), ("ft2", AreaUnit.SquareFoot));
        Direct(Dimension.Volume, VolumeUnit.CubicMeter,
            ("L", VolumeUnit.Liter), ("mL", VolumeUnit.Milliliter), ("cm3", VolumeUnit.CubicCentimeter), ("mm3", VolumeUnit.CubicMillimeter),
            ("m3", VolumeUnit.CubicMeter), ("in3", VolumeUnit.CubicInch), ("ft3", VolumeUnit.CubicFoot), ("US gal", VolumeUnit.UsGallon),
            ("UK gal", VolumeUnit.ImperialGallon), ("US qt", VolumeUnit.UsQuart), ("UK qt", VolumeUnit.ImperialQuart));
        Direct(Dimension.SectionModulus, VolumeUnit.CubicMeter,
            ("cm3", VolumeUnit.CubicCentimeter), ("mm3", VolumeUnit.CubicMillimeter), ("m3", VolumeUnit.CubicMeter), ("in3", VolumeUnit.CubicInch));
        Direct(Dimension.SecondMoment, AreaMomentOfInertiaUnit.MeterToTheFourth,
            ("cm4", AreaMomentOfInertiaUnit.CentimeterToTheFourth), ("mm4", AreaMomentOfInertiaUnit.MillimeterToTheFourth),
            ("m4", AreaMomentOfInertiaUnit.MeterToTheFourth), ("in4", AreaMomentOfInertiaUnit.InchToTheFourth));
        Direct(Dimension.WarpingConstant, WarpingMomentOfInertiaUnit.MeterToTheSixth,
            ("cm6", WarpingMomentOfInertiaUnit.CentimeterToTheSixth), ("mm6", WarpingMomentOfInertiaUnit.MillimeterToTheSixth),
            ("m6", WarpingMomentOfInertiaUnit.MeterToTheSixth), ("in6", WarpingMomentOfInertiaUnit.InchToTheSixth));
        Direct(Dimension.Angle, AngleUnit.Radian, ("°", AngleUnit.Degree), ("rad", AngleUnit.Radian), ("mrad", AngleUnit.Milliradian));
        Pieces(Dimension.Slope,
            ("mm/m", In(1, LengthUnit.Millimeter, LengthUnit.Meter)), ("in/ft", Inch / Foot), ("thou/in", Mil / Inch),
            ("%", In(1, RatioUnit.Percent, RatioUnit.DecimalFraction)), ("m/m", 1));
        Direct(Dimension.Mass, MassUnit.Kilogram,
            ("kg", MassUnit.Kilogram), ("g", MassUnit.Gram), ("t", MassUnit.Tonne), ("lb", MassUnit.Pound),
            ("US ton", MassUnit.ShortTon), ("UK ton", MassUnit.LongTon));
        Pieces(Dimension.MassPerLength, ("kg/m", 1), ("lb/ft", Pound / Foot));
        Direct(Dimension.Density, DensityUnit.KilogramPerCubicMeter,
            ("kg/m3", DensityUnit.KilogramPerCubicMeter), ("g/cm3", DensityUnit.GramPerCubicCentimeter), ("kg/L", DensityUnit.KilogramPerLiter),
            ("t/m3", DensityUnit.TonnePerCubicMeter));
        Pieces(Dimension.Density, ("lb/ft3", Pound / (Foot * Foot * Foot)), ("lb/in3", Pound / CubicInch));
        Direct(Dimension.Time, DurationUnit.Second,
            ("s", DurationUnit.Second), ("ms", DurationUnit.Millisecond), ("min", DurationUnit.Minute), ("h", DurationUnit.Hour), ("d", DurationUnit.Day));
        Direct(Dimension.Speed, SpeedUnit.MeterPerSecond,
            ("mm/s", SpeedUnit.MillimeterPerSecond), ("m/s", SpeedUnit.MeterPerSecond), ("cm/s", SpeedUnit.CentimeterPerSecond),
            ("m/min", SpeedUnit.MeterPerMinute), ("mm/min", SpeedUnit.MillimeterPerMinute), ("in/s", SpeedUnit.InchPerSecond),
            ("in/min", SpeedUnit.InchPerMinute), ("ft/s", SpeedUnit.FootPerSecond), ("ft/min", SpeedUnit.FootPerMinute));
        Direct(Dimension.Force, ForceUnit.Newton,
            ("kN", ForceUnit.Kilonewton), ("N", ForceUnit.Newton), ("MN", ForceUnit.Meganewton), ("mN", ForceUnit.Millinewton),
            ("daN", ForceUnit.Decanewton), ("t", ForceUnit.TonneForce), ("kgf", ForceUnit.KilogramForce), ("lbf", ForceUnit.PoundForce),
            ("kip", ForceUnit.KilopoundForce), ("US ton", ForceUnit.ShortTonForce));
        Pieces(Dimension.Force, ("UK ton", LongTonOfForce));
        Direct(Dimension.ForcePerLength, ForcePerLengthUnit.NewtonPerMeter,
            ("N/mm", ForcePerLengthUnit.NewtonPerMillimeter), ("kN/m", ForcePerLengthUnit.KilonewtonPerMeter), ("N/m", ForcePerLengthUnit.NewtonPerMeter),
            ("kN/mm", ForcePerLengthUnit.KilonewtonPerMillimeter));
        Pieces(Dimension.ForcePerLength, ("lbf/in", Lbf / Inch), ("lbf/ft", Lbf / Foot), ("kip/ft", 1000 * Lbf / Foot),
            ("t/m", In(1, ForceUnit.TonneForce, ForceUnit.Newton)));
        Direct(Dimension.Moment, TorqueUnit.NewtonMeter,
            ("kN·m", TorqueUnit.KilonewtonMeter), ("N·m", TorqueUnit.NewtonMeter), ("N·mm", TorqueUnit.NewtonMillimeter),
            ("kN·cm", TorqueUnit.KilonewtonCentimeter), ("kgf·m", TorqueUnit.KilogramForceMeter), ("lbf·ft", TorqueUnit.PoundForceFoot),
            ("lbf·in", TorqueUnit.PoundForceInch), ("kip·ft", TorqueUnit.KilopoundForceFoot), ("kip·in", TorqueUnit.KilopoundForceInch));
        Direct(Dimension.Stiffness, ForcePerLengthUnit.NewtonPerMeter,
            ("kN/mm", ForcePerLengthUnit.KilonewtonPerMillimeter), ("N/mm", ForcePerLengthUnit.NewtonPerMillimeter),
            ("N/m", ForcePerLengthUnit.NewtonPerMeter), ("kN/m", ForcePerLengthUnit.KilonewtonPerMeter), ("MN/m", ForcePerLengthUnit.MeganewtonPerMeter));
        Pieces(Dimension.Stiffness, ("lbf/in", Lbf / Inch), ("kip/in", 1000 * Lbf / Inch),
            ("kgf/mm", 1000 * In(1, ForceUnit.KilogramForce, ForceUnit.Newton)), ("US ton/in", In(1, ForceUnit.ShortTonForce, ForceUnit.Newton) / Inch));
        Direct(Dimension.RotationalStiffness, RotationalStiffnessUnit.NewtonMeterPerRadian,
            ("kN·m/rad", RotationalStiffnessUnit.KilonewtonMeterPerRadian), ("N·m/rad", RotationalStiffnessUnit.NewtonMeterPerRadian),
            ("N·m/°", RotationalStiffnessUnit.NewtonMeterPerDegree), ("kN·m/°", RotationalStiffnessUnit.KilonewtonMeterPerDegree),
            ("lbf·ft/rad", RotationalStiffnessUnit.PoundForceFeetPerRadian));
        Pieces(Dimension.RotationalStiffness, ("lbf·ft/°", Foot * Lbf / In(1, AngleUnit.Degree, AngleUnit.Radian)), ("lbf·in/rad", In(1, TorqueUnit.PoundForceInch, TorqueUnit.NewtonMeter)));
        Direct(Dimension.Pressure, PressureUnit.Pascal,
            ("bar", PressureUnit.Bar), ("MPa", PressureUnit.Megapascal), ("kPa", PressureUnit.Kilopascal), ("Pa", PressureUnit.Pascal),
            ("mbar", PressureUnit.Millibar), ("psi", PressureUnit.PoundForcePerSquareInch), ("ksi", PressureUnit.KilopoundForcePerSquareInch),
            ("kgf/cm2", PressureUnit.KilogramForcePerSquareCentimeter));
        foreach ((string symbol, PressureUnit unit) in new[]
        {
            ("bar abs", PressureUnit.Bar), ("kPa abs", PressureUnit.Kilopascal), ("MPa abs", PressureUnit.Megapascal),
            ("psia", PressureUnit.PoundForcePerSquareInch),
        })
        {
            table.Add((Dimension.Pressure, symbol), x => In(x, unit, PressureUnit.Pascal) - Atmosphere);
        }
        Direct(Dimension.Stress, PressureUnit.Pascal,
            ("MPa", PressureUnit.Megapascal), ("N/mm2", PressureUnit.NewtonPerSquareMillimeter), ("GPa", PressureUnit.Gigapascal),
            ("kPa", PressureUnit.Kilopascal), ("Pa", PressureUnit.Pascal), ("kN/cm2", PressureUnit.KilonewtonPerSquareCentimeter),
            ("kN/mm2", PressureUnit.KilonewtonPerSquareMillimeter), ("kgf/mm2", PressureUnit.KilogramForcePerSquareMillimeter),
            ("ksi", PressureUnit.KilopoundForcePerSquareInch), ("psi", PressureUnit.PoundForcePerSquareInch));
        Pieces(Dimension.Stress, ("US ton/in2", 2000 * Psi), ("UK ton/in2", LongTonOfForce / (Inch * Inch)));
        Direct(Dimension.Flow, VolumeFlowUnit.CubicMeterPerSecond,
            ("L/min", VolumeFlowUnit.LiterPerMinute), ("L/s", VolumeFlowUnit.LiterPerSecond), ("L/h", VolumeFlowUnit.LiterPerHour),
            ("mL/min", VolumeFlowUnit.MilliliterPerMinute), ("mL/s", VolumeFlowUnit.MilliliterPerSecond),
            ("cm3/min", VolumeFlowUnit.CubicCentimeterPerMinute), ("m3/h", VolumeFlowUnit.CubicMeterPerHour),
            ("m3/min", VolumeFlowUnit.CubicMeterPerMinute), ("m3/s", VolumeFlowUnit.CubicMeterPerSecond),
            ("US gpm", VolumeFlowUnit.UsGallonPerMinute));
        Pieces(Dimension.Flow,
            ("cm3/s", In(1, VolumeUnit.CubicCentimeter, VolumeUnit.CubicMeter)), ("in3/min", CubicInch / 60), ("in3/s", CubicInch),
            ("UK gpm", In(1, VolumeUnit.ImperialGallon, VolumeUnit.CubicMeter) / 60));
        Direct(Dimension.FreeAir, VolumeFlowUnit.CubicMeterPerSecond,
            ("L/min", VolumeFlowUnit.LiterPerMinute), ("L/s", VolumeFlowUnit.LiterPerSecond), ("m3/min", VolumeFlowUnit.CubicMeterPerMinute),
            ("m3/h", VolumeFlowUnit.CubicMeterPerHour), ("m3/s", VolumeFlowUnit.CubicMeterPerSecond), ("cfm", VolumeFlowUnit.CubicFootPerMinute));
        Direct(Dimension.Displacement, VolumeUnit.CubicMeter,
            ("cm3/rev", VolumeUnit.CubicCentimeter), ("mL/rev", VolumeUnit.Milliliter), ("L/rev", VolumeUnit.Liter),
            ("mm3/rev", VolumeUnit.CubicMillimeter), ("in3/rev", VolumeUnit.CubicInch));
        Direct(Dimension.Power, PowerUnit.Watt,
            ("kW", PowerUnit.Kilowatt), ("W", PowerUnit.Watt), ("MW", PowerUnit.Megawatt), ("PS", PowerUnit.MetricHorsepower));
        Pieces(Dimension.Power, ("hp", 550 * Foot * Lbf)); // Watt's: 550 foot-pounds a second
        Direct(Dimension.Energy, EnergyUnit.Joule,
            ("J", EnergyUnit.Joule), ("kJ", EnergyUnit.Kilojoule), ("MJ", EnergyUnit.Megajoule), ("N·m", EnergyUnit.Joule),
            ("Wh", EnergyUnit.WattHour), ("kWh", EnergyUnit.KilowattHour), ("ft·lbf", EnergyUnit.FootPound));
        Pieces(Dimension.Energy, ("in·lbf", Inch * Lbf));
        Direct(Dimension.Temperature, TemperatureUnit.DegreeCelsius,
            ("°C", TemperatureUnit.DegreeCelsius), ("°F", TemperatureUnit.DegreeFahrenheit), ("K", TemperatureUnit.Kelvin));
        Direct(Dimension.RotationalSpeed, RotationalSpeedUnit.RevolutionPerSecond,
            ("rpm", RotationalSpeedUnit.RevolutionPerMinute), ("rev/s", RotationalSpeedUnit.RevolutionPerSecond),
            ("rad/s", RotationalSpeedUnit.RadianPerSecond));
        Direct(Dimension.Cadence, FrequencyUnit.Hertz,
            ("/min", FrequencyUnit.CyclePerMinute), ("/s", FrequencyUnit.PerSecond), ("/h", FrequencyUnit.CyclePerHour));
        Direct(Dimension.KinematicViscosity, KinematicViscosityUnit.SquareMeterPerSecond,
            ("cSt", KinematicViscosityUnit.Centistokes), ("St", KinematicViscosityUnit.Stokes), ("m2/s", KinematicViscosityUnit.SquareMeterPerSecond));
        Pieces(Dimension.KinematicViscosity, ("mm2/s", In(1, AreaUnit.SquareMillimeter, AreaUnit.SquareMeter)));
        Direct(Dimension.DynamicViscosity, DynamicViscosityUnit.PascalSecond,
            ("mPa·s", DynamicViscosityUnit.MillipascalSecond), ("cP", DynamicViscosityUnit.Centipoise), ("Pa·s", DynamicViscosityUnit.PascalSecond));
        return table;
    }

    private static readonly Unit[] All = [.. Enum.GetValues<Dimension>().SelectMany(Units.Of)];

    public static TheoryData<Dimension> Dimensions => new(Enum.GetValues<Dimension>());

    [Theory, MemberData(nameof(Dimensions))]
    public void FactorsAndOffsetsAreThoseOfUnitsNet(Dimension dimension)
    {
        var source = new Reference($"UN-{dimension}", "UnitsNet 5.75", Trust.Found);
        foreach (Unit unit in Units.Of(dimension))
        {
            Assert.True(UnitsNet.TryGetValue((dimension, unit.Symbol), out Func<double, double>? expected),
                $"{unit.Symbol} of {dimension} is not checked against anything");
            double zero = expected(0);
            source.Near($"1 {unit.Symbol}, difference", expected(1) - zero, unit.ToSi(1) - unit.ToSi(0), 1e-9);
            source.Within($"0 {unit.Symbol}", zero, unit.ToSi(0), 1e-9 * Math.Abs(zero));
        }
    }

    [Fact]
    public void NothingIsCheckedThatIsNoUnit() =>
        Assert.All(UnitsNet.Keys, key => Assert.Contains(Units.Of(key.Item1), u => u.Symbol == key.Item2));

    [Fact]
    public void EveryUnitGoesToSiAndBack() =>
        Gen.Select(Gen.Int[0, All.Length - 1].Select(i => All[i]), Gen.Double[-1e9, 1e9])
            .Sample((unit, x) =>
                Near.Absolute(x, unit.FromSi(unit.ToSi(x)), 1e-14 * (Math.Abs(x) + Math.Abs(unit.Offset / unit.Factor)) + 1e-300, unit.Symbol));

    [Theory, MemberData(nameof(Dimensions))]
    public void EverySpellingFindsItsOwnUnit(Dimension dimension)
    {
        foreach (Unit unit in Units.Of(dimension))
        {
            foreach (string spelling in unit.Aliases.Prepend(unit.Symbol))
            {
                Assert.True(Units.TryFind(spelling, dimension, out Unit? found), spelling);
                Assert.Same(unit, found);
            }
        }
    }

    [Fact]
    public void AUnitIsTheSameObjectEveryTime()
    {
        Assert.Same(Units.Of(Dimension.Force), Units.Of(Dimension.Force));
        Assert.All(Units.Of(Dimension.Force), unit => Assert.Equal(Dimension.Force, unit.Dimension));
    }

    [Fact]
    public void CaseThatTellsUnitsApartIsHeeded()
    {
        Assert.False(Units.TryFind("mPa", Dimension.Pressure, out _));
        Assert.False(Units.TryFind("mn", Dimension.Force, out _));
        Assert.True(Units.TryFind("KPA", Dimension.Pressure, out Unit? kPa));
        Assert.Equal("kPa", kPa.Symbol);
    }

    [Fact]
    public void NoSuchDimensionIsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Units.Of((Dimension)999));

    [Fact]
    public void UnitTraps()
    {
        var source = new Reference("CY-22", "SI definitions of pound, inch and standard gravity", Trust.FromMemoryAndRecomputed);
        static double Si(string text, Dimension dimension) =>
            QuantityText.TryRead(text, dimension, out Quantity q, out ReadingFault? fault) ? q.Si : throw new InvalidOperationException(fault.Found);

        source.Near("10 000 psi, bar", 689.48, Si("10,000 psi", Dimension.Pressure) / 1e5, 1e-4);
        Assert.True(Units.TryFind("psi", Dimension.Pressure, out Unit? psi));
        source.Near("700 bar, psi", 10153, psi.FromSi(Si("700 bar", Dimension.Pressure)), 1e-4);
        source.Near("US ton, kN", 8.896, Si("1 US ton", Dimension.Force) / 1e3, 1e-4);
        source.Near("long ton, kN", 9.964, Si("1 long ton", Dimension.Force) / 1e3, 1e-4);
        source.Within("700 bar over 10 000 psi, %", 1.5, 100 * (Si("700 bar", Dimension.Pressure) / Si("10,000 psi", Dimension.Pressure) - 1), 0.05);
    }
}
