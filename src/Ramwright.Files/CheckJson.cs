using System.Text.Json;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>A checked press as one JSON object with stable names; forces in kN, lengths in mm, pressure in bar.</summary>
public static class CheckJson
{
    /// <summary>The words for verdicts.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.Marginal => "marginal",
        _ => "does not hold",
    };

    /// <summary>Writes a check.</summary>
    public static string Text(PressCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return JsonText.Object(json => Write(json, check));
    }

    private static void Write(Utf8JsonWriter json, PressCheck check)
    {
        json.WriteString("press", check.Rig.Name);
        json.WriteString("verdict", Word(check.Verdict));
        json.WriteString("againstWanted", Word(check.AgainstWanted));
        json.WriteString("againstMostPossible", Word(check.AgainstMostPossible));
        json.WriteBoolean("meetsWanted", check.MeetsWanted);
        json.WriteNumber("wantedKN", Kilo(check.Rig.Wanted));
        json.WriteNumber("safeRatingKN", Kilo(check.Ladder.SafeRating));
        json.WriteString("governing", check.Ladder.Governing.Id);

        json.Object("force", force =>
        {
            force.WriteNumber("trueKN", Kilo(check.Power.TrueForce));
            force.WriteNumber("mostPossibleKN", Kilo(check.Power.MostPossibleForce));
            force.WriteNumber("pressureBar", Round(check.Power.TruePressure / 1e5));
            force.WriteString("limitedBy", check.Power.TrueForceLimitedBy);
            force.WriteString("mostPossibleLimitedBy", check.Power.MostPossibleLimitedBy);
        });
        json.List("speeds", check.Power.Speeds, (speed, at) =>
        {
            speed.WriteNumber("loadKN", Kilo(at.Load));
            speed.WriteNumber("mmPerS", Round(at.Speed * 1e3));
        });
        json.WriteNumber("strokeSeconds", Round(check.Power.Times.FullStroke));

        json.List("rungs", check.Ladder.Rungs, Write);
        OffCentreJson.Write(json, check.OffCentre());
        json.WriteNumber("daylightGrowthMm", Round(check.DaylightGrowth * 1e3));
        json.WriteNumber("openingMmPerM", Round(check.Opening * 1e3));
        json.WriteNumber("stiffnessKNPerMm", Round(check.Response.Stiffness / 1e6));

        json.Object("oil", oil =>
        {
            oil.WriteNumber("compressedMl", Round(check.Power.Decompression * 1e6));
            oil.WriteNumber("lostTravelMm", Round(check.Power.LettingOff.LostTravel * 1e3));
            oil.WriteNumber("energyJ", Round(check.Power.OilEnergy));
            if (check.Power.LettingOff.LeastTime is { } least)
                oil.WriteNumber("letOffSeconds", Round(least));
            oil.List("heat", check.Power.Heat, (warming, heat) =>
            {
                warming.WriteString("where", heat.Where);
                warming.WriteNumber("kW", Kilo(heat.Power));
                warming.WriteNumber("settlesAtC", Round(heat.SettlesAt));
                if (heat.ToWarm is { } warm)
                    warming.WriteNumber("minutesTo60C", Round(warm / 60));
            });
        });
        json.List("powerFailing", check.PowerFailing, (failing, failure) =>
        {
            failing.WriteString("lost", failure.Lost);
            failing.WriteString("fate", KeyNames.Written(failure.Fate.ToString()));
            failing.WriteString("what", failure.What.Text());
            failing.List("missing", failure.Missing);
        });
        if (check.Gauge is { } gauge)
        {
            json.Object("gauge", dial =>
            {
                dial.WriteNumber("rangeBar", Round(gauge.Range / 1e5));
                dial.WriteNumber("shareOfRange", Round(gauge.Share));
                dial.WriteNumber("errorBar", Round(gauge.Error / 1e5));
                dial.WriteNumber("errorOfReading", Round(gauge.ErrorOfReading));
            });
        }

        Write(json, check.SqueezesUntilInspection, check.Rig.Loading);
        Write(json, check.SnapThrough);
        json.List("assumed", check.Assumed, (assumed, a) =>
        {
            assumed.WriteString("what", a.What);
            assumed.WriteString("value", a.Value(UnitSystem.Metric));
            assumed.WriteString("why", a.Why.Text());
        });
        json.List("cautions", check.Cautions());
    }

    private static void Write(Utf8JsonWriter json, FatigueLife? life, RigLoading loading)
    {
        if (life is null)
        {
            json.WriteNull("squeezesUntilInspection");
            return;
        }

        json.Object("squeezesUntilInspection", left =>
        {
            if (life.Squeezes is { } n)
                left.WriteNumber("n", Math.Floor(n));
            else
                left.WriteNull("n");
            left.WriteNumber("wanted", loading.Squeezes);
            if (life.Squeezes is { } m && loading.SqueezesADay is { } daily)
                left.WriteNumber("days", Math.Floor(m / daily));
            left.WriteString("rung", life.Rung);
            left.WriteString("part", life.Part);
            left.WriteString("where", life.Where);
            left.WriteString("detail", life.Detail);
        });
    }

    private static void Write(Utf8JsonWriter json, SnapThrough snap) => json.Object("snapThrough", let =>
    {
        let.WriteNumber("atKN", Kilo(snap.Force));
        let.WriteNumber("energyJ", Round(snap.Energy));
        let.WriteNumber("oilJ", Round(snap.InOil));
        let.WriteNumber("frameJ", Round(snap.InFrame));
        let.WriteNumber("freeTravelMm", Round(snap.FreeTravel * 1e3));
        let.WriteNumber("ramUpToMPerS", Round(snap.RamSpeed));
        let.WriteNumber("loose1KgUpToMPerS", Round(snap.SpeedOf(1)));
        let.WriteNumber("recoilKN", Kilo(snap.Recoil));
        let.WriteNumber("reversalUpToKN", Kilo(snap.GreatestReversal));
    });

    /// <summary>Writes a rung into an object.</summary>
    internal static void Write(Utf8JsonWriter json, Rung rung)
    {
        json.WriteString("id", rung.Id);
        json.WriteString("part", rung.Part);
        json.WriteString("mode", rung.Mode);
        json.WriteString("group", KeyNames.Written(rung.Group.ToString()));
        json.WriteNumber("givesAtKN", Kilo(rung.GivesAt));
        json.WriteNumber("safeToKN", Kilo(rung.SafeTo));
        if (rung.Factor is { } factor)
            json.WriteNumber("factor", Round(factor));
        else
            json.WriteNull("factor");
        json.WriteString("factorFrom", rung.FactorFrom);
        json.WriteString("source", rung.Source.ToString());
    }

    private static double Kilo(double newtons) => Round(newtons / 1e3);

    private static double Round(double value) => JsonText.Round(value);
}
