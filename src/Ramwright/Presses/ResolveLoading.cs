using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles how squarely the work is pressed.</summary>
internal static class ResolveLoading
{
    private const string General = "ISO 2768-1, table 3, class m";

    public static RigLoading Of(Loading? said, double wanted, RigCylinder cylinder, RigFrame frame, Assumptions assume)
    {
        said ??= new Loading();
        double room = frame switch
        {
            RigClosedFrame closed => closed.Width,
            RigOpenFrontFrame open => 2 * open.Throat,
            RigTieRodFrame rods => rods.RodsDeep > 0 ? Math.Min(rods.RodsAcross, rods.RodsDeep) : rods.RodsAcross,
            _ => double.PositiveInfinity,
        };
        double die = frame.DieWidth > 0 ? frame.DieWidth : Math.Min(0.1, room);
        string its = frame.DieWidth > 0 ? "the die's width" : "a die of {0}";
        Given width = Remark.Of(die, Dimension.Length);
        // statics: pressed within its middle third a flat face bears all over; beyond it one edge lifts
        var whyOff = new Remark($"a sixth of {its}: beyond its middle third a flat die lifts at one edge", width);
        (double angle, string minutes) = AllowedAngle(die);
        var loading = new RigLoading(
            assume.Or(said.OffCentreAcross, "loading.off-centre-across", die / 6, Dimension.Length, whyOff),
            assume.Or(said.OffCentreDeep, "loading.off-centre-deep", die / 6, Dimension.Length, whyOff),
            assume.Or(said.SideLoad, "loading.side-load", 0.03, Dimension.Ratio,
                "common practice: some side push comes with every squeeze"),
            assume.Or(said.AllowedOpening, "loading.allowed-opening", Math.Tan(angle), Dimension.Slope,
                new Remark($"{minutes}, what {General} allows faces as long as {its}; forging takes more, fits want less", width)),
            assume.Or(said.Squeezes, "loading.squeezes", 20_000, Dimension.Count,
                "ten a day, 200 days a year, for ten years: a guess at a one-person workshop"),
            said.SqueezesADay)
        {
            PressingPart = assume.Or(said.PressingPart, "loading.pressing-part", 0.2 * cylinder.Stroke, Dimension.Length,
                "the last 20 % of the stroke: nothing was said of the work"),
            PressingForce = assume.Or(said.PressingForce, "loading.pressing-force", 0.5 * wanted, Dimension.Force,
                "half of what is wanted: nothing was said of the work"),
        };
        if (loading.PressingPart > cylinder.Stroke)
        {
            assume.Fault("loading.pressing-part", new Remark("the ram would work over more than its stroke of {0}", Remark.Of(cylinder.Stroke, Dimension.Length)),
                "a part no longer than the stroke, or the stroke as cylinder.stroke");
        }

        return loading;
    }

    /// <summary>What general workshop tolerances allow an angle whose shorter side is so long; ISO 2768-1:1989, table 3, class m.</summary>
    /// <param name="side">Shorter side, m.</param>
    /// <returns>Radians, and as it is written.</returns>
    internal static (double Angle, string Written) AllowedAngle(double side)
    {
        int minutes = side <= 0.010 ? 60 : side <= 0.050 ? 30 : side <= 0.120 ? 20 : side <= 0.400 ? 10 : 5;
        return (minutes / 60.0 * Math.PI / 180, minutes == 60 ? "1°" : $"0°{minutes:00}′");
    }
}
