using CsCheck;
using Ramwright.Quantities;

namespace Ramwright.Tests.Quantities;

/// <summary>What is refused, word for word: this table is what a person at the bench gets to read.</summary>
public class QuantityRefusalTest
{
    [Theory]
    [InlineData("25 ton", Dimension.Force, "ton",
        "\"ton\" is three different forces",
        "say which: 25 t (tonne-force, 9.807 kN each), 25 US ton (8.896 kN each) or 25 UK ton (9.964 kN each)")]
    [InlineData("25 tons", Dimension.Force, "tons",
        "\"tons\" is three different forces",
        "say which: 25 t (tonne-force, 9.807 kN each), 25 US ton (8.896 kN each) or 25 UK ton (9.964 kN each)")]
    [InlineData("25T", Dimension.Force, "T",
        "capital T is written for three different tons",
        "say which: 25 t (tonne-force, 9.807 kN each), 25 US ton (8.896 kN each) or 25 UK ton (9.964 kN each)")]
    [InlineData("2 tons", Dimension.Mass, "tons",
        "\"tons\" is three different masses",
        "say which: 2 t (tonne, 1000 kg each), 2 US ton (907.2 kg each) or 2 UK ton (1016 kg each)")]
    [InlineData("25 ton", Dimension.Pressure, "ton",
        "\"ton\" is a mass or a force",
        "a pressure, such as 210 bar")]
    [InlineData("15 tsi", Dimension.Stress, "tsi",
        "\"tsi\" does not say whether it is the US or the UK one",
        "say which: 15 US ton/in2 or 15 UK ton/in2 (13.79 and 15.44 MPa each)")]
    [InlineData("5 gal", Dimension.Volume, "gal",
        "\"gal\" does not say whether it is the US or the UK one",
        "say which: 5 US gal or 5 UK gal (3.785 and 4.546 L each)")]
    [InlineData("11 gpm", Dimension.Flow, "gpm",
        "\"gpm\" does not say whether it is the US or the UK one",
        "say which: 11 US gpm or 11 UK gpm (3.785 and 4.546 L/min each)")]
    [InlineData("2 quarts", Dimension.Volume, "quarts",
        "\"quarts\" does not say whether it is the US or the UK one",
        "say which: 2 US qt or 2 UK qt (0.946 and 1.137 L each)")]
    [InlineData("1,5 mm", Dimension.Length, "1,5",
        "1,5 has a comma where the decimal point belongs",
        "1.5 mm")]
    [InlineData("0,500 in", Dimension.Length, "0,500",
        "0,500 has a comma where the decimal point belongs",
        "0.500 in")]
    [InlineData(",5 mm", Dimension.Length, ",5",
        ",5 has a comma where the decimal point belongs",
        "0.5 mm")]
    [InlineData("1.500,5 mm", Dimension.Length, "1.500,5",
        "1.500,5 has a comma where the decimal point belongs",
        "1500.5 mm")]
    [InlineData("1.500.000 mm", Dimension.Length, "1.500.000",
        "1.500.000 has more than one point",
        "thousands without points: 1500000 mm")]
    [InlineData("1,50,000 mm", Dimension.Length, "1,50,000",
        "the commas in 1,50,000 do not part it into groups of three",
        "no commas, such as 150000 mm, if that is what is meant")]
    [InlineData("1.2.3 mm", Dimension.Length, "1.2.3",
        "1.2.3 has more than one point",
        "one point at most, such as 1.5")]
    [InlineData("600", Dimension.Length, "600",
        "600 has no unit",
        "a length with its unit, such as 600 mm or 600 in")]
    [InlineData("700", Dimension.Pressure, "700",
        "700 has no unit",
        "a pressure with its unit, such as 700 bar or 700 psi")]
    [InlineData("40", Dimension.Temperature, "40",
        "40 has no unit",
        "a temperature with its unit, such as 40 °C or 40 °F")]
    [InlineData("0", Dimension.Temperature, "0",
        "0 has no unit",
        "a temperature with its unit, such as 0 °C or 0 °F")]
    [InlineData("600 mm", Dimension.Pressure, "mm",
        "\"mm\" is a length",
        "a pressure, such as 210 bar")]
    [InlineData("700 bar", Dimension.Length, "bar",
        "\"bar\" is a pressure",
        "a length, such as 600 mm")]
    [InlineData("400 kg", Dimension.Force, "kg",
        "\"kg\" is a mass, not a force",
        "400 kgf for its weight, or newtons")]
    [InlineData("4.2 cc", Dimension.Displacement, "cc",
        "\"cc\" is a volume",
        "a volume per turn, such as 4.2 cm3/rev")]
    [InlineData("1°", Dimension.Slope, "°",
        "\"°\" is an angle",
        "a slope, such as 1.5 mm/m")]
    [InlineData("12 mmm", Dimension.Length, "mmm",
        "no unit is called \"mmm\"",
        "the nearest is mm: 12 mm")]
    [InlineData("12 imch", Dimension.Length, "imch",
        "no unit is called \"imch\"",
        "the nearest is in: 12 in")]
    [InlineData("70 bars g", Dimension.Pressure, "g",
        "\"g\" is left over",
        "only a pressure, such as 210 bar")]
    [InlineData("10 psl", Dimension.Pressure, "psl",
        "no unit is called \"psl\"",
        "the nearest is psi: 10 psi")]
    [InlineData("10 blah", Dimension.Pressure, "blah",
        "no unit is called \"blah\"",
        "a pressure, such as 210 bar")]
    [InlineData("NaN", Dimension.Length, "NaN",
        "\"NaN\" is not a finite number",
        "start with the number: a length, such as 600 mm")]
    [InlineData("NaN mm", Dimension.Length, "NaN",
        "\"NaN\" is not a finite number",
        "start with the number: a length, such as 600 mm")]
    [InlineData("infinity mm", Dimension.Length, "infinity",
        "\"infinity\" is not a finite number",
        "start with the number: a length, such as 600 mm")]
    [InlineData("∞ mm", Dimension.Length, "∞",
        "\"∞\" is not a finite number",
        "start with the number: a length, such as 600 mm")]
    [InlineData("1e309 mm", Dimension.Length, "1e309",
        "1e309 is too large to be meant",
        "a number of everyday size")]
    [InlineData("1e308 m", Dimension.Length, "1e308",
        "1e308 is too large to be meant",
        "a number of everyday size")]
    [InlineData("1e-330 mm", Dimension.Length, "1e-330",
        "1e-330 is too small to be meant",
        "0, or a number of everyday size")]
    [InlineData("1e-60 mm", Dimension.Length, "1e-60",
        "1e-60 is too small to be meant",
        "0, or a number of everyday size")]
    [InlineData("", Dimension.Length, "",
        "nothing is written here",
        "a length, such as 600 mm")]
    [InlineData("   ", Dimension.Length, "   ",
        "nothing is written here",
        "a length, such as 600 mm")]
    [InlineData("-", Dimension.Length, "-",
        "the number is missing",
        "a length, such as 600 mm")]
    [InlineData("600 mm 200 mm", Dimension.Length, "200 mm",
        "there are two numbers, 600 mm and 200 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("600 200 mm", Dimension.Length, "200 mm",
        "there are two numbers, 600 and 200 mm",
        "600,200 mm if it is one number; else only one of them")]
    [InlineData("10 000 mm", Dimension.Length, "000 mm",
        "there are two numbers, 10 and 000 mm",
        "10,000 mm if it is one number; else only one of them")]
    [InlineData("10-20 mm", Dimension.Length, "20 mm",
        "there are two numbers, 10 and 20 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("10 - 20 mm", Dimension.Length, "20 mm",
        "there are two numbers, 10 and 20 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("600x400 mm", Dimension.Length, "400 mm",
        "there are two numbers, 600 and 400 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("10 ± 1 mm", Dimension.Length, "1 mm",
        "there are two numbers, 10 and 1 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("3/0 in", Dimension.Length, "3/0",
        "3/0 divides by zero",
        "a fraction such as 3/4")]
    [InlineData("1 3/0 in", Dimension.Length, "3/0",
        "3/0 divides by zero",
        "a fraction such as 3/4")]
    [InlineData("1 5/4 in", Dimension.Length, "5/4",
        "5/4 after a whole number is not less than one",
        "a fraction below one, such as 1-1/4")]
    [InlineData("1.5 3/4 in", Dimension.Length, "1.5 3/4",
        "1.5 3/4 mixes a fraction with decimals",
        "one or the other: 1.25, 5/4 or 1-1/4")]
    [InlineData("1.5/4 in", Dimension.Length, "1.5/4",
        "1.5/4 mixes a fraction with decimals",
        "one or the other: 1.25, 5/4 or 1-1/4")]
    [InlineData("3/4.5 in", Dimension.Length, "3/4.5",
        "3/4.5 mixes a fraction with decimals",
        "one or the other: 1.25, 5/4 or 1-1/4")]
    [InlineData("1.5½ in", Dimension.Length, "1.5½",
        "1.5½ mixes a fraction with decimals",
        "one or the other: 1.25, 5/4 or 1-1/4")]
    [InlineData("about 600 mm", Dimension.Length, "about",
        "\"about\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("600 mm or so", Dimension.Length, "or so",
        "\"or so\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("25 t of load", Dimension.Force, "of load",
        "\"of load\" is left over",
        "only a force, such as 250 kN")]
    [InlineData("600 mm, roughly", Dimension.Length, ", roughly",
        "\", roughly\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("~600 mm", Dimension.Length, "~600",
        "\"~600\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("5' 3", Dimension.Length, "3",
        "3 after the feet has no unit",
        "inches marked as such: 5' 3-1/2\" or 5 ft 3 in")]
    [InlineData("5.5' 3\"", Dimension.Length, "5.5",
        "5.5 is not a whole number of feet, and inches follow",
        "whole feet before inches: 5' 3-1/2\"")]
    [InlineData("5' 15\"", Dimension.Length, "15",
        "15 inches after the feet make another foot",
        "less than 12 inches after feet: 5' 3-1/2\"")]
    [InlineData("5' 30 mm", Dimension.Length, "30 mm",
        "there are two numbers, 5' and 30 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("5' 1,5\"", Dimension.Length, "1,5",
        "1,5 has a comma where the decimal point belongs",
        "5' 1.5\"")]
    [InlineData("5' 3\"", Dimension.Pressure, "3\"",
        "there are two numbers, 5' and 3\"",
        "only one number: a pressure, such as 210 bar")]
    [InlineData("70 mPa", Dimension.Pressure, "mPa",
        "\"mPa\" is not MPa: small m is a thousandth, capital M a million",
        "mind the case: 70 MPa")]
    [InlineData("5 mn", Dimension.Force, "mn",
        "\"mn\" could be MN or mN",
        "mind the case: 5 MN or 5 mN")]
    [InlineData("1.5 M", Dimension.Length, "M",
        "\"M\" is not m: small m is a thousandth, capital M a million",
        "mind the case: 1.5 m")]
    [InlineData("3 mW", Dimension.Power, "mW",
        "\"mW\" is not MW: small m is a thousandth, capital M a million",
        "mind the case: 3 MW")]
    [InlineData("9 scfm", Dimension.FreeAir, "scfm",
        "\"scfm\" counts air at a reference state, not as it is drawn in at the intake",
        "the free air delivered, such as 9 cfm or 250 L/min")]
    [InlineData("250 Nl/min", Dimension.FreeAir, "Nl/min",
        "\"Nl/min\" counts air at a reference state, not as it is drawn in at the intake",
        "the free air delivered, such as 250 cfm or 250 L/min")]
    [InlineData("15 Nm3/h", Dimension.FreeAir, "Nm3/h",
        "\"Nm3/h\" counts air at a reference state, not as it is drawn in at the intake",
        "the free air delivered, such as 15 cfm or 250 L/min")]
    [InlineData("9 cfm", Dimension.Flow, "cfm",
        "\"cfm\" is a flow of free air",
        "a flow of oil, such as 8 L/min")]
    [InlineData("11 gpm", Dimension.FreeAir, "gpm",
        "\"gpm\" is a flow of oil",
        "a flow of free air, such as 250 L/min")]
    [InlineData("2.5", Dimension.Count, "2.5",
        "2.5 is not a whole number",
        "a whole number, such as 4")]
    [InlineData("2,5", Dimension.Count, "2,5",
        "2,5 has a comma where the decimal point belongs",
        "2.5")]
    [InlineData("4 mm", Dimension.Count, "mm",
        "\"mm\" is a length",
        "a count, such as 4")]
    [InlineData("3", Dimension.Ratio, "3",
        "3 without % is not a share of one",
        "3 % or a number from 0 to 1, such as 0.03")]
    [InlineData("-0.1", Dimension.Ratio, "-0.1",
        "-0.1 without % is not a share of one",
        "-0.1 % or a number from 0 to 1, such as 0.03")]
    [InlineData("1.5 mm", Dimension.Number, "mm",
        "\"mm\" is a length",
        "a plain number, such as 1.5")]
    [InlineData("5 %", Dimension.Number, "%",
        "\"%\" is a share or a slope",
        "a plain number, such as 1.5")]
    [InlineData("600 mm²", Dimension.Length, "mm²",
        "\"mm²\" is an area",
        "a length, such as 600 mm")]
    [InlineData("mm 600", Dimension.Length, "mm",
        "\"mm\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("\"600 mm\"", Dimension.Length, "\"600",
        "“\"600” stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("600;mm", Dimension.Length, ";mm",
        "\";mm\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("(600 mm)", Dimension.Length, "(600",
        "\"(600\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("25 t + 3 t", Dimension.Force, "3 t",
        "there are two numbers, 25 t and 3 t",
        "only one number: a force, such as 250 kN")]
    [InlineData("50 Hz", Dimension.RotationalSpeed, "Hz",
        "no unit is called \"Hz\"",
        "a speed of rotation, such as 1440 rpm")]
    [InlineData("99999999999999999999999999999999999999999999999999999999999999999999999999999999999999999 mm", Dimension.Length, "99999999999999999999999999999999999999999999999999999999999999999999999999999999999999999",
        "9999999999999999999999999999999999999... is too large to be meant",
        "a number of everyday size")]
    [InlineData("30", Dimension.Cadence, "30",
        "30 has no unit",
        "a rate of strokes with its unit, such as 30 /min")]
    [InlineData("1 in 200", Dimension.Length, "200",
        "there are two numbers, 1 in and 200",
        "only one number: a length, such as 600 mm")]
    [InlineData("½½ in", Dimension.Length, "½ in",
        "there are two numbers, ½ and ½ in",
        "only one number: a length, such as 600 mm")]
    [InlineData("600 .", Dimension.Length, ".",
        "\".\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("600 ()", Dimension.Length, "()",
        "\"()\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("1.5 .", Dimension.Number, ".",
        "\".\" is left over",
        "only a plain number, such as 1.5")]
    [InlineData("٣ mm", Dimension.Length, "٣",
        "\"٣\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("600 mm mm", Dimension.Length, "mm",
        "\"mm\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("0x10 mm", Dimension.Length, "10 mm",
        "there are two numbers, 0 and 10 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("1e mm", Dimension.Length, "e mm",
        "no unit is called \"e mm\"",
        "a length, such as 600 mm")]
    [InlineData("1_000 mm", Dimension.Length, "000 mm",
        "there are two numbers, 1_ and 000 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("1'000 mm", Dimension.Length, "000 mm",
        "there are two numbers, 1' and 000 mm",
        "only one number: a length, such as 600 mm")]
    [InlineData("#5", Dimension.Length, "#5",
        "\"#5\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("M12", Dimension.Length, "M12",
        "\"M12\" stands where the number should be",
        "start with the number: a length, such as 600 mm")]
    [InlineData("2 m m", Dimension.Length, "m",
        "\"m\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("40 MPa.s", Dimension.DynamicViscosity, "MPa.s",
        "\"MPa.s\" is not mPa·s: small m is a thousandth, capital M a million",
        "mind the case: 40 mPa·s")]
    [InlineData("40 mPa.s", Dimension.Pressure, "mPa.s",
        "\"mPa.s\" is a dynamic viscosity",
        "a pressure, such as 210 bar")]
    [InlineData("50 °C", Dimension.Pressure, "°C",
        "\"°C\" is a temperature",
        "a pressure, such as 210 bar")]
    [InlineData("5 ft3", Dimension.Length, "ft3",
        "\"ft3\" is a volume",
        "a length, such as 600 mm")]
    [InlineData("2 k m", Dimension.Length, "k m",
        "no unit is called \"k m\"",
        "the nearest is km: 2 km")]
    [InlineData("25 ton-force", Dimension.Force, "ton-force",
        "\"ton-force\" is three different forces",
        "say which: 25 t (tonne-force, 9.807 kN each), 25 US ton (8.896 kN each) or 25 UK ton (9.964 kN each)")]
    [InlineData("600 mm⁻", Dimension.Length, "⁻",
        "\"⁻\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("600^ mm", Dimension.Length, "^ mm",
        "no unit is called \"^ mm\"",
        "a length, such as 600 mm")]
    [InlineData("5 in-3", Dimension.Length, "3",
        "there are two numbers, 5 in and 3",
        "only one number: a length, such as 600 mm")]
    [InlineData("5'x", Dimension.Length, "'x",
        "no unit is called \"'x\"",
        "a length, such as 600 mm")]
    [InlineData("5'' 3", Dimension.Length, "3",
        "there are two numbers, 5'' and 3",
        "only one number: a length, such as 600 mm")]
    [InlineData("2 T", Dimension.Mass, "T",
        "capital T is written for three different tons",
        "say which: 2 t (tonne, 1000 kg each), 2 US ton (907.2 kg each) or 2 UK ton (1016 kg each)")]
    [InlineData("- 5", Dimension.Length, "- 5",
        "- 5 has no unit",
        "a length with its unit, such as - 5 mm or - 5 in")]
    [InlineData("3 gallons per minute", Dimension.Flow, "gallons per minute",
        "\"gallons per minute\" does not say whether it is the US or the UK one",
        "say which: 3 US gpm or 3 UK gpm (3.785 and 4.546 L/min each)")]
    [InlineData("2 tons/in2", Dimension.Pressure, "tons/in2",
        "no unit is called \"tons/in2\"",
        "a pressure, such as 210 bar")]
    [InlineData("12 mm dia", Dimension.Length, "dia",
        "\"dia\" is left over",
        "only a length, such as 600 mm")]
    [InlineData("0,9 kN", Dimension.Force, "0,9",
        "0,9 has a comma where the decimal point belongs",
        "0.9 kN")]
    [InlineData("25 tonnse", Dimension.Force, "tonnse",
        "no unit is called \"tonnse\"",
        "the nearest is t: 25 t")]
    [InlineData("3 kilowats", Dimension.Power, "kilowats",
        "no unit is called \"kilowats\"",
        "the nearest is kW: 3 kW")]
    [InlineData("1 1/4", Dimension.Length, "1 1/4",
        "1 1/4 has no unit",
        "a length with its unit, such as 1 1/4 in")]
    [InlineData("3/4", Dimension.Length, "3/4",
        "3/4 has no unit",
        "a length with its unit, such as 3/4 in")]
    [InlineData("4 kN", Dimension.Stiffness, "kN",
        "\"kN\" is a force",
        "a stiffness, such as 120 kN/mm")]
    [InlineData("S275", Dimension.Stress, "S275",
        "\"S275\" stands where the number should be",
        "start with the number: a stress, such as 235 MPa")]
    [InlineData("40 °", Dimension.Temperature, "°",
        "\"°\" is an angle",
        "a temperature, such as 40 °C")]
    [InlineData("8 mm", Dimension.Volume, "mm",
        "\"mm\" is a length",
        "a volume, such as 8 L")]
    [InlineData("5 in 3/4", Dimension.Length, "3/4",
        "there are two numbers, 5 in and 3/4",
        "only one number: a length, such as 600 mm")]
    [InlineData("-1,5 mm", Dimension.Length, "1,5",
        "1,5 has a comma where the decimal point belongs",
        "-1.5 mm")]
    public void SaysWhatIsWrongAndWhatToWrite(string text, Dimension wanted, string piece, string found, string write)
    {
        bool read = QuantityText.TryRead(text, wanted, out Quantity quantity, out ReadingFault? fault);

        Assert.False(read, $"{text} was read as {quantity.Si} from {quantity.Unit}");
        Assert.Equal(found, fault!.Found);
        Assert.Equal(write, fault.Wanted);
        Assert.Equal(piece, text.Substring(fault.Offset, fault.Length));
    }

    // Letters and signs that numbers and units are made of, so that random text comes near to meaning something.
    private static readonly string Alphabet = "0123456789012345.,,/-+−eE '\"′″½¾⁄°%()^²³·µ:xX×\u00A0\u2009\tmMkKcCnNpPaAstTbrfilgUShH∞~#é€\uD83D\0";

    private static readonly string[] Pieces =
    [
        "1", "25", "1,500", "0.5", "1e5", "1e308", "1e999", "3/4", "1/0", "1-1/4", "½", "-", "−", " ", " ", "mm", "in", "'", "\"", "ft", "bar", "abs",
        "psi", "t", "ton", "US ton", "gal", "L/min", "per", "minute", "°C", "%", "NaN", "∞", "kN", "·", "m", "mPa", ",", ".", "/", "(", ")",
    ];

    private static readonly Gen<string> Texts = Gen.Frequency(
        (2, Gen.Int[0, Alphabet.Length - 1].Select(i => Alphabet[i]).Array[0, 12].Select(c => new string(c))),
        (2, Gen.Int[0, Pieces.Length - 1].Select(i => Pieces[i]).Array[0, 6].Select(p => string.Concat(p))),
        (1, Gen.String[0, 20]));

    [Fact]
    public void ReadsOrRefusesWhateverStandsThere()
    {
        Gen.Select(Texts, Gen.Enum<Dimension>()).Sample((text, wanted) =>
        {
            bool read = QuantityText.TryRead(text, wanted, out Quantity quantity, out ReadingFault? fault);

            if (read)
            {
                Assert.Null(fault);
                Assert.True(double.IsFinite(quantity.Si), text);
                Assert.Equal(wanted, quantity.Dimension);
            }
            else
            {
                Assert.NotEmpty(fault!.Found);
                Assert.NotEmpty(fault.Wanted);
                Assert.InRange(fault.Offset, 0, text.Length);
                Assert.InRange(fault.Length, 0, text.Length - fault.Offset);
            }
        }, iter: 20_000);
    }

    [Fact]
    public void NoSuchDimensionIsTheCallersMistake() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityText.TryRead("1 mm", (Dimension)999, out _, out _));
}
