using System.Collections;
using System.Reflection;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

public class PowerStudyTest
{
    private static readonly RigCylinder Ram = Double(0.100, 0.056);
    private static readonly RigCylinder Jack = Single(0.110);

    private static bool Says(PowerReport report, string words) => report.Cautions.Any(c => c.Says.Words.Contains(words));

    /// <summary>Every kind of pump on every kind of cylinder.</summary>
    public static TheoryData<string> Pairs => new((
        from c in Cylinders.Keys
        from p in Pumps.Keys
        select $"{c} on {p}").ToArray());

    private static readonly Dictionary<string, RigCylinder> Cylinders = new()
    {
        ["double-acting"] = Ram,
        ["spring return"] = Jack,
        ["hollow"] = Hollow,
        ["gravity return"] = Jack with { SpringPreload = 0, SpringRate = 0, RatedForce = 50 * SellersRating.UsTon },
        ["steady spring"] = Jack with { SpringRate = 0 },
    };

    private static readonly Dictionary<string, RigPump> Pumps = new()
    {
        ["air"] = Air,
        ["air, air use stated"] = Air with { AirUse = 500 * Lpm },
        ["air with relief"] = Air with { Relief = 400 * Bar },
        ["air, shape unknown"] = Air with { FullFlow = 0 },
        ["air, motor known"] = Air with { Compressor = new(0.05, 6 * Bar, 8 * Bar, null, 1500) },
        ["air, nothing known"] = Air with { Compressor = new(0.05, 6 * Bar, 8 * Bar, null, null) },
        ["electric"] = Electric,
        ["electric without relief"] = Electric with { Relief = null },
        ["one stage"] = Electric with { LowStage = null },
        ["weak motor"] = Electric with { Motor = 250 },
        ["hand"] = Hand,
        ["hand with relief"] = Hand with { Relief = 500 * Bar },
    };

    private static PowerReport Study(string pair, Working? w = null)
    {
        string[] halves = pair.Split(" on ");
        return PowerStudy.Of(Cylinders[halves[0]], Pumps[halves[1]], halves[1].Contains("air") ? Hoses : PackHoses, Vg46, w);
    }

    [Theory, MemberData(nameof(Pairs))]
    public void WorkingHolds(string pair)
    {
        var w = new Working();
        Study(pair, w);
        WorkingCheck.Holds(w);
    }

    [Theory, MemberData(nameof(Pairs))]
    public void WorkingChangesNothing(string pair) =>
        Assert.Equal(Numbers(Study(pair)), Numbers(Study(pair, new Working())));

    [Theory, MemberData(nameof(Pairs))]
    public void EveryNumberIsFinite(string pair)
    {
        List<(string Path, double Value)> numbers = Numbers(Study(pair));
        Assert.True(numbers.Count > 80, $"only {numbers.Count} numbers were found");
        Assert.DoesNotContain(numbers, n => !double.IsFinite(n.Value));
    }

    [Theory, MemberData(nameof(Pairs))]
    public void EveryCautionNamesItsNumbers(string pair)
    {
        foreach (Caution caution in Study(pair).Cautions)
        {
            for (int i = 0; i < caution.Says.Numbers.Count; i++)
                Assert.Contains("{" + i + "}", caution.Says.Words);
            Assert.DoesNotContain("{" + caution.Says.Numbers.Count + "}", caution.Says.Words);
        }
    }

    [Fact]
    public void CautionIsReadWithItsNumbers()
    {
        Caution caution = PowerStudy.Of(Jack, Air, Hoses, Vg46).Cautions.Single(c => c.Says.Words.Contains("regulator"));
        Assert.Contains("compressor's 8 bar through: the pump then makes 760 bar, 722 kN on the frame", caution.Says.Text());
        Assert.Contains("compressor's 116 psi through: the pump then makes 11000 psi, 81.2 US ton on the frame", caution.Says.Text(Ramwright.Quantities.UnitSystem.Imperial));
    }

    [Fact]
    public void WhatIsTakenForGrantedIsListedAndStatedFactsStrikeItOut()
    {
        string[] bare = What(PowerStudy.Of(Jack, Air with { FullFlow = 0, Compressor = new(0.1, 6 * Bar, 8 * Bar, null, 1500) }, [], Vg46));
        Assert.Equal(
            ["pump.full-flow", "pump.air-use", "pump.compressor.free-air"],
            bare);
        Assert.Empty(What(PowerStudy.Of(Jack, Air with { AirUse = 500 * Lpm }, [], Vg46)));
        Assert.Contains("pump.relief", What(PowerStudy.Of(Jack, Hand, [], Vg46)));
        Assert.DoesNotContain("pump.relief", What(PowerStudy.Of(Ram, Electric, [], Vg46)));

        static string[] What(PowerReport report) => [.. report.Assumptions.Select(a => a.What)];
    }

    [Theory, MemberData(nameof(Pairs))]
    public void TrueForceIsNeverMoreThanTheMostPossible(string pair)
    {
        PowerReport report = Study(pair);
        Assert.InRange(report.TruePressure, 1, report.MostPossiblePressure);
        Assert.InRange(report.TrueForce, 0, report.MostPossibleForce);
        Assert.Equal(report.Limits.All.Select(l => l.Pressure).Order(), report.Limits.All.Select(l => l.Pressure));
    }

    [Fact]
    public void AirPumpStallGoverns()
    {
        PowerReport report = PowerStudy.Of(Jack, Air, Hoses, Vg46);

        double A = Math.PI / 4 * 0.11 * 0.11, p = 95 * 6.3 * Bar;
        Near.Relative(p, report.TruePressure, 1e-12);
        Near.Relative(p * A * 0.97 - (900 + 4000 * 0.15), report.TrueForce, 1e-12, "less seals and spring");
        Near.Relative(p * A, report.MostPossibleForce, 1e-12, "nothing lost");
        Assert.Equal("the air pump stalls", report.TrueForceLimitedBy);
        Assert.Equal("the air pump stalls", report.MostPossibleLimitedBy);
        Assert.Equal(0, report.Speeds[^1].Speed);
    }

    [Fact]
    public void RegulatorWoundUpIsToldWithItsNumber()
    {
        PowerReport report = PowerStudy.Of(Jack, Air, Hoses, Vg46);

        Caution caution = Assert.Single(report.Cautions, c => c.Says.Words.Contains("regulator"));
        Near.Relative(95 * 8 * Bar, caution.Says.Numbers[1].Si, 1e-12, "stall at cut-out");
        Near.Relative(95 * 8 * Bar * report.Areas.Push, caution.Says.Numbers[2].Si, 1e-12, "on the frame");

        PowerReport relieved = PowerStudy.Of(Jack, Air with { Relief = 500 * Bar }, Hoses, Vg46);
        Near.Relative(500 * Bar, relieved.Air!.PressureAtCutOut, 1e-12, "a relief valve holds it");
        Assert.False(Says(relieved, "regulator"));
    }

    [Fact]
    public void ReliefGovernsWhereItIsLowerAndOnTies()
    {
        Assert.Equal("the relief valve opens", PowerStudy.Of(Jack, Air with { Relief = 400 * Bar }, Hoses, Vg46).TrueForceLimitedBy);
        PowerReport tie = PowerStudy.Of(Jack, Air with { Relief = 95 * 6.3 * Bar }, Hoses, Vg46);
        Assert.Equal(PressureLimitKind.Relief, tie.Limits.MostPossible.Kind);
        PowerReport idle = PowerStudy.Of(Jack, Air with { Relief = 690 * Bar }, Hoses, Vg46);
        Assert.Equal(PressureLimitKind.AirStall, idle.Limits.MostPossible.Kind);
    }

    [Fact]
    public void ElectricPackWithoutReliefIsOnlyStoppedByItsMotor()
    {
        PowerReport report = PowerStudy.Of(Ram, Electric with { Relief = null }, PackHoses, Vg46);

        // 1.5 kW at an efficiency of 0.8 on 1 L/min.
        double p_M = 1500 * 0.8 / (1e-3 / 60);
        Near.Relative(p_M, report.TruePressure, 1e-9);
        Assert.Equal("the motor is fully loaded", report.TrueForceLimitedBy);
        Near.Relative(2.5 * p_M, report.MostPossiblePressure, 1e-9);
        Assert.Equal("the motor stops", report.MostPossibleLimitedBy);
        Assert.True(Says(report, "no relief valve"));
        Assert.True(Says(report, "2.5 times"));
        Assert.True(Says(report, "In normal use the pump goes beyond the rating of hose 1"), "720 bar on a 330 bar hose");
    }

    [Fact]
    public void WeakMotorNeverPassesTheChangeover()
    {
        // Both stages at 8 L/min need 1167 W at 70 bar; 250 W stop at 2.5 × 15 bar.
        PowerReport report = PowerStudy.Of(Ram, Electric with { Motor = 250 }, PackHoses, Vg46);

        Near.Relative(250 * 0.8 / (8e-3 / 60), report.TruePressure, 1e-9);
        Near.Relative(2.5 * 250 * 0.8 / (8e-3 / 60), report.MostPossiblePressure, 1e-9);
        Assert.True(Says(report, "Both stages together stop the motor"));

        PowerReport middling = PowerStudy.Of(Ram, Electric with { Motor = 900 }, PackHoses, Vg46);
        Assert.Equal(PressureLimitKind.Relief, middling.Limits.Normal.Kind);
        Assert.True(Says(middling, "overloaded between"));
        Assert.True(middling.Motor[0].Share > 1 && middling.Motor[1].Share < 1);
    }

    [Fact]
    public void HandPumpGoesBeyondItsRatingIfOneLeansOnIt()
    {
        PowerReport report = PowerStudy.Of(Jack, Hand, Hoses, Vg46, new PressStroke(PressingPart: 0.03, PressingForce: 200e3));

        Near.Relative(700 * Bar, report.TruePressure, 1e-12);
        Near.Relative(1400 * Bar, report.MostPossiblePressure, 1e-12);
        Near.Relative(380, report.Hand!.HandleForce!.Value, 1e-12);
        double A = Math.PI / 4 * 0.11 * 0.11;
        Assert.Equal((int)Math.Ceiling(A * 0.12 / 13e-6), report.Hand.ApproachStrokes);
        Assert.Equal((int)Math.Ceiling(A * 0.03 / 2.5e-6), report.Hand.PressingStrokes);
        Assert.True(Says(report, "leans on the handle"));
        Near.Relative(500 * Bar, PowerStudy.Of(Jack, Hand with { Relief = 500 * Bar }, Hoses, Vg46).MostPossiblePressure, 1e-12);
    }

    [Fact]
    public void RatingsAreRungsNotStops()
    {
        RigLine[] weak = [new(LineDuty.Pressure, 0.0064, 2, 300 * Bar, "hose 1"), new(LineDuty.Pressure, 0.0064, 2, 250 * Bar, "hose 2")];
        PowerReport report = PowerStudy.Of(Jack, Air, weak, Vg46);

        PressureLimit hose = Assert.Single(report.Limits.All, l => l.Kind == PressureLimitKind.HoseRating);
        Assert.Equal("the rating of hose 2", hose.Words);
        Near.Relative(250 * Bar, hose.Pressure, 1e-12);
        Assert.Equal(PressureLimitKind.AirStall, report.Limits.Normal.Kind);
        Assert.True(Says(report, "hose 2"));
    }

    [Theory]
    [InlineData(25, Ton.Tonne, Ton.UsTon, Ton.UsTon)]   // sold as 25 t, area gives 25 US tons
    [InlineData(25, Ton.UsTon, Ton.UsTon, Ton.UsTon)]
    [InlineData(20, Ton.Tonne, Ton.UkTon, Ton.UkTon)]
    [InlineData(12.5, Ton.UsTon, Ton.Tonne, Ton.Tonne)]
    public void LabelTellsWhichTonItMeans(double figure, Ton read, Ton real, Ton fits)
    {
        double area = Math.PI / 4 * 0.01;
        RigCylinder c = Ram with
        {
            RatedForce = figure * SellersRating.Newtons(read),
            RatedPressure = 1.001 * figure * SellersRating.Newtons(real) / area,
        };
        SellersRating label = PowerStudy.Of(c, Electric, PackHoses, Vg46).Label!;

        Assert.Equal(read, label.ReadAs);
        Near.Relative(figure, label.Figure!.Value, 1e-12);
        Assert.Equal(fits, label.FitsBest);
        Near.Relative(1 / 1.001, 1 + label.OverWithBest!.Value, 1e-9);
        Near.Relative(SellersRating.Newtons(read) / SellersRating.Newtons(real) / 1.001, 1 + label.Over, 1e-9);
    }

    [Fact]
    public void LabelInKilonewtonsHasNoTon()
    {
        SellersRating label = PowerStudy.Of(Ram with { RatedForce = 100e3 }, Electric, PackHoses, Vg46).Label!;
        Assert.Null(label.ReadAs);
        Assert.False(label.LooksLikeAnotherTon);
    }

    [Fact]
    public void SpeedMeetsPumpLoadAndHose()
    {
        PowerReport report = PowerStudy.Of(Jack, Air, Hoses, Vg46 with { Temperature = 0 });

        foreach (SpeedAtLoad at in report.Speeds)
        {
            Near.Absolute(report.Curve.Flow(at.PumpPressure), at.Flow, 1e-9 * report.Curve.FreeFlow, "the pump's curve");
            Near.Relative((at.Load + 1500) / (report.Areas.Push * 0.97), at.CylinderPressure, 1e-9, "load, seals, spring");
            double loss = LineFlow.Loss(at.Flow, 0.0064, 2, report.Viscosity, 870, 1.5);
            Near.Relative(1 + loss, 1 + at.PumpPressure - at.CylinderPressure, 1e-6, "the hose");
            Near.Relative(at.Flow / report.Areas.Push, at.Speed, 1e-12, "speed");
        }
    }

    [Fact]
    public void ReturnOilPressesBack()
    {
        RigLine[] narrow = [PackHoses[1], new(LineDuty.Return, 0.004, 5, 275 * Bar, "hose 2")];
        PowerReport report = PowerStudy.Of(Ram, Electric, narrow, Vg46);

        SpeedAtLoad at = report.Speeds[0];
        double back = LineFlow.Loss(at.Flow * report.Areas.Pull / report.Areas.Push, 0.004, 5, report.Viscosity, 870, 1.5);
        Near.Relative(back, at.BackPressure, 1e-9);
        Near.Relative(back * report.Areas.Pull / (report.Areas.Push * 0.97), at.CylinderPressure, 1e-9);
        Assert.True(Says(report, "presses back"));
    }

    [Fact]
    public void ColdOilInANarrowHoseUnloadsTheLargeStage()
    {
        // 8 L/min through 5 mm of cold oil would lose more than 70 bar: the small stage alone gets through.
        RigLine[] narrow = [new(LineDuty.Pressure, 0.005, 3, 330 * Bar, "hose 1")];
        PowerReport report = PowerStudy.Of(Ram, Electric, narrow, Vg46 with { Temperature = -10 });
        Near.Relative(1 * Lpm, report.Speeds[0].Flow, 1e-9);
    }

    [Fact]
    public void ReturnByOilCarriesMoreThanThePumpsFlow()
    {
        PowerReport report = PowerStudy.Of(Ram, Electric, PackHoses, Vg46);

        Assert.Equal(ReturnBy.Oil, report.Times.ReturnBy);
        Near.Relative(8 * Lpm / report.Areas.Pull, report.ReturnSpeed!.Value, 1e-9);
        LineCheck hose = report.Lines[2];
        Near.Relative(8 * Lpm * report.Areas.Ratio, hose.Flow, 1e-9);
        Near.Relative(report.TruePressure * report.Areas.Pull * 0.97, report.PullForce, 1e-12);
    }

    [Theory, InlineData(LineDuty.Return), InlineData(LineDuty.Pressure)]
    public void ReturnThroughTheNarrowerHoseIsReckonedWith(LineDuty narrow)
    {
        RigLine slim = new(narrow, 0.003, 4, 700 * Bar, "slim"),
            wide = new(narrow == LineDuty.Return ? LineDuty.Pressure : LineDuty.Return, 0.012, 4, 700 * Bar, "wide");
        RigOil cold = Vg46 with { Temperature = 0 };
        PowerReport report = PowerStudy.Of(Ram, Air, [slim, wide], cold);

        // The full bore's oil leaves through the slim hose: its loss works on the full bore against the ring.
        double v = report.ReturnSpeed!.Value, A = report.Areas.Push, a = report.Areas.Pull;
        double p = LineFlow.Loss(v * A, 0.003, 4, report.Viscosity, 870, 1.5) * A / (a * 0.97) + LineFlow.Loss(v * a, 0.012, 4, report.Viscosity, 870, 1.5);
        Near.Relative(v * a, report.Curve.Flow(p), 1e-6);
    }

    [Fact]
    public void SpringReturnIsWhatTheHoseLets()
    {
        // A steady spring, laminar flow, no ends worth counting: Hagen-Poiseuille by hand.
        RigCylinder c = Jack with { SpringRate = 0, SealFriction = 0 };
        RigOil thick = Vg46 with { Temperature = 0 };
        PowerReport report = PowerStudy.Of(c, Hand, Hoses, thick);
        double A = report.Areas.Push, mu = report.Viscosity * 870;
        double Q = 900 / A * Math.PI * Math.Pow(0.0064, 4) / (128 * mu * 2);
        Near.Relative(A * c.Stroke / Q, report.Times.Return!.Value, 0.002);

        // A spring that grows: ∫ A dx/Q with Q in proportion to S gives ln(S_1/S_0)/k for a steady spring's 1/S.
        PowerReport growing = PowerStudy.Of(c with { SpringRate = 40_000 }, Hand, Hoses, thick);
        double S1 = 900 + 40_000 * c.Stroke;
        Near.Relative(A * c.Stroke / Q * 900 / (S1 - 900) * Math.Log(S1 / 900), growing.Times.Return!.Value, 0.01);

        Assert.Equal(ReturnBy.Unknown, PowerStudy.Of(c with { SpringPreload = 0 }, Hand, Hoses, thick).Times.ReturnBy);
        Assert.Null(PowerStudy.Of(c, Hand, [], thick).Times.Return);
    }

    [Fact]
    public void TimesAddUp()
    {
        StrokeTimes t = PowerStudy.Of(Ram, Electric, PackHoses, Vg46, new PressStroke(0.040, 120e3)).Times;

        double A = Math.PI / 4 * 0.01;
        Near.Relative(0.260 * A / (8 * Lpm), t.Approach, 1e-9);
        Near.Relative(0.040 * A / (1 * Lpm), t.Pressing!.Value, 1e-9);
        Near.Relative(0.300 * A / (8 * Lpm), t.FullStroke, 1e-9);
        Near.Relative(t.Approach + t.Pressing.Value + t.Return!.Value, t.Whole!.Value, 1e-12);
    }

    [Fact]
    public void LoadBeyondThePumpHoldsTheRam()
    {
        PowerReport report = PowerStudy.Of(Ram, Electric, PackHoses, Vg46, new PressStroke(0.040, 500e3));
        Assert.Null(report.Times.Pressing);
        Assert.Null(report.Times.Whole);
        Assert.True(Says(report, "holds the ram"));
    }

    [Fact]
    public void SmallTankCutsTheStroke()
    {
        PowerReport report = PowerStudy.Of(Jack, Hand with { UsableOil = 0.5e-3 }, Hoses, Vg46);
        Near.Relative(0.5e-3 / report.Areas.Push, report.Oil.Reach, 1e-12);
        Assert.True(Says(report, "pump draws air"));
    }

    [Fact]
    public void CompressorIsWeighedAgainstThePump()
    {
        PressStroke half = new(Wanted: 250e3);
        PowerReport report = PowerStudy.Of(Jack, Air with { AirUse = 400 * Lpm }, Hoses, Vg46, half);
        AirSupply air = report.Air!;

        Near.Relative(258.0 / 400, air.RunningShare!.Value, 1e-9);
        Near.Relative(0.1 * 2 * Bar / 101325 / (400 * Lpm), air.ToCutIn, 1e-9);
        double wanted = (250e3 + 1500) / (report.Areas.Push * 0.97) / 95;
        Near.Relative(wanted, air.AirForWanted, 1e-9);
        Near.Relative(air.ToCutIn + 0.1 * (6 * Bar - wanted) / 101325 / (142 * Lpm), air.ToLoseWanted!.Value, 1e-9);
        Near.Relative(6 * 95 * Bar * report.Areas.Push * 0.97 - 1500, air.ForceAtCutIn, 1e-9);
        Assert.True(Says(report, "cannot run without rests"));

        AirSupply tooMuch = PowerStudy.Of(Jack, Air, Hoses, Vg46, new PressStroke(Wanted: 900e3)).Air!;
        Assert.False(tooMuch.WantedInReach);
        Assert.Equal(0, tooMuch.ToLoseWanted);
    }

    [Fact]
    public void BlockedRodSideIsToldForEveryDoubleActingRam()
    {
        PowerReport report = PowerStudy.Of(Ram, Electric, PackHoses, Vg46);
        Near.Relative(210 * Bar / (1 - 0.56 * 0.56), report.BlockedRodSide!.Value, 1e-9);
        Assert.True(Says(report, "return port is blocked"));
        Assert.Null(PowerStudy.Of(Jack, Air, Hoses, Vg46).BlockedRodSide);
    }

    [Fact]
    public void NonsenseIsRefusedAtTheDoor()
    {
        Refused(Ram with { Bore = 0 });
        Refused(Ram with { Bore = double.NaN });
        Refused(Ram with { Rod = 0.1 });
        Refused(Ram with { Stroke = double.PositiveInfinity });
        Refused(Ram with { SealFriction = 1 });
        Refused(Ram with { RatedPressure = -1 });
        Refused(Ram with { CentreTube = 0.1 });
        Refused(Ram, Electric with { Motor = 0 });
        Refused(Ram, Electric with { Speed = double.NaN });
        Refused(Ram, Electric with { Relief = 0 });
        Refused(Ram, Electric with { UnloadAt = 0 });
        Refused(Ram, Electric with { UsableOil = double.NaN });
        Refused(Ram, Electric with { HighStage = new RigStage(1e-6, 1.1, 0.9) });
        Refused(Ram, Air with { AirPressure = double.NaN });
        Refused(Ram, Air with { FreeFlow = 0 });
        Refused(Ram, Air with { Compressor = new(0.1, 9 * Bar, 8 * Bar, 1, null) });
        Refused(Ram, Hand with { LowPerStroke = 1e-6 });
        Refused(Ram, Hand, [Hoses[0] with { Bore = 0 }]);
        Refused(Ram, Hand, [Hoses[0] with { Rating = double.NaN }]);
        Refused(Ram, Hand, Hoses, Vg46 with { Temperature = 400 });
        Refused(Ram, Hand, Hoses, Vg46, new PressStroke(PressingPart: 1));
        Refused(Ram, Hand, Hoses, Vg46, new PressStroke(PressingForce: double.NaN));

        static void Refused(RigCylinder c, RigPump? p = null, IReadOnlyList<RigLine>? lines = null, RigOil? oil = null, PressStroke? stroke = null) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => PowerStudy.Of(c, p ?? Electric, lines ?? Hoses, oil ?? Vg46, stroke ?? new PressStroke()));
    }

    [Theory]
    [InlineData(1e9, 0, "cylinder.spring-preload")]
    [InlineData(10, 1e9, "cylinder.spring-rate")]
    public void ASpringStrongerThanThePumpIsAFaultWithItsPlace(double preload, double rate, string path)
    {
        var thrown = Assert.Throws<PressFaultsException>(() => PowerStudy.Of(Jack with { SpringPreload = preload, SpringRate = rate }, Air, Hoses, Vg46));

        Fault fault = Assert.Single(thrown.Faults);
        Assert.Equal(path, fault.Path);
        Assert.Contains("598 bar", fault.Found.Text());     // 95 times 6.3 bar of air
    }

    [Fact]
    public void APumpThatGivesNextToNoOilIsAFaultAndNoEndlessTime()
    {
        var thrown = Assert.Throws<PressFaultsException>(() => PowerStudy.Of(Jack, Air with { FreeFlow = 0.1, FullFlow = 4e-6, FullFlowAt = 300 }, Hoses, Vg46));

        Fault fault = Assert.Single(thrown.Faults);
        Assert.Equal("pump", fault.Path);
        Assert.Contains("would take years", fault.Found.Text());
    }

    [Fact]
    public void ASpringJustWeakerThanThePumpLetsTheRamOut()
    {
        double most = 95 * 6.3 * Bar * Math.PI / 4 * 0.11 * 0.11 * 0.97;
        Assert.True(PowerStudy.Of(Jack with { SpringPreload = 0.99 * most, SpringRate = 0 }, Air, [], Vg46).ApproachSpeed > 0);
        Assert.Throws<PressFaultsException>(() => PowerStudy.Of(Jack with { SpringPreload = 1.01 * most, SpringRate = 0 }, Air, [], Vg46));
    }

    [Fact]
    public void StifferOilGivesLess()
    {
        PowerReport soft = PowerStudy.Of(Jack, Air, Hoses, Vg46 with { BulkModulus = 1e9 }), stiff = PowerStudy.Of(Jack, Air, Hoses, Vg46 with { BulkModulus = 2e9 });
        Near.Relative(2, soft.Decompression / stiff.Decompression, 1e-12);
        Near.Relative(2, soft.OilEnergy / stiff.OilEnergy, 1e-12);
        Near.Relative(2, soft.Times.PressureRise / stiff.Times.PressureRise, 1e-12);
    }

    [Fact]
    public void FittingsCostPressure()
    {
        RigLine[] bent = [Hoses[0] with { Fittings = new Fittings { Elbows = 4, LossCoefficient = 20 } }];
        LineCheck plain = PowerStudy.Of(Jack, Hand, Hoses, Vg46).Lines[0], more = PowerStudy.Of(Jack, Hand, bent, Vg46).Lines[0];
        Near.Relative(23.6 * 870 * more.Velocity * more.Velocity / 2, more.Loss - plain.Loss, 1e-9);
    }

    [Fact]
    public void SameFromManyThreads()
    {
        List<(string, double)> alone = Numbers(Study("double-acting on air"));
        Parallel.For(0, 64, _ => Assert.Equal(alone, Numbers(Study("double-acting on air"))));
    }

    /// <summary>Every number in a report, by its path, found by walking its properties.</summary>
    private static List<(string Path, double Value)> Numbers(object root)
    {
        List<(string, double)> found = [];
        Walk("", root);
        return found;

        void Walk(string path, object? value)
        {
            switch (value)
            {
                case null or string or bool or Enum or Citation or Ramwright.Stock.Steel:
                    break;
                case double d:
                    found.Add((path, d));
                    break;
                case int i:
                    found.Add((path, i));
                    break;
                case IEnumerable many:
                    int n = 0;
                    foreach (object? one in many)
                        Walk($"{path}[{n++}]", one);
                    break;
                default:
                    foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                    {
                        if (property.GetIndexParameters().Length == 0)
                            Walk($"{path}.{property.Name}", property.GetValue(value));
                    }

                    break;
            }
        }
    }
}
