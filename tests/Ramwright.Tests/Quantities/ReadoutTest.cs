using CsCheck;
using Ramwright.Quantities;

namespace Ramwright.Tests.Quantities;

public class ReadoutTest
{
    private const double Inch = 0.0254, Lbf = 4.4482216152605;

    [Theory]
    [InlineData(0.032, Dimension.Length, UnitSystem.Metric, 3, "32 mm")]
    [InlineData(0.032, Dimension.Length, UnitSystem.Imperial, 3, "1.26 in")]
    [InlineData(1.5, Dimension.Length, UnitSystem.Metric, 3, "1500 mm")]
    [InlineData(0.00005, Dimension.Length, UnitSystem.Metric, 3, "0.05 mm")]
    [InlineData(2.36e-18, Dimension.Slope, UnitSystem.Metric, 3, "0 mm/m")]
    [InlineData(-2.36e-18, Dimension.Slope, UnitSystem.Imperial, 3, "0 in/ft")]
    [InlineData(1.2e-5, Dimension.Slope, UnitSystem.Metric, 3, "0.012 mm/m")]
    [InlineData(2e-6, Dimension.Length, UnitSystem.Metric, 3, "2 µm")]
    [InlineData(0, Dimension.Length, UnitSystem.Metric, 3, "0 mm")]
    [InlineData(-0.0, Dimension.Length, UnitSystem.Metric, 3, "0 mm")]
    [InlineData(-0.0401, Dimension.Length, UnitSystem.Metric, 2, "-40 mm")]
    [InlineData(245166.25, Dimension.Force, UnitSystem.Metric, 3, "245 kN")]
    [InlineData(40000 * Lbf, Dimension.Force, UnitSystem.Imperial, 3, "20 US ton")]
    [InlineData(55.04, Dimension.Force, UnitSystem.Metric, 3, "55 N")]
    [InlineData(-55.04, Dimension.Force, UnitSystem.Metric, 4, "-55.04 N")]
    [InlineData(150, Dimension.Force, UnitSystem.Metric, 3, "0.15 kN")]
    [InlineData(90 * Lbf, Dimension.Force, UnitSystem.Imperial, 3, "90 lbf")]
    [InlineData(700e5, Dimension.Pressure, UnitSystem.Metric, 3, "700 bar")]
    [InlineData(700e5, Dimension.Pressure, UnitSystem.Imperial, 5, "10153 psi")]
    [InlineData(700e5, Dimension.Pressure, UnitSystem.Imperial, 3, "10200 psi")]
    [InlineData(235e6, Dimension.Stress, UnitSystem.Metric, 3, "235 MPa")]
    [InlineData(210e9, Dimension.Stress, UnitSystem.Metric, 3, "210 GPa")]
    [InlineData(235e6, Dimension.Stress, UnitSystem.Imperial, 3, "34.1 ksi")]
    [InlineData(8e-3 / 60, Dimension.Flow, UnitSystem.Metric, 3, "8 L/min")]
    [InlineData(8e-3 / 60, Dimension.Flow, UnitSystem.Imperial, 3, "2.11 US gpm")]
    [InlineData(2237.1, Dimension.Power, UnitSystem.Imperial, 3, "3 hp")]
    [InlineData(2237.1, Dimension.Power, UnitSystem.Metric, 3, "2.24 kW")]
    [InlineData(50, Dimension.Power, UnitSystem.Metric, 3, "50 W")]
    [InlineData(2400, Dimension.Energy, UnitSystem.Metric, 3, "2400 J")]
    [InlineData(24000, Dimension.Energy, UnitSystem.Metric, 3, "24 kJ")]
    [InlineData(28.48e-4, Dimension.Area, UnitSystem.Metric, 4, "28.48 cm2")]
    [InlineData(2 * Inch * Inch, Dimension.Area, UnitSystem.Imperial, 3, "2 in2")]
    [InlineData(194.3e-6, Dimension.SectionModulus, UnitSystem.Metric, 4, "194.3 cm3")]
    [InlineData(1943e-8, Dimension.SecondMoment, UnitSystem.Metric, 4, "1943 cm4")]
    [InlineData(12.99e-9, Dimension.WarpingConstant, UnitSystem.Metric, 4, "12990 cm6")]
    [InlineData(0.03, Dimension.Ratio, UnitSystem.Metric, 3, "3 %")]
    [InlineData(40, Dimension.Temperature, UnitSystem.Metric, 3, "40 °C")]
    [InlineData(40, Dimension.Temperature, UnitSystem.Imperial, 3, "104 °F")]
    [InlineData(Math.PI / 6, Dimension.Angle, UnitSystem.Metric, 3, "30°")]
    [InlineData(1.5e-3, Dimension.Slope, UnitSystem.Metric, 3, "1.5 mm/m")]
    [InlineData(24, Dimension.RotationalSpeed, UnitSystem.Imperial, 4, "1440 rpm")]
    [InlineData(0.5, Dimension.Cadence, UnitSystem.Metric, 3, "30 /min")]
    [InlineData(1.5, Dimension.Number, UnitSystem.Metric, 3, "1.5")]
    [InlineData(120e6, Dimension.Stiffness, UnitSystem.Metric, 3, "120 kN/mm")]
    [InlineData(46e-6, Dimension.KinematicViscosity, UnitSystem.Metric, 3, "46 cSt")]
    public void Writes(double si, Dimension dimension, UnitSystem system, int digits, string expected) =>
        Assert.Equal(expected, Readout.Text(si, dimension, system, digits));

    [Theory]
    [InlineData(0.999e-3, 3, "0.000999")]
    [InlineData(9.999, 3, "10")]
    [InlineData(99.96, 3, "100")]
    [InlineData(0.09996, 3, "0.1")]
    [InlineData(1234567, 3, "1230000")]
    [InlineData(1234567, 9, "1234567")]
    [InlineData(100, 1, "100")]
    [InlineData(-1e-5, 3, "-0.00001")]
    [InlineData(1.5e-12, 3, "1.5e-12")]
    [InlineData(2e20, 3, "2e20")]
    [InlineData(0.1, 17, "0.10000000000000001")]
    public void WritesNumbersPlainly(double value, int digits, string expected) =>
        Assert.Equal(expected, Readout.Number(value, digits));

    [Fact]
    public void WritesInThePersonsOwnUnit()
    {
        Assert.True(QuantityText.TryRead("10,000 psi", Dimension.Pressure, out Quantity limit, out _));
        Assert.Equal("10000 psi", Readout.Text(limit.Si, limit.Unit));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void ShowsOnlyWhatIsFinite(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Readout.Text(value, Dimension.Force));

    [Theory]
    [InlineData(0)]
    [InlineData(18)]
    public void ShowsOneToSeventeenDigits(int digits) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Readout.Text(1, Dimension.Force, digits: digits));

    [Fact]
    public void EveryDimensionHasAUnitInBothSystems()
    {
        foreach (Dimension dimension in Enum.GetValues<Dimension>())
        {
            Assert.Equal(dimension, Readout.UnitFor(dimension, UnitSystem.Metric).Dimension);
            Assert.Equal(dimension, Readout.UnitFor(dimension, UnitSystem.Imperial).Dimension);
            Assert.True(QuantityText.TryRead(DimensionWords.Example(dimension), dimension, out _, out _), $"{dimension}");
        }
    }

    private static readonly Unit[] All = [.. Enum.GetValues<Dimension>().SelectMany(Units.Of)];

    private static readonly Gen<double> Sizes = Gen.Select(Gen.Double[1, 10], Gen.Int[-9, 12], Gen.Bool)
        .Select((m, e, minus) => (minus ? -m : m) * Math.Pow(10, e));

    [Fact]
    public void WhatIsWrittenIsReadAgain()
    {
        Gen.Select(Gen.Enum<Dimension>(), Gen.Enum<UnitSystem>(), Sizes).Sample((dimension, system, size) =>
        {
            double si = dimension == Dimension.Count ? Math.Floor(Math.Abs(size)) : size;

            string text = Readout.Text(si, dimension, system, 15);

            Assert.True(QuantityText.TryRead(text, dimension, out Quantity read, out ReadingFault? fault), $"{text}: {fault?.Found}");
            // slopes and angles that are only rounding are written as none
            double none = dimension is Dimension.Slope or Dimension.Angle && Math.Abs(si) < 1e-7 ? 1e-7 : 0;
            Near.Absolute(si, read.Si, 1e-9 * Math.Abs(si) + 1e-13 * Math.Abs(read.Unit.Offset) + none, text);
        });
    }

    [Fact]
    public void WhatIsWrittenInAnyUnitIsReadAgain()
    {
        Gen.Select(Gen.Int[0, All.Length - 1].Select(i => All[i]), Sizes).Sample((unit, x) =>
        {
            if (unit.Dimension is Dimension.Count or Dimension.Ratio)
                return; // whole numbers and shares only
            string text = Readout.Text(unit.ToSi(x), unit, 15);

            Assert.True(QuantityText.TryRead(text, unit.Dimension, out Quantity read, out ReadingFault? fault), $"{text}: {fault?.Found}");
            Assert.Same(unit, read.Unit);
            Near.Absolute(unit.ToSi(x), read.Si, 1e-9 * Math.Abs(unit.ToSi(x)) + 1e-13 * Math.Abs(unit.Offset), text);
        });
    }
}
