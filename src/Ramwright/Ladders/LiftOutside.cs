using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>Changes outside the frame: valve, regulator, motor, cylinder, hose, and where the work stands.</summary>
internal static class LiftOutside
{
    private const double Bar = 1e5;

    // usual sizes, common practice; rods after ISO 3320, from memory
    private static readonly double[] Bores = [.. new[] { 40, 50, 63, 70, 75, 80, 90, 100, 110, 125, 140, 150, 160, 180, 200, 220, 250 }.Select(mm => mm / 1e3)];
    private static readonly double[] Rods = [.. new[] { 28, 32, 36, 40, 45, 50, 56, 63, 70, 80, 90, 100, 110, 125, 140, 160, 180, 200 }.Select(mm => mm / 1e3)];
    private static readonly double[] Motors = [.. new[] { 0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5, 22 }.Select(kW => kW * 1e3)];
    private static readonly double[] Ratings = [.. new[] { 160, 210, 250, 275, 330, 350, 400, 450, 700 }.Select(bar => bar * Bar)];

    private const double Inch = 0.0254, Psi = 0.45359237 * 9.80665 / (Inch * Inch), Hp = 550 * 12 * Inch * 0.45359237 * 9.80665;
    private static readonly double[] BoresInch = [.. new[] { 1.5, 2, 2.5, 3, 3.25, 3.5, 4, 4.5, 5, 6, 7, 8, 10 }.Select(inch => inch * Inch)];
    private static readonly double[] RodsInch = [.. new[] { 1, 1.125, 1.25, 1.375, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 7, 8 }.Select(inch => inch * Inch)];
    private static readonly double[] MotorsHp = [.. new[] { 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30 }.Select(hp => hp * Hp)];
    private static readonly double[] RatingsPsi = [.. new[] { 2500, 3000, 4000, 5000, 6000, 10_000 }.Select(psi => psi * Psi)];

    public static IEnumerable<LiftChange> Of(Press press, PressCheck check, Shelf shelf, UnitSystem units) =>
        Pump(press, check, units).Concat(Cylinder(press, check, units)).Concat(Lines(press, shelf, units)).Concat(Loading(check, units));

    private static IEnumerable<LiftChange> Pump(Press press, PressCheck check, UnitSystem units)
    {
        double[] wanted = [.. Pressures(check, units).Distinct()];
        double? relief = check.Rig.Pump.Relief;
        foreach (double p in wanted)
        {
            if (relief is null || Math.Abs(p - relief.Value) > 0.4 * Bar)
                yield return One("pump.relief", relief, p, Dimension.Pressure, units, LiftCost.Work);
        }

        if (check.Rig.Pump is RigAirPump air)
        {
            foreach (double p in wanted)
            {
                // the stall follows the air
                double share = p / check.Power.Limits.MostPossible.Pressure;
                double step = units == UnitSystem.Imperial ? Psi : 0.1 * Bar;
                double inlet = Math.Round(air.AirPressure * share / step + (share < 1 ? -0.499 : 0.499)) * step;
                if (inlet > 0.5 * Bar && inlet <= Math.Max(air.RatedAir, air.AirPressure) && inlet != air.AirPressure)
                    yield return One("pump.air-pressure", air.AirPressure, inlet, Dimension.Pressure, units, LiftCost.Work);
            }
        }

        if (press.Pump is ElectricPack { Motor: { } motor })
        {
            foreach (double power in (units == UnitSystem.Imperial ? MotorsHp : Motors).Where(m => m > motor * 1.01).Take(3))
                yield return One("pump.motor", motor, power, Dimension.Power, units, LiftCost.Part);
        }
    }

    /// <summary>The pressure that just gives the wanted force, and the one that what can break is just safe to, Pa, in whole bar or tens of psi.</summary>
    private static IEnumerable<double> Pressures(PressCheck check, UnitSystem units)
    {
        double step = units == UnitSystem.Imperial ? 10 * Psi : Bar;
        var oil = new OilForce(check.Rig.Cylinder, check.Power.Areas);
        double enough = Math.Ceiling(oil.PressureFor(check.Rig.Wanted) / step - 1e-6) * step;
        if (enough > 0 && enough <= 300e6)
            yield return enough;
        double bears = Math.Floor(check.Ladder.ThrustBorne / check.Power.Areas.Force / step + 1e-6) * step;
        if (bears > 0 && bears <= 300e6)
            yield return bears;
    }

    private static IEnumerable<LiftChange> Cylinder(Press press, PressCheck check, UnitSystem units)
    {
        RigCylinder c = check.Rig.Cylinder;
        if (c.Guide != RamGuide.Guided)
        {
            yield return Word("cylinder.guide", c.Guide, RamGuide.Guided, LiftCost.Part);
            if (c.Guide == RamGuide.Free)
                yield return Word("cylinder.guide", c.Guide, RamGuide.Pinned, LiftCost.Part);
        }

        foreach (double stroke in LiftSizes.Less(c.Stroke, units))
            yield return One("cylinder.stroke", c.Stroke, stroke, Dimension.Length, units, LiftCost.GivesUp);
        if (press.Cylinder is HollowPlunger)
            yield break;
        foreach (double rod in (units == UnitSystem.Imperial ? RodsInch : Rods).Where(r => r > c.Rod * 1.001).Take(4))
            yield return One("cylinder.rod", c.Rod, rod, Dimension.Length, units, LiftCost.Part);
        foreach (double bore in (units == UnitSystem.Imperial ? BoresInch : Bores).Where(b => b > c.Bore * 1.001).Take(4))
            yield return One("cylinder.bore", c.Bore, bore, Dimension.Length, units, LiftCost.Part);
    }

    private static IEnumerable<LiftChange> Lines(Press press, Shelf shelf, UnitSystem units)
    {
        for (int i = 0; i < (press.Lines?.Count ?? 0); i++)
        {
            Line line = press.Lines![i];
            if (line.Duty is not (null or LineDuty.Pressure))
                continue;
            string path = $"lines.{i}";
            if (line.Rating is { } rating)
            {
                foreach (double more in (units == UnitSystem.Imperial ? RatingsPsi : Ratings).Where(r => r > rating * 1.001).Take(2))
                    yield return One(path + ".rating", rating, more, Dimension.Pressure, units, LiftCost.Part);
            }
            else if (line is { Type: { } type, Bore: { } bore } && shelf.TryHose(type, bore, out HoseGrade? now))
            {
                foreach (HoseGrade better in shelf.Hoses.Where(h => Math.Abs(h.Bore - now.Bore) < 1e-6 && h.WorkingPressure > now.WorkingPressure * 1.001)
                    .OrderBy(h => h.WorkingPressure).ThenBy(h => h.Type, StringComparer.Ordinal).Take(3))
                    yield return new LiftChange([new PressEdit(path + ".type", type, better.Type, better.Type)], LiftCost.Part);
            }
        }
    }

    private static IEnumerable<LiftChange> Loading(PressCheck check, UnitSystem units)
    {
        RigLoading loading = check.Rig.Loading;
        foreach ((string key, double now) in new[] { ("across", loading.Across), ("deep", loading.Deep) })
        {
            foreach (double share in new[] { 0.75, 0.5, 0.25 })
            {
                double step = units == UnitSystem.Imperial ? Inch / 16 : 1e-3, less = Math.Floor(now * share / step + 1e-9) * step;
                if (less > 0 && less < now)
                    yield return One($"loading.off-centre-{key}", now, less, Dimension.Length, units, LiftCost.GivesUp);
            }
        }

        foreach (double more in new[] { 1.25, 1.5, 2 })
        {
            double slope = Math.Ceiling(loading.AllowedOpening * more * 1e4 - 1e-6) / 1e4;
            if (slope <= 0.02)
                yield return One("loading.allowed-opening", loading.AllowedOpening, slope, Dimension.Slope, units, LiftCost.GivesUp);
        }
    }

    private static LiftChange One(string path, double? old, double to, Dimension dimension, UnitSystem units, LiftCost cost) =>
        new([new PressEdit(path, old is { } was ? LiftNeighbours.Written(was, dimension, units) : "", LiftNeighbours.Written(to, dimension, units), to)], cost);

    private static LiftChange Word<T>(string path, T old, T to, LiftCost cost)
        where T : struct, Enum =>
        new([new PressEdit(path, KeyNames.Written(old.ToString()), KeyNames.Written(to.ToString()), to)], cost);
}
