using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Power;

/// <summary>Made-up presses for the tests of this room.</summary>
internal static class Rigs
{
    public const double Bar = 1e5, Lpm = 1e-3 / 60, Psi = 6894.757293168, Inch = 0.0254, Gpm = 231 * Inch * Inch * Inch / 60,
        Lbf = 4.4482216152605, Hp = 745.69987158227, Cfm = 0.028316846592 / 60;

    private static readonly Steel Plain = new()
    {
        Name = "S355",
        Bands = [new StrengthBand(0.1, 355e6, 470e6)],
        Source = Citation.Practice("made up for a test"),
    };

    public static readonly RigOil Vg46 = new(new OilGrade("VG 46", 46e-6, 6.8e-6, 870, Citation.Practice("typical")), 40);

    public static RigOil Vg32At(double t) => new(new OilGrade("VG 32", 32e-6, 5.4e-6, 870, Citation.Practice("typical")), t);

    public static RigCylinder Double(double bore, double rod, double stroke = 0.3) => new()
    {
        Bore = bore,
        Rod = rod,
        Stroke = stroke,
        PullsByOil = true,
        RatedPressure = 250 * Bar,
        BarrelOutside = 1.25 * bore,
        BarrelSteel = Plain,
        RodSteel = Plain,
        BucklingLengthFactor = 2,
        Guide = RamGuide.Free,
        SealFriction = 0.03,
    };

    public static RigCylinder Single(double bore, double stroke = 0.15) => Double(bore, 0.7 * bore, stroke) with
    {
        PullsByOil = false,
        SpringPreload = 900,
        SpringRate = 4000,
        RatedPressure = 700 * Bar,
    };

    /// <summary>A hollow plunger: bore 110 mm on a 60 mm tube.</summary>
    public static readonly RigCylinder Hollow = Single(0.110) with { CentreTube = 0.060, Hole = 0.054, Rod = 0.090 };

    public static readonly RigAirPump Air = new()
    {
        EffectiveRatio = 95,
        AreaRatio = 100,
        AirPressure = 6.3 * Bar,
        RatedAir = 7 * Bar,
        FreeFlow = 0.9 * Lpm,
        FullFlow = 0.15 * Lpm,
        FullFlowAt = 500 * Bar,
        UsableOil = 2.5e-3,
        Compressor = new RigCompressor(0.1, 6 * Bar, 8 * Bar, 258e-3 / 60, null),
    };

    /// <summary>A two-stage pack: 8 L/min in all until 70 bar, then 1 L/min; 1.5 kW.</summary>
    public static readonly RigElectricPack Electric = new()
    {
        Motor = 1500,
        Speed = 24,
        HighStage = new RigStage(1 * Lpm / 24 / 0.9, 0.9, 0.8 / 0.9),
        LowStage = new RigStage(7 * Lpm / 24 / 0.9, 0.9, 0.8 / 0.9),
        UnloadAt = 70 * Bar,
        Relief = 210 * Bar,
        RatedPressure = 250 * Bar,
        UsableOil = 8e-3,
        TankOil = 16e-3,
        TankWalls = 0.3,
    };

    public static readonly RigHandPump Hand = new()
    {
        PerStroke = 2.5e-6,
        LowPerStroke = 13e-6,
        UnloadAt = 20 * Bar,
        Cadence = 0.5,
        RatedPressure = 700 * Bar,
        HandleForce = 380,
        UsableOil = 3e-3,
    };

    public static readonly IReadOnlyList<RigLine> Hoses =
    [
        new RigLine(LineDuty.Pressure, 0.0064, 2, 700 * Bar, "hose 1"),
    ];

    public static readonly IReadOnlyList<RigLine> PackHoses =
    [
        new RigLine(LineDuty.Suction, 0.019, 0.4, 10 * Bar, "suction hose"),
        new RigLine(LineDuty.Pressure, 0.0095, 3, 330 * Bar, "hose 1"),
        new RigLine(LineDuty.Return, 0.0127, 3, 275 * Bar, "hose 2"),
    ];
}
